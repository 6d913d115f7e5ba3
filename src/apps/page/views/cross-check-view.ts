import { type ComponentChild, h } from 'preact';
import type { CheckView, ResultView } from '../../view/index.js';
import { said } from './localized.js';
import type { View } from './view.js';

const KINDS = { agrees: 'good', disagrees: 'bad', 'cannot-tell': 'doubt' } as const;

/** What was stated about the machine against what was heard. */
export function againstView(view: View, result: ResultView): ComponentChild {
  const { page } = view.state.words;
  const { settings, wanted, qualification, remarks, verdict } = result;
  if (verdict.status === 'failed') return null;
  const part = (title: string, one: CheckView): ComponentChild =>
    h('div', { class: 'held' }, [
      h('h3', null, title),
      h('p', { class: KINDS[one.answer] }, h('strong', null, one.words)),
      h('p', null, said(view, one.text)),
    ]);
  return h('div', { class: 'block' }, [
    h('h2', null, page.against),
    settings ? part(page.settings, settings) : h('p', null, page.notStated),
    wanted ? part(page.wanted, wanted) : null,
    ...[...qualification, ...remarks].map((one) => h('p', null, said(view, one))),
  ]);
}

/** What to change for the wanted mode, and what to check next, likeliest first. */
export function nextView(view: View, { change, next }: ResultView): ComponentChild {
  const { page } = view.state.words;
  if (next.length === 0 && change.length === 0) return null;
  return h('div', { class: 'block next' }, [
    ...(change.length === 0 ? [] : [h('h2', null, page.whatToChange)]),
    ...change.map((one) => h('p', null, said(view, one))),
    ...(next.length === 0 ? [] : [h('h2', null, page.checkNext)]),
    h(
      'ol',
      null,
      next
        .slice(0, 3)
        .map(({ check, because }) =>
          h('li', null, [
            h('strong', null, said(view, check)),
            h('p', { class: 'small' }, said(view, because)),
          ]),
        ),
    ),
  ]);
}
