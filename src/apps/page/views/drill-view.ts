import { type ComponentChild, h } from 'preact';
import type { Drill } from '../shell/state.js';
import { CHOICES, type DrillQuestion } from '../sounds/drill.js';
import { playButton } from './play-button.js';
import { SoundPicture } from './sound-picture.js';
import type { View } from './view.js';

/** One question after another; what it was is said, and shown, only after the answer. */
export function drillView(view: View, drill: Drill): ComponentChild {
  const { app, state } = view;
  const { hear } = state.words.page;
  const question = drill.questions[drill.at];
  if (!question) return ended(view, drill);
  const { answer, truth } = question;
  const last = drill.at === drill.questions.length - 1;
  return h('section', { class: 'drill' }, [
    h('h1', null, hear.question(drill.at + 1, drill.questions.length)),
    drill.kind === 'simulated' ? h('p', { class: 'small' }, hear.simulated) : null,
    playButton(view, playId(drill, question), hear.again, () => app.ears.playQuestion()),
    h('div', { class: 'answers', role: 'group', 'aria-label': hear.drillTitle }, [
      ...CHOICES[drill.kind].map((one) =>
        h(
          'button',
          {
            type: 'button',
            class: answer === one ? 'answer-choice chosen' : 'answer-choice',
            'aria-disabled': answer === null ? undefined : 'true',
            'aria-pressed': answer === one ? 'true' : 'false',
            onClick: () => app.ears.answer(one),
          },
          hear.answers[one],
        ),
      ),
    ]),
    h('div', { role: 'status' }, [
      answer === null
        ? null
        : h(
            'p',
            { class: answer === truth ? 'good drill-said' : 'bad drill-said' },
            answer === truth ? hear.right : hear.wrong(hear.answers[truth]),
          ),
    ]),
    answer === null ? null : shownAfter(view, drill, question),
    answer === null
      ? null
      : h(
          'button',
          { type: 'button', class: 'again', onClick: () => app.ears.next() },
          last ? hear.finish : hear.next,
        ),
  ]);
}

/** The events of an example, now that they give nothing away. */
function shownAfter({ app, state }: View, drill: Drill, { id }: DrillQuestion): ComponentChild {
  const example = drill.kind === 'simulated' ? state.examples[Number(id)] : undefined;
  if (!example) return null;
  const { hear } = state.words.page;
  return h('div', null, [
    h('p', null, hear.listenFor[example.mode]),
    h(SoundPicture, {
      marksS: example.marksS,
      position: state.playing === `example ${id}` ? () => app.ears.positionS() : null,
      label: hear.marks[example.mode],
    }),
    h('p', { class: 'small' }, hear.marks[example.mode]),
  ]);
}

function ended(view: View, { questions }: Drill): ComponentChild {
  const { app, state } = view;
  const { hear } = state.words.page;
  const right = questions.filter(({ answer, truth }) => answer === truth).length;
  return h('section', { class: 'drill' }, [
    h('h1', null, hear.result(right, questions.length)),
    scoreView(view),
    h(
      'button',
      { type: 'button', class: 'again', onClick: () => app.ears.endDrill() },
      state.words.page.sheet.ok,
    ),
  ]);
}

/** What the student has told right so far, by mode. */
export function scoreView({ state }: View): ComponentChild {
  const { hear } = state.words.page;
  const lines = (['simulated', 'own'] as const).flatMap((kind) =>
    CHOICES[kind].flatMap((answer) => {
      const score = state.scores[kind][answer];
      return score ? [hear.score(hear.answers[answer], score.right, score.asked)] : [];
    }),
  );
  return h('div', { class: 'block' }, [
    h('h2', null, hear.scoreTitle(state.student)),
    lines.length === 0
      ? h('p', null, hear.noScore)
      : h(
          'ul',
          null,
          lines.map((one) => h('li', null, one)),
        ),
  ]);
}

function playId({ kind }: Drill, { id }: DrillQuestion): string {
  return kind === 'simulated' ? `example ${id}` : `run ${id}`;
}
