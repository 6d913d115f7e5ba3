import { capital } from '../../../core/index.js';
import type { AnswerView, ResultView, VerdictView, Words } from '../../view/index.js';
import { modeClass, modeFill } from '../charts/mode-marks.js';
import { stripChart } from '../charts/strip-chart.js';
import { el } from '../charts/svg.js';
import { escapeHtml } from '../escape.js';
import { localizedHtml } from '../localized.js';

/** The answer with what was wanted, then the run from start to end. */
export function verdictSection({ verdict }: ResultView, answer: AnswerView, words: Words): string {
  // Over what part of the arc the mode held is said below; other answers need their why.
  const why =
    verdict.status === 'ok' && verdict.mode !== null ? '' : localizedHtml(verdict.why, words);
  const lines = [verdict.where, verdict.rates, verdict.leaning ?? '']
    .filter((line) => line !== '')
    .map((line) => `${escapeHtml(capital(line).replace(/\.$/, ''))}.`);
  return `<section id="verdict" class="verdict ${modeClass(verdict.mode)}" aria-labelledby="verdict-words">
<div class="verdict-head"><h1 id="verdict-words">${escapeHtml(answer.title).replaceAll(' %', '&nbsp;%')}</h1>${wanted(answer, words)}</div>
${why === '' ? '' : `<p>${why}</p>`}
${answer.strip ? `<div class="card">${stripChart(answer.strip, words)}</div>` : ''}
<p class="where">${lines.join(' ')}</p>
</section>`;
}

function wanted({ wanted: one }: AnswerView, { answer: words }: Words): string {
  if (!one) return '';
  return `<p class="wanted wanted-${one.answer}">${words.wanted} <strong>${escapeHtml(one.name)} <span aria-hidden="true">${one.sign}</span></strong><span class="wanted-said">${escapeHtml(one.words)}</span></p>`;
}

/** What was judged, in one line above the verdict. */
export function sourceHeader({ file, facts }: ResultView): string {
  return `<p><span class="file">${escapeHtml(file)}</span> ${escapeHtml(facts.join(', '))}</p>`;
}

/** The chance of each mode. */
export function chancesList({ chances: all }: VerdictView, { report }: Words): string {
  if (all.length === 0) return '';
  const rows = all.map(({ mode, letter, name, share, percent }) => {
    const bar =
      el('rect', { class: 'ground', width: 200, height: 12 }) +
      el('rect', {
        class: `block ${modeClass(mode)}`,
        fill: modeFill(mode),
        width: Math.max(0.5, 200 * share),
        height: 12,
      });
    return `<li><span>${letter} ${name}</span><svg viewBox="0 0 200 12" preserveAspectRatio="none" aria-hidden="true">${bar}</svg><span class="number">${percent}</span></li>`;
  });
  return `<h3>${report.chances}</h3><ul class="chances" aria-label="${report.chances}">${rows.join('')}</ul>`;
}
