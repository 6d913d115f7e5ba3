import { type ComponentChild, h } from 'preact';
import { sentencesOf } from '../shell/sentences-of.js';
import type { Leftover } from '../shell/state.js';
import { liveView } from './live-view.js';
import { said } from './localized.js';
import { runStrip } from './run-strip.js';
import { setupForm } from './setup-form.js';
import type { View } from './view.js';

/** Record: the words before, the one large button, and while it runs what is heard. */
export function recordView(view: View): ComponentChild {
  const { phase } = view.state;
  return h('section', { class: `record ${phase}` }, [
    phase === 'recording' ? liveView(view) : beforeView(view),
    bigButton(view),
    phase === 'idle' ? afterView(view) : null,
  ]);
}

function beforeView({ state }: View): ComponentChild {
  const { page } = state.words;
  return h('div', { class: 'before' }, [
    h('h1', null, page.lead),
    state.trouble === null
      ? null
      : h('div', { class: 'trouble', role: 'alert' }, [
          h('h2', null, page.troubleTitle),
          h('p', null, page.trouble[state.trouble]),
          h('p', null, page.useFiles),
        ]),
    h('div', { class: 'safety', role: 'note', 'aria-label': page.safetyTitle }, [
      h('h2', null, page.safetyTitle),
      h(
        'ol',
        null,
        page.safety.map((text) => h('li', null, text)),
      ),
    ]),
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
    [h('span', { class: `sign ${recording ? 'square' : 'dot'}`, 'aria-hidden': 'true' }), words],
  );
}

function afterView(view: View): ComponentChild {
  const { app, state } = view;
  const { page } = state.words;
  return h('div', { class: 'after' }, [
    state.setupError === null
      ? null
      : h('p', { class: 'trouble', role: 'alert' }, [
          `${page.setupWrong}:`,
          ...sentencesOf(state.setupError.error, state.words).flatMap((one) => [
            ' ',
            said(view, one),
          ]),
        ]),
    state.store === 'none' ? h('p', { class: 'trouble' }, page.noStore) : null,
    ...state.leftovers.map((one) => leftoverView(view, one)),
    runStrip(view),
    setupForm(view),
    h('label', { class: 'tick' }, [
      h('input', {
        type: 'checkbox',
        checked: state.tones,
        onChange: (event: Event) => app.tones((event.target as HTMLInputElement).checked),
      }),
      h('span', null, page.sounds),
    ]),
    h('p', { class: 'small' }, page.cues),
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
