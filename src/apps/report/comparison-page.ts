import type { Comparison } from '../../analysis/compare/index.js';
import { type ComparisonView, viewComparison, type Words } from '../view/index.js';
import { compareSection } from './compare-page.js';
import { htmlDocument } from './document.js';
import { escapeHtml } from './escape.js';
import { localizedHtml } from './localized.js';
import type { RunView } from './run-view.js';
import { cautionBox } from './sections/questions.js';

/**
 * The page of a comparison: what changed and whether it is more than chance, then both runs side by side where
 * both were recordings (a result document holds no traces to draw).
 */
export function comparisonPage(
  comparison: Comparison,
  runs: readonly [RunView, RunView],
  words: Words,
  against: 'before' | 'reference' = 'before',
): string {
  const view = viewComparison(comparison, words, against);
  const { compare } = words;
  const [first, second] = view.heads;
  const title = compare.title(view.paths[0], view.paths[1]);
  const body = `<a class="skip" href="#main">${words.report.skip}</a>
<header class="top"><p>${escapeHtml(first)}: <span class="file">${escapeHtml(view.paths[0])}</span></p><p>${escapeHtml(second)}: <span class="file">${escapeHtml(view.paths[1])}</span></p></header>
<main id="main">
<section id="changes"><h1>${escapeHtml(compare.mode)}: ${escapeHtml(view.mode.answer)}</h1>
<p>${localizedHtml(view.mode.text, words)}</p>
<h2>${escapeHtml(view.headline)}</h2>
${changeTable(view, words)}</section>
${conditionTable(view, words)}
<section>${list(compare.overEachRun, view.trends.map(escapeHtml))}
${list(
  '',
  view.notes.map((one) => localizedHtml(one, words)),
)}</section>
${compareSection(runs[0], runs[1], words)}
<section>${cautionBox(view.cautions, words)}</section>
</main>
<footer class="foot"><p>${escapeHtml(words.report.madeBy('arc-transfer'))}</p></footer>`;
  return htmlDocument(title, body, '', words.lang);
}

function changeTable({ changes, heads }: ComparisonView, words: Words): string {
  const { columns } = words.compare;
  const rows = changes.map((one) => {
    const strong = one.moreThanChance === true ? ' class="answer doubt"' : '';
    const cell = (value: string): string => `<td class="n">${escapeHtml(value)}</td>`;
    return `<tr><td${strong}>${one.mark}</td><th scope="row">${localizedHtml(one.label, words)}</th>${cell(one.before + one.unit)}${cell(one.after + one.unit)}${cell(one.relative)}<td>${escapeHtml(one.spread)}</td></tr>`;
  });
  const top = `<th></th><th scope="col">${columns.figure}</th><th class="n" scope="col">${escapeHtml(heads[0])}</th><th class="n" scope="col">${escapeHtml(heads[1])}</th><th class="n" scope="col">${columns.change}</th><th scope="col">${columns.chance}</th>`;
  return scrolled(
    `<table><thead><tr>${top}</tr></thead><tbody>${rows.join('')}</tbody></table>`,
    columns.figure,
  );
}

function conditionTable({ condition, heads }: ComparisonView, { result, compare }: Words): string {
  if (condition.length === 0) return '';
  const rows = condition.map(
    ({ name, before, after, differs }) =>
      `<tr><td>${differs ? '→' : '='}</td><th scope="row">${escapeHtml(name)}</th><td>${before}</td><td>${after}</td></tr>`,
  );
  const top = `<th></th><th scope="col">${compare.columns.figure}</th>${heads.map((one) => `<th scope="col">${escapeHtml(one)}</th>`).join('')}`;
  return `<section><h2>${result.condition.heading}</h2>${scrolled(`<table><thead><tr>${top}</tr></thead><tbody>${rows.join('')}</tbody></table>`, result.condition.heading)}</section>`;
}

function scrolled(table: string, label: string): string {
  return `<div class="card scroll" tabindex="0" role="group" aria-label="${label}">${table}</div>`;
}

function list(title: string, items: readonly string[]): string {
  if (items.length === 0) return '';
  const head = title === '' ? '' : `<h2>${escapeHtml(title)}</h2>`;
  return `${head}<ul>${items.map((one) => `<li>${one}</li>`).join('')}</ul>`;
}
