import type { ProgressRow } from '../../../analysis/compare/index.js';
import { progressCells, type Words } from '../../view/index.js';
import { progressChart } from '../charts/progress-chart.js';
import { escapeHtml } from '../escape.js';

/** People by day: the chart and the table. Nothing without rows. */
export function progressSection(rows: readonly ProgressRow[], words: Words): string {
  if (rows.length === 0) return '';
  const { progress } = words;
  const svg = progressChart(rows, 'progress-picture', words);
  const body = rows.map((row) => {
    const [name, ...rest] = progressCells(row, words);
    const cells = rest.map((one) => `<td class="n">${escapeHtml(one)}</td>`);
    return `<tr><th scope="row">${escapeHtml(name!)}</th>${cells.join('')}</tr>`;
  });
  const heads = progress.heads.map(
    (one, k) => `<th${k > 0 ? ' class="n"' : ''} scope="col">${one}</th>`,
  );
  return `<section id="progress" class="long"><h2>${progress.heading}</h2>
${svg === null ? '' : `<figure class="card">${svg}</figure>`}
<div class="card scroll" tabindex="0" role="group" aria-label="${progress.heading}"><table><thead><tr>${heads.join('')}</tr></thead><tbody>${body.join('')}</tbody></table></div>
<p>${progress.note}</p></section>`;
}
