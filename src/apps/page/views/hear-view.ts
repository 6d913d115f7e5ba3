import { type ComponentChild, h } from 'preact';
import { MODES, type Mode } from '../../../core/index.js';
import { labelledCounts } from '../shell/ear-actions.js';
import type { Shown } from '../shell/state.js';
import { canDrill, type DrillKind } from '../sounds/drill.js';
import { drillView, scoreView } from './drill-view.js';
import { playButton } from './play-button.js';
import { SoundPicture } from './sound-picture.js';
import type { View } from './view.js';

/** Training by ear: the four sounds with what to listen for, then the drill. */
export function hearView(view: View): ComponentChild {
  const { state } = view;
  const { hear } = state.words.page;
  if (state.drill) return drillView(view, state.drill);
  return h('section', { class: 'hear' }, [
    h('h1', null, hear.title),
    h('p', null, hear.lead),
    ...MODES.map((mode) => exampleView(view, mode)),
    h('p', { class: 'small' }, hear.simulated),
    h('h2', null, hear.drillTitle),
    starter(view, 'simulated'),
    starter(view, 'own'),
    scoreView(view),
  ]);
}

function exampleView(view: View, mode: Mode): ComponentChild {
  const { hear, choices } = view.state.words.page;
  const name = choices[mode] ?? mode;
  return h('article', { class: 'example', key: mode }, [
    h('h2', { class: `example-name field-${mode}` }, name),
    ...exampleSound(view, mode, hear.play(name)),
  ]);
}

/** A simulated sound of a mode, with what to listen for in words and in a picture that moves with it. */
function exampleSound(view: View, mode: Mode, label: string): ComponentChild[] {
  const { app, state } = view;
  const { hear } = state.words.page;
  const at = state.examples.findIndex((one) => one.mode === mode);
  const example = state.examples[at];
  const id = `example ${at}`;
  const plays = state.playing === id;
  return [
    h('p', null, hear.listenFor[mode]),
    example
      ? h(SoundPicture, {
          marksS: example.marksS,
          position: plays ? () => app.ears.positionS() : null,
          label: hear.marks[mode],
        })
      : null,
    h('p', { class: 'small' }, hear.marks[mode]),
    playButton(view, id, label, () => app.ears.playMode(mode)),
  ];
}

function starter({ app, state }: View, kind: DrillKind): ComponentChild {
  const { hear, choices } = state.words.page;
  const able = canDrill(app.ears.pool(kind));
  const counts = labelledCounts(state.runs)
    .map(({ mode, count }) => `${choices[mode]} ${count}`)
    .join(', ');
  return h('div', { class: 'block' }, [
    h('p', null, kind === 'own' ? hear.drillOwn : hear.drillSimulated),
    kind === 'own' && !able ? h('p', { class: 'small' }, hear.ownHelp(counts)) : null,
    h(
      'button',
      {
        type: 'button',
        'aria-disabled': able ? undefined : 'true',
        onClick: () => (able ? app.ears.startDrill(kind) : undefined),
      },
      kind === 'own' ? hear.startOwn : hear.startSimulated,
    ),
  ]);
}

/** The run beside the example of what it was and of what was wanted, one after the other by ear. */
export function besideView(
  view: View,
  { run, file }: Shown,
  modes: readonly Mode[],
): ComponentChild {
  const { app, state } = view;
  const { hear, choices } = state.words.page;
  if (run.result.source.kind !== 'sound' || modes.length === 0) return null;
  return h('div', { class: 'block beside' }, [
    h('h2', null, hear.title),
    file
      ? playButton(view, `run ${run.id}`, hear.thisRun, () => app.ears.playRun(run, file))
      : null,
    ...modes.flatMap((mode) => exampleSound(view, mode, hear.example(choices[mode] ?? mode))),
    h('p', { class: 'small' }, hear.simulated),
  ]);
}
