import { type ComponentChild, h } from 'preact';
import { MODES } from '../../../core/index.js';
import type { Shown } from '../shell/state.js';
import type { View } from './view.js';

/** The trainer's own word on a run: it makes the run one to train the ear on. */
export function trainerView({ app, state }: View, { run }: Shown): ComponentChild {
  const { page } = state.words;
  const { trainerMode } = run;
  const choice = (mode: (typeof MODES)[number] | null, name: string): ComponentChild =>
    h('label', { class: 'choice' }, [
      h('input', {
        type: 'radio',
        name: 'trainer',
        checked: (trainerMode ?? null) === mode,
        onChange: () => void app.runs.label(mode),
      }),
      h('span', null, name),
    ]);
  return h('fieldset', { class: 'block trainer' }, [
    h('legend', null, page.trainerAsks),
    h('div', { class: 'choices' }, [
      ...MODES.map((mode) => choice(mode, page.choices[mode] ?? mode)),
      choice(null, page.trainerNone),
    ]),
    trainerMode
      ? h('p', { class: 'small' }, page.trainerSays(page.choices[trainerMode] ?? trainerMode))
      : null,
  ]);
}
