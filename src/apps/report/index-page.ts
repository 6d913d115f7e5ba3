import type { Result } from '../../analysis/result/index.js';
import { ENGLISH, viewResult, viewVerdict, type Words } from '../view/index.js';
import { smallMultiple } from './charts/small-multiple.js';
import { rateLimit } from './charts/time-rows.js';
import { htmlDocument } from './document.js';
import { escapeHtml } from './escape.js';
import type { RunView, TimeRun } from './run-view.js';
import { cautionBox } from './sections/questions.js';

/** A run in an index: its small picture, already drawn, and where its own page lies. */
export interface IndexEntry {
  result: Result;
  /** Kept as evidence only until the shared axes are known. */
  glance: TimeRun | null;
  href: string;
}

/** The entry of a run, with all that the index needs and no more. */
export function indexEntry({ result, evidence }: RunView, href: string): IndexEntry {
  if (!evidence) return { result, glance: null, href };
  const { arcStretches, segments } = result;
  const small = { ...evidence, traces: [], closeUps: [], marks: [], playback: null };
  return { result, glance: { arcStretches, segments, evidence: small }, href };
}

/**
 * One page for several runs: a table of answers and a small picture of each on shared axes.
 * @param comparison the section with two runs side by side, or nothing
 */
export function indexPage(
  entries: readonly IndexEntry[],
  comparison = '',
  words: Words = ENGLISH,
): string {
  const { index } = words.report;
  const shown = entries.flatMap(({ glance }) => glance ?? []);
  const shared = {
    durationS: Math.max(1e-3, ...shown.map((one) => one.evidence.durationS)),
    rateHz: Math.max(1, ...shown.map(rateLimit)),
  };
  const title = index.title(entries.length);
  const body = `<a class="skip" href="#main">${index.skip}</a>
<header class="top"><h1>${title}</h1><p>${tally(entries, words)}</p></header>
<main id="main">
<section id="answers"><h2>${index.heading}</h2><div class="card scroll" tabindex="0" role="group" aria-label="${index.table}">${table(entries, words)}</div></section>
${comparison}
<section id="glance" class="long"><h2>${index.glance}</h2><ul class="multiples">${entries.map((one, k) => card(one, k, shared, words)).join('\n')}</ul></section>
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
  const { percent, time } = words.numbers;
  const rows = entries.map(({ result, href }) => {
    const { confidence, crossCheck, quality, source } = result;
    const { letter, headline } = viewVerdict(result, words);
    const cells = [
      `<td>${letter} ${escapeHtml(headline)}</td>`,
      `<td class="n">${confidence === null ? '–' : percent(confidence)}</td>`,
      `<td>${crossCheck ? index.answers[crossCheck.settings.answer] : index.notStated}</td>`,
      `<td class="n">${quality.length}</td>`,
      `<td class="n">${source.durationS === null ? '–' : time(source.durationS)}</td>`,
    ];
    return `<tr><th scope="row"><a href="${escapeHtml(href)}">${escapeHtml(source.path)}</a></th>${cells.join('')}</tr>`;
  });
  const heads = index.heads.map(
    (one, k) => `<th${[2, 4, 5].includes(k) ? ' class="n"' : ''} scope="col">${one}</th>`,
  );
  return `<table><thead><tr>${heads.join('')}</tr></thead><tbody>${rows.join('')}</tbody></table>`;
}

function card(
  { result, glance, href }: IndexEntry,
  k: number,
  shared: { durationS: number; rateHz: number },
  words: Words,
): string {
  const { letter, headline } = viewVerdict(result, words);
  const name = escapeHtml(result.source.path);
  const svg = glance ? smallMultiple(glance, shared, { id: `glance-${k}`, run: k + 1 }, words) : '';
  return `<li class="card"><h3><a href="${escapeHtml(href)}">${name}</a></h3><p>${letter} ${escapeHtml(headline)}</p>${svg}</li>`;
}

function cautions(entries: readonly IndexEntry[], words: Words): string {
  const box = cautionBox(
    entries.flatMap(({ result }) => viewResult(result, words).ownCautions),
    words,
  );
  return box === '' ? '' : `<section>${box}</section>`;
}
