import type { ResultView, VerdictView, Words } from '../../view/index.js';
import { modeClass, modeFill } from '../charts/mode-marks.js';
import { el } from '../charts/svg.js';
import { escapeHtml } from '../escape.js';
import { localizedHtml } from '../localized.js';

/** File, verdict, how sure, over what, how often, and the chance of each mode. */
export function verdictSection({ verdict }: ResultView, words: Words): string {
  const sure = verdict.sure === null ? '' : `<p class="sure">${verdict.sure}</p>`;
  const lines = [verdict.where, verdict.rates]
    .filter((line) => line !== '')
    .map((line) => `<p>${escapeHtml(capital(line))}.</p>`);
  return `<section id="verdict" class="verdict ${modeClass(verdict.mode)}" aria-labelledby="verdict-words">
${plate(verdict)}
<div><h1 id="verdict-words">${escapeHtml(verdict.headline)}</h1>
${sure}<p>${localizedHtml(verdict.why, words)}</p>
${lines.join('\n')}
${verdict.leaning === null ? '' : `<p>${escapeHtml(verdict.leaning)}</p>`}
${verdict.settle === null ? '' : `<p>${localizedHtml(verdict.settle, words)}</p>`}
${chances(verdict, words)}</div>
</section>`;
}

/** What was judged, in one line above the verdict. */
export function sourceHeader({ file, facts }: ResultView): string {
  return `<p><span class="file">${escapeHtml(file)}</span> ${escapeHtml(facts.join(', '))}</p>`;
}

function plate({ mode, letter }: VerdictView): string {
  const ground = el('rect', {
    class: 'plate-ground',
    x: 2,
    y: 2,
    width: 88,
    height: 88,
    fill: modeFill(mode),
  });
  const sign = `<text x="46" y="62" text-anchor="middle">${letter}</text>`;
  return `<svg class="plate-letter" viewBox="0 0 92 92" aria-hidden="true">${ground}${sign}</svg>`;
}

function chances({ chances: all }: VerdictView, { report }: Words): string {
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
  return `<ul class="chances" aria-label="${report.chances}">${rows.join('')}</ul>`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
