import { type ComponentChild, h } from 'preact';
import type { Leftover } from '../shell/state.js';
import { liveView } from './live-view.js';
import { runStrip } from './run-strip.js';
import { setupChips, wrongFields } from './setup-chips.js';
import { setupForm } from './setup-form.js';
import { sheetView } from './sheet-view.js';
import type { View } from './view.js';

const COUNTDOWNS_S = [0, 5, 10, 20] as const;

/** Record: what is set, the one large button, and while it runs what is heard. */
export function recordView(view: View): ComponentChild {
  const { state } = view;
  const { page } = state.words;
  const { phase } = state;
  return h('section', { class: `record ${phase}` }, [
    h('h1', { class: 'only-read' }, page.tabs.record),
    phase === 'recording' ? liveView(view) : beforeView(view),
    bigButton(view),
    h('p', { class: 'protection' }, page.protection),
    phase === 'idle' ? afterView(view) : null,
    phase === 'idle' ? sheetView(view) : null,
  ]);
}

function beforeView(view: View): ComponentChild {
  const { state } = view;
  const { page } = state.words;
  return h('div', { class: 'before' }, [
    state.trouble === null
      ? null
      : h('div', { class: 'trouble', role: 'alert' }, [
          h('h2', null, page.troubleTitle),
          h('p', null, page.trouble[state.trouble]),
          h('p', null, page.useFiles),
        ]),
    state.store === 'none' ? h('p', { class: 'trouble' }, page.noStore) : null,
    ...state.leftovers.map((one) => leftoverView(view, one)),
    setupChips(view),
    wrongFields(view),
    h('p', { class: 'place' }, page.place),
  ]);
}

function bigButton({ app, state }: View): ComponentChild {
  const { page } = state.words;
  const recording = state.phase === 'recording';
  const waiting = state.phase === 'starting' || state.phase === 'judging';
  const words = {
    idle: page.start,
    starting: page.starting,
    recording: page.stop,
    judging: page.judging,
  }[state.phase];
  return h(
    'button',
    {
      type: 'button',
      class: 'big',
      id: 'record',
      // Stays where the focus is while it waits.
      'aria-disabled': waiting ? 'true' : undefined,
      onClick: () => void (recording ? app.recording.stop() : app.recording.start()),
    },
    [
      h('strong', null, words),
      state.stopsItself && !waiting ? h('span', null, page.stopsHint) : null,
    ],
  );
}

function afterView(view: View): ComponentChild {
  const { app, state } = view;
  const { page } = state.words;
  const choice = (what: 'tones' | 'speaks' | 'stopsItself', label: string): ComponentChild =>
    h('label', { class: 'tick' }, [
      h('input', {
        type: 'checkbox',
        checked: state[what],
        onChange: (event: Event) => app.choose(what, (event.target as HTMLInputElement).checked),
      }),
      h('span', null, label),
    ]);
  return h('div', { class: 'after' }, [
    runStrip(view),
    h('details', { class: 'options' }, [
      h('summary', null, page.options),
      choice('stopsItself', page.stopsItself),
      choice('tones', page.sounds),
      choice('speaks', page.speaks),
      h('label', { class: 'field' }, [
        h('span', null, page.countdown),
        h(
          'select',
          {
            value: String(state.countdownS),
            onChange: (event: Event) =>
              app.countdown(Number((event.target as HTMLSelectElement).value)),
          },
          COUNTDOWNS_S.map((one) => h('option', { value: String(one) }, page.countdownChoice(one))),
        ),
      ]),
      h('p', { class: 'small' }, page.cues),
    ]),
    setupForm(view),
    h('p', { class: 'small' }, page.offline),
  ]);
}

function leftoverView({ app, state }: View, one: Leftover): ComponentChild {
  const { page, view: words } = state.words;
  return h('div', { class: 'leftover', key: one.id }, [
    h('h2', null, page.unfinishedTitle),
    h('p', null, page.unfinished(words.numbers.time(one.seconds))),
    h('div', { class: 'row' }, [
      h('button', { type: 'button', onClick: () => void app.recording.recover(one) }, page.judgeIt),
      h(
        'button',
        { type: 'button', onClick: () => void app.runStore.dropPieces(one.id) },
        page.forgetIt,
      ),
    ]),
  ]);
}
