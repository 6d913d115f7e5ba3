import type { IntervalCounts, LevelCounts } from '../../view/evidence/index.js';
import type { Words } from '../../view/index.js';
import { sum } from '../charts/shape-charts.js';
import { escapeHtml } from '../escape.js';
import { drawFigure, SHAPE_FIGURES } from '../figures.js';
import type { RunView } from '../run-view.js';

/** What the arc looks like. Pictures that this recording does not show are absent. */
export function shapeSection(run: RunView, words: Words): string {
  const { shape, titles } = words;
  const drawn = SHAPE_FIGURES.flatMap((name) => {
    const svg = drawFigure(name, run, `shape-${name}`, words);
    if (!svg) return [];
    return [
      `<figure class="card">${svg}<figcaption><strong>${titles[name]}.</strong> ${shape.captions[name]}</figcaption>${numbers(name, run, words)}</figure>`,
    ];
  });
  if (drawn.length === 0) return '';
  return `<section id="shape" class="long"><h2>${shape.heading}</h2><div class="shapes">${drawn.join('\n')}</div>${figureTable(run, words)}</section>`;
}

function numbers(name: string, { evidence }: RunView, words: Words): string {
  if (name === 'levels' && evidence?.levels) return levelTable(evidence.levels, words);
  if (name === 'intervals' && evidence?.intervals) return intervalTable(evidence.intervals, words);
  return '';
}

function levelTable(levels: LevelCounts, words: Words): string {
  const { decimal, percent, range } = words.numbers;
  const total = sum(levels.arc) + sum(levels.short);
  const rows = [...levels.arc].flatMap((arc, k) => {
    const short = levels.short[k]!;
    if ((arc + short) / total < 0.002) return [];
    const at = levels.fromValue + k * levels.width;
    const volts = range(decimal(String(at)), decimal(String(at + levels.width)));
    return [[volts, percent(short / total), percent(arc / total)]];
  });
  return table(words.shape.levelHeads, rows, words);
}

function intervalTable({ counts, fromS, ratio, total }: IntervalCounts, words: Words): string {
  const { figure, percent, range } = words.numbers;
  const rows = [...counts].flatMap((count, k) => {
    if (count === 0) return [];
    const low = 1000 * fromS * ratio ** k;
    const span = range(figure(low), figure(low * ratio));
    return [[span, String(count), percent(count / total)]];
  });
  return table(words.shape.intervalHeads, rows, words);
}

function table(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  words: Words,
): string {
  const head = heads.map((one) => `<th class="n" scope="col">${one}</th>`).join('');
  const body = rows
    .map((row) => `<tr>${row.map((one) => `<td class="n">${escapeHtml(one)}</td>`).join('')}</tr>`)
    .join('');
  return `<details><summary>${words.shape.asNumbers}</summary><div class="scroll"><table><thead><tr>${head}</tr></thead><tbody>${body}</tbody></table></div></details>`;
}

/** All figures of the run that are known, by their names in the result document. */
function figureTable({ result }: RunView, { shape, numbers: { figure } }: Words): string {
  const rows = Object.entries(result.features).flatMap(([name, value]) =>
    value === null ? [] : [[name, figure(value)]],
  );
  if (rows.length === 0) return '';
  const body = rows
    .map(([name, value]) => `<tr><td>${escapeHtml(name!)}</td><td class="n">${value}</td></tr>`)
    .join('');
  return `<details><summary>${shape.figuresTitle(rows.length)}</summary><div class="scroll"><table><caption>${shape.figuresCaption}</caption><thead><tr><th scope="col">${shape.figureHeads[0]}</th><th class="n" scope="col">${shape.figureHeads[1]}</th></tr></thead><tbody>${body}</tbody></table></div></details>`;
}
