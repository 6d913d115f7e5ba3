import { type ComponentChild, h } from 'preact';
import { coachingOf } from '../capture/coaching.js';
import { ENOUGH_S } from '../capture/recorder.js';
import type { State } from '../shell/state.js';
import type { View } from './view.js';

const QUIETEST_DB = -60;
const CELLS = 20;

/** While recording: few, large words, to be read by somebody beside it, or afterwards. */
export function liveView({ state }: View): ComponentChild {
  const { page, view: words } = state.words;
  const { live } = state;
  const usable = live?.usableS ?? 0;
  const name = live?.mode == null ? null : words.mode(live.mode);
  const turn = turnWords(state);
  return h('div', { class: 'live-panel' }, [
    h('p', { class: 'turn', role: 'status' }, turn ?? ' '),
    h('p', { class: 'arc-state', 'aria-live': 'polite' }, live?.arc ? page.arcYes : page.arcNo),
    h(
      'p',
      { class: 'mode-state', 'aria-live': 'polite' },
      live?.arc ? page.modeNow(name, live.settled) : ' ',
    ),
    levelRow(state),
    h('p', { class: 'level-state', role: 'status' }, page.coach[coachNow(state)]),
    h('p', { class: 'usable' }, page.usable(usable, ENOUGH_S)),
    h('p', { class: 'small elapsed' }, page.elapsed(live?.timeS ?? 0)),
    state.keptOn.length > 0 ? h('p', { class: 'trouble' }, page.keptOn(state.keptOn)) : null,
    state.notKept ? h('p', { class: 'trouble', role: 'alert' }, page.notKept) : null,
  ]);
}

/** Counted from the first sample: everything is recorded meanwhile. Null while the arc burns. */
function turnWords({ live, countdownS, stopsItself, words }: State): string | null {
  const timeS = live?.timeS ?? 0;
  if (live?.arc) return null;
  if ((live?.usableS ?? 0) > 0) return stopsItself ? words.page.stopsSoon : null;
  if (timeS < countdownS) return words.page.turnIn(Math.ceil(countdownS - timeS));
  return words.page.yourTurn;
}

function coachNow({ live, levels, keptOn }: State): ReturnType<typeof coachingOf> {
  // The loudest of the last second, so that the words do not flicker.
  return coachingOf(live, Math.max(...levels.slice(-10)), keptOn);
}

/** The level as a row of cells; the marked ones are where it should be. */
function levelRow({ levels, words }: State): ComponentChild {
  const db = levels.at(-1) ?? Number.NEGATIVE_INFINITY;
  const full = Math.max(0, Math.round(CELLS * (1 - db / QUIETEST_DB)));
  const cells = Array.from({ length: CELLS }, (_, k) => {
    const place = k >= 7 && k < CELLS - 1 ? ' cell-right' : '';
    return h('rect', {
      class: k < full ? `cell full${place}` : `cell${place}`,
      x: 16 * k + 1,
      y: 1,
      width: 13,
      height: 22,
      rx: 2,
    });
  });
  return h(
    'svg',
    {
      class: 'level-row',
      viewBox: `0 0 ${16 * CELLS} 24`,
      role: 'img',
      'aria-label': words.page.level,
    },
    cells,
  );
}
