import { type ComponentChild, h } from 'preact';
import type { Result } from '../../../analysis/result/index.js';
import { ENGLISH, withUnits } from '../../../messages/index.js';
import { crossCheckIn } from '../../../setup/check/index.js';
import { said } from './localized.js';
import type { View } from './view.js';

/** The comparison in the units of the page. */
function inUnits({ state }: View, check: Result['crossCheck']): Result['crossCheck'] {
  return check && crossCheckIn(check, withUnits(ENGLISH, state.units));
}

const KINDS = { agrees: 'good', disagrees: 'bad', 'cannot-tell': 'doubt' } as const;

/** What was stated about the machine against what was heard. */
export function againstView(view: View, { crossCheck: stated, status }: Result): ComponentChild {
  const crossCheck = inUnits(view, stated);
  const { page, result: words } = view.state.words;
  if (status === 'failed') return null;
  const part = (title: string, one: { answer: keyof typeof KINDS; text: string }): ComponentChild =>
    h('div', { class: 'held' }, [
      h('h3', null, title),
      h('p', { class: KINDS[one.answer] }, h('strong', null, words.answers[one.answer])),
      h('p', null, said(view, words.said(one.text))),
    ]);
  return h('div', { class: 'block' }, [
    h('h2', null, page.against),
    crossCheck ? part(page.settings, crossCheck.settings) : h('p', null, page.notStated),
    crossCheck?.intended ? part(page.wanted, crossCheck.intended) : null,
    ...(crossCheck?.qualification ?? []).map((text) => h('p', null, said(view, words.said(text)))),
  ]);
}

/** What to change for the wanted mode, and what to check next, likeliest first. */
export function nextView(view: View, { crossCheck: stated }: Result): ComponentChild {
  const crossCheck = inUnits(view, stated);
  const { page, result: words } = view.state.words;
  const ranked = (crossCheck?.explanations ?? []).toSorted((a, b) => a.rank - b.rank).slice(0, 3);
  const advice = crossCheck?.advice ?? [];
  if (ranked.length === 0 && advice.length === 0) return null;
  return h('div', { class: 'block next' }, [
    ...(advice.length === 0 ? [] : [h('h2', null, page.whatToChange)]),
    ...advice.map((text) => h('p', null, said(view, words.said(text)))),
    ...(ranked.length === 0 ? [] : [h('h2', null, page.checkNext)]),
    h(
      'ol',
      null,
      ranked.map((one) =>
        h('li', null, [
          h('strong', null, said(view, words.said(one.check))),
          h('p', { class: 'small' }, said(view, words.said(one.text))),
        ]),
      ),
    ),
  ]);
}
