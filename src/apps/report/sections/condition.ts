import type { ResultView, Words } from '../../view/index.js';
import { escapeHtml } from '../escape.js';
import { localizedHtml } from '../localized.js';

const KINDS = { good: 'good', watch: 'doubt', bad: 'bad' } as const;

/** What disturbed the arc and how even it was, what is off first, with what is usual beside each. */
export function conditionSection({ condition }: ResultView, words: Words): string {
  if (!condition) return '';
  const { heading, heads, notJudged } = words.result.condition;
  const rows = condition.items.map(
    ({ name, rating, words: said, text, usual }) =>
      `<tr><th scope="row">${escapeHtml(name)}</th><td><span class="answer ${KINDS[rating]}">${said}</span></td><td>${localizedHtml(text, words)}</td><td>${localizedHtml(usual, words)}</td></tr>`,
  );
  const head = heads.map((one) => `<th scope="col">${one}</th>`).join('');
  const left = condition.notJudged.map((one) => `<li>${localizedHtml(one, words)}</li>`).join('');
  const rest = left === '' ? '' : `<h3>${notJudged}</h3><ul>${left}</ul>`;
  return `<section id="condition" class="long"><h2>${heading}</h2><p>${condition.good}</p>
<div class="card scroll" tabindex="0" role="group" aria-label="${heading}"><table class="condition"><thead><tr>${head}</tr></thead><tbody>${rows.join('')}</tbody></table></div>${rest}</section>`;
}
