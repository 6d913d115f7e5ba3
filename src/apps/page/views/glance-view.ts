import { type ComponentChild, h } from 'preact';
import { type GlanceView, viewVerdict, type WantedAnswer } from '../../view/index.js';
import { glanceOf } from '../shell/run-words.js';
import type { Run } from '../storage/database.js';
import { FitLines } from './fit-lines.js';
import { said } from './localized.js';
import { modeDrawing } from './mode-drawing.js';
import { modeGround } from './mode-ground.js';
import { shownValue } from './setup-lists.js';
import type { View } from './view.js';

/** From so many signs on a line of advice is set smaller, so that it stays on the screen. */
const LONG = 100;
const NAME_PX = 170;
const WANTED_PX = 52;
const SURE_PX = 36;

/** The answer as a screen of its own: to be read at two metres, with gloves on, without colour. */
export function glanceView(view: View, run: Run): ComponentChild {
  const { state } = view;
  const { page, view: words } = state.words;
  const glance = glanceOf(run, state);
  const { headline } = viewVerdict(run.result, words);
  return h('div', { class: 'glance' }, [
    h('div', { class: `answer-field field-${glance.kind}` }, [
      modeGround(glance.kind),
      h('p', { class: 'field-head' }, [
        h('span', null, page.runOf(run.student, numberOf(state.runs, run))),
        h('span', null, machineLine(run, state)),
      ]),
      // A new run is drawn anew, so that its drop falls once.
      h('div', { class: 'drawing-place', key: run.id }, modeDrawing(glance.kind)),
      h('h1', { class: 'answer-name' }, [
        h('span', { class: 'only-read', id: 'verdict-words' }, headline),
        h(FitLines, { lines: glance.name, largestPx: NAME_PX }),
      ]),
      glance.sure ? sureView(`${glance.sure.word} · ${glance.sure.figure}`) : null,
      wantedView(view, glance),
    ]),
    h(
      'div',
      { class: 'todo', lang: glance.todo.lang === state.words.lang ? null : glance.todo.lang },
      [
        h(
          'p',
          { class: glance.todo.text.length > LONG ? 'todo-line todo-long' : 'todo-line' },
          said(view, glance.todo),
        ),
        glance.procedure ? h('p', { class: 'small' }, glance.procedure) : null,
      ],
    ),
  ]);
}

/** On one line, whatever the language calls it. */
function sureView(words: string): ComponentChild {
  return h('p', { class: 'how-sure' }, [
    h('span', { class: 'only-read' }, words),
    h(FitLines, { lines: [words], largestPx: SURE_PX }),
  ]);
}

function wantedView({ state }: View, { wanted }: GlanceView): ComponentChild {
  if (!wanted) return null;
  const { wanted: before } = state.words.view.glance;
  return h('p', { class: `wanted wanted-${wanted.answer}` }, [
    answerSign(wanted.answer),
    h('span', { class: 'wanted-words' }, [
      h('span', { class: 'only-read' }, `${before} ${wanted.name}: ${wanted.sign}`),
      h('span', { 'aria-hidden': 'true' }, before),
      h(FitLines, { lines: [wanted.name], largestPx: WANTED_PX }),
    ]),
  ]);
}

/** A tick in a circle, a cross in a square, a question mark in a rhomb: told apart by shape alone. */
export function answerSign(answer: WantedAnswer): ComponentChild {
  const shapes: Record<WantedAnswer, ComponentChild[]> = {
    right: [
      h('circle', { class: 'sign-ground', cx: 30, cy: 30, r: 29 }),
      h('path', { class: 'sign-line', d: 'M15 31L26 42L46 19' }),
    ],
    wrong: [
      h('rect', { class: 'sign-ground', x: 2, y: 2, width: 56, height: 56 }),
      h('path', { class: 'sign-line', d: 'M16 16L44 44M44 16L16 44' }),
    ],
    open: [
      h('path', { class: 'sign-ground', d: 'M30 0L60 30L30 60L0 30Z' }),
      h('path', { class: 'sign-line', d: 'M21 24C21 10 40 11 39 23C38 31 30 30 30 38M30 46V47' }),
    ],
  };
  return h(
    'svg',
    { class: `answer-sign sign-${answer}`, viewBox: '0 0 60 60', 'aria-hidden': 'true' },
    shapes[answer],
  );
}

/** Which run of this student it is, oldest first; runs are listed newest first. */
function numberOf(runs: readonly Run[], run: Run): number {
  const own = runs.filter(({ student, id }) => student === run.student && id !== run.id);
  return own.filter(({ createdMs }) => createdMs <= run.createdMs).length + 1;
}

/** `0.9 mm · 75/25 · 18.5 V`, as stated. */
function machineLine({ setup }: Run, { words }: View['state']): string {
  return [setup['wireDiameter'], setup['gas'], setup['setVoltage']]
    .flatMap((one) => (one === undefined || one === '' ? [] : [shownValue(one, words)]))
    .join(' · ');
}
