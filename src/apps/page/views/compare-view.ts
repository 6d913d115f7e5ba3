import { type ComponentChild, h } from 'preact';
import { viewVerdict } from '../../view/index.js';
import type { Run } from '../storage/database.js';
import type { View } from './view.js';

/** Two runs in one table, the earlier first; where none are picked, the two newest. */
export function compareView({ state }: View): ComponentChild {
  const { page, view: words, lang } = state.words;
  const chosen = state.picked.flatMap((id) => state.runs.filter((one) => one.id === id));
  const pair = (chosen.length === 2 ? chosen : state.runs.slice(0, 2)).toSorted(
    (a, b) => a.createdMs - b.createdMs,
  );
  const row = (title: string, say: (run: Run) => string): ComponentChild =>
    h('tr', null, [
      h('th', { scope: 'row' }, title),
      ...pair.map((run) => h('td', null, say(run) || '–')),
    ]);
  const { compareRow } = page;
  return h('div', { class: 'block compare' }, [
    h('h2', null, page.compareTitle),
    h('div', { class: 'scroll', tabIndex: 0, role: 'group', 'aria-label': page.compareTitle }, [
      h('table', null, [
        h('thead', null, [
          h('tr', null, [
            h('td', null),
            h('th', { scope: 'col' }, page.compareFirst),
            h('th', { scope: 'col' }, page.compareSecond),
          ]),
        ]),
        h('tbody', null, [
          row(compareRow.when, (run) =>
            new Date(run.createdMs).toLocaleString(lang, {
              dateStyle: 'medium',
              timeStyle: 'short',
            }),
          ),
          row(page.student, (run) => run.student),
          row(page.booth, (run) => run.booth),
          row(compareRow.mode, ({ result }) => viewVerdict(result, words).headline),
          row(compareRow.confidence, ({ result }) => viewVerdict(result, words).sure ?? ''),
          row(compareRow.rates, ({ result }) => viewVerdict(result, words).rates),
          row(compareRow.arc, ({ result }) => viewVerdict(result, words).where),
          row(compareRow.settings, ({ result: { crossCheck } }) =>
            crossCheck ? words.result.answers[crossCheck.settings.answer] : '',
          ),
        ]),
      ]),
    ]),
  ]);
}
