import type { Result } from '../../analysis/result/index.js';
import { ENGLISH, viewAnswer, viewResult, type Words } from '../view/index.js';
import { stripChart } from './charts/strip-chart.js';
import { htmlDocument } from './document.js';
import { escapeHtml } from './escape.js';
import type { RunView } from './run-view.js';
import { cautionBox } from './sections/questions.js';

/** A run in an index, and where its own page lies. */
export interface IndexEntry {
  result: Result;
  href: string;
}

/** The entry of a run, with all that the index needs and no more. */
export function indexEntry({ result }: RunView, href: string): IndexEntry {
  return { result, href };
}

/**
 * One page for several runs: a table of answers and the strip of each, all to one scale of time.
 * @param comparison the section with two runs side by side, or nothing
 */
export function indexPage(
  entries: readonly IndexEntry[],
  comparison = '',
  words: Words = ENGLISH,
): string {
  const { index } = words.report;
  const longestS = Math.max(1e-3, ...entries.map(({ result }) => result.source.durationS ?? 0));
  const title = index.title(entries.length);
  const body = `<a class="skip" href="#main">${index.skip}</a>
<header class="top"><h1>${title}</h1><p>${tally(entries, words)}</p></header>
<main id="main">
<section id="answers"><h2>${index.heading}</h2><div class="card scroll" tabindex="0" role="group" aria-label="${index.table}">${table(entries, words)}</div></section>
${comparison}
<section id="glance" class="long"><h2>${index.glance}</h2><ul class="multiples">${entries.map((one) => card(one, longestS, words)).join('\n')}</ul></section>
${cautions(entries, words)}
</main>
<footer class="foot"><p>${index.foot}</p></footer>`;
  return htmlDocument(title, body, '', words.lang);
}

function tally(entries: readonly IndexEntry[], { report }: Words): string {
  const count = (status: Result['status']) =>
    entries.filter((one) => one.result.status === status).length;
  return report.index.tally(count('ok'), count('unsure'), count('no-arc'), count('failed'));
}

function table(entries: readonly IndexEntry[], words: Words): string {
  const { index } = words.report;
  const { time } = words.numbers;
  const rows = entries.map(({ result, href }) => {
    const { crossCheck, quality, source } = result;
    const { title, wanted } = viewAnswer(result, words);
    const came = wanted ? ` (${words.answer.wanted} ${wanted.name} ${wanted.sign})` : '';
    const values: [text: string, number: boolean][] = [
      [title + came, false],
      [crossCheck ? index.answers[crossCheck.settings.answer] : index.notStated, false],
      [String(quality.length), true],
      [source.durationS === null ? '–' : time(source.durationS), true],
    ];
    const cells = values.map(
      ([text, number], k) =>
        `<td${number ? ' class="n"' : ''} data-head="${index.heads[k + 1]}">${escapeHtml(text)}</td>`,
    );
    return `<tr><th scope="row"><a href="${escapeHtml(href)}">${escapeHtml(source.path)}</a></th>${cells.join('')}</tr>`;
  });
  const heads = index.heads.map(
    (one, k) => `<th${[3, 4].includes(k) ? ' class="n"' : ''} scope="col">${one}</th>`,
  );
  return `<table class="cards"><thead><tr>${heads.join('')}</tr></thead><tbody>${rows.join('')}</tbody></table>`;
}

function card({ result, href }: IndexEntry, longestS: number, words: Words): string {
  const { title, strip } = viewAnswer(result, words);
  const name = escapeHtml(result.source.path);
  const svg = strip
    ? stripChart({ ...strip, durationS: longestS, end: words.numbers.time(longestS) }, words)
    : '';
  return `<li class="card"><h3><a href="${escapeHtml(href)}">${name}</a></h3><p>${escapeHtml(title)}</p>${svg}</li>`;
}

function cautions(entries: readonly IndexEntry[], words: Words): string {
  const box = cautionBox(
    entries.flatMap(({ result }) => viewResult(result, words).ownCautions),
    words,
  );
  return box === '' ? '' : `<section>${box}</section>`;
}
