import type { Result } from '../../analysis/result/index.js';
import { percent, sayTime } from '../view/index.js';
import { smallMultiple } from './charts/small-multiple.js';
import { rateLimit } from './charts/time-rows.js';
import { htmlDocument } from './document.js';
import { escapeHtml } from './escape.js';
import type { RunView, TimeRun } from './run-view.js';
import { verdictLetter, verdictWords } from './sections/verdict.js';

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
export function indexPage(entries: readonly IndexEntry[], comparison = ''): string {
  const shown = entries.flatMap(({ glance }) => glance ?? []);
  const shared = {
    durationS: Math.max(1e-3, ...shown.map((one) => one.evidence.durationS)),
    rateHz: Math.max(1, ...shown.map(rateLimit)),
  };
  const title = `${entries.length} recordings`;
  const body = `<a class="skip" href="#main">Skip to the answers</a>
<header class="top"><h1>${title}</h1><p>${tally(entries)}</p></header>
<main id="main">
<section id="answers"><h2>What crossed the gap in each?</h2><div class="card scroll" tabindex="0" role="group" aria-label="Table of answers">${table(entries)}</div></section>
${comparison}
<section id="glance" class="long"><h2>All runs at a glance, on equal axes</h2><ul class="multiples">${entries.map((one, k) => card(one, k, shared)).join('\n')}</ul></section>
${cautions(entries)}
</main>
<footer class="foot"><p>This page works offline and sends nothing anywhere. Each run has a page of its own beside this one.</p></footer>`;
  return htmlDocument(title, body);
}

function tally(entries: readonly IndexEntry[]): string {
  const count = (status: Result['status']) =>
    entries.filter((one) => one.result.status === status).length;
  return `${count('ok')} with a mode, ${count('unsure')} unsure, ${count('no-arc')} without an arc, ${count('failed')} failed`;
}

function table(entries: readonly IndexEntry[]): string {
  const rows = entries.map(({ result, href }) => {
    const { confidence, crossCheck, quality, source } = result;
    const cells = [
      `<td>${verdictLetter(result)} ${escapeHtml(verdictWords(result))}</td>`,
      `<td class="n">${confidence === null ? '–' : percent(confidence)}</td>`,
      `<td>${crossCheck ? crossCheck.settings.answer.replace('-', ' ') : 'not stated'}</td>`,
      `<td class="n">${quality.length}</td>`,
      `<td class="n">${source.durationS === null ? '–' : sayTime(source.durationS)}</td>`,
    ];
    return `<tr><th scope="row"><a href="${escapeHtml(href)}">${escapeHtml(source.path)}</a></th>${cells.join('')}</tr>`;
  });
  return `<table><thead><tr><th scope="col">recording</th><th scope="col">answer</th><th class="n" scope="col">confidence</th><th scope="col">against the settings</th><th class="n" scope="col">doubts</th><th class="n" scope="col">length</th></tr></thead><tbody>${rows.join('')}</tbody></table>`;
}

function card(
  { result, glance, href }: IndexEntry,
  k: number,
  shared: { durationS: number; rateHz: number },
): string {
  const name = escapeHtml(result.source.path);
  const svg = glance
    ? smallMultiple(glance, shared, { id: `glance-${k}`, title: `Run ${k + 1} at a glance` })
    : '';
  return `<li class="card"><h3><a href="${escapeHtml(href)}">${name}</a></h3><p>${verdictLetter(result)} ${escapeHtml(verdictWords(result))}</p>${svg}</li>`;
}

function cautions(entries: readonly IndexEntry[]): string {
  const words = new Set(entries.flatMap(({ result }) => result.cautions));
  if (words.size === 0) return '';
  return `<section><div class="cautions" role="note" aria-label="Cautions"><ul>${[...words].map((one) => `<li>${escapeHtml(one)}</li>`).join('')}</ul></div></section>`;
}
