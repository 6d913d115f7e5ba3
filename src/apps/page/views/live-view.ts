import { type ComponentChild, h } from 'preact';
import { ENOUGH_S } from '../capture/recorder.js';
import type { State } from '../shell/state.js';
import type { View } from './view.js';

const QUIETEST_DB = -60;
const STRIP = 100;

/** While recording: few, large words, to be read from afar afterwards or by somebody beside it. */
export function liveView({ state }: View): ComponentChild {
  const { page, view: words } = state.words;
  const { live } = state;
  const usable = live?.usableS ?? 0;
  const name = live?.mode == null ? null : words.mode(live.mode);
  return h('div', { class: 'live-panel' }, [
    h('h1', { class: 'arc-state', 'aria-live': 'polite' }, live?.arc ? page.arcYes : page.arcNo),
    h(
      'p',
      { class: 'mode-state', 'aria-live': 'polite' },
      live?.arc ? page.modeNow(name, live.settled) : ' ',
    ),
    strip(state),
    h('p', { class: 'level-state', role: 'status' }, levelWords(state)),
    progress(usable),
    h('p', { class: 'usable' }, page.usable(usable, ENOUGH_S)),
    h('p', { class: 'small elapsed' }, page.elapsed(live?.timeS ?? 0)),
    state.keptOn.length > 0 ? h('p', { class: 'trouble' }, page.keptOn(state.keptOn)) : null,
    state.notKept ? h('p', { class: 'trouble', role: 'alert' }, page.notKept) : null,
  ]);
}

function levelWords({ live, levels, words }: State): string {
  if (!live) return ' ';
  // The loudest of the last second, so that the words do not flicker.
  return words.page.levelWords(Math.max(...levels.slice(-10)), live.clipped);
}

/** The last ten seconds of sound, each tenth a stroke; strokes stand on a thick line where an arc was heard. */
function strip({ levels, arcs, words }: State): ComponentChild {
  const from = STRIP - levels.length;
  const strokes = levels.map((db, k) => {
    const height = 46 * Math.min(1, Math.max(0.02, 1 - db / QUIETEST_DB));
    return `M${3 * (from + k) + 1.5} ${50 - height}v${height}`;
  });
  const ground = arcs.map((arc, k) => (arc ? `M${3 * (from + k)} 56h3` : ''));
  return h(
    'svg',
    { class: 'strip', viewBox: '0 0 300 60', role: 'img', 'aria-label': words.page.level },
    [
      h('path', { class: 'strokes', d: strokes.join('') }),
      h('path', { class: 'ground', d: ground.join('') }),
    ],
  );
}

/** A cell for each second of usable arc that is worth having. */
function progress(usableS: number): ComponentChild {
  const cells = Array.from({ length: ENOUGH_S }, (_, k) =>
    h('rect', {
      class: usableS >= k + 1 ? 'cell full' : 'cell',
      x: 30 * k + 2,
      y: 2,
      width: 26,
      height: 16,
    }),
  );
  const enough = usableS >= ENOUGH_S ? ' enough' : '';
  return h(
    'svg',
    { class: `cells${enough}`, viewBox: `0 0 ${30 * ENOUGH_S} 20`, 'aria-hidden': 'true' },
    cells,
  );
}
