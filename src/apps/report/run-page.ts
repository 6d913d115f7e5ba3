import { htmlDocument } from './document.js';
import { ENGLISH_PICTURES } from './english.js';
import { escapeHtml, scriptJson } from './escape.js';
import { pack } from './pack.js';
import type { RunView } from './run-view.js';
import { placeSection, reasonSection } from './sections/place-and-reasons.js';
import { provenanceSection } from './sections/provenance.js';
import { actionSection, questionCards } from './sections/questions.js';
import { shapeSection } from './sections/shape.js';
import { timeSection } from './sections/time.js';
import { sourceHeader, verdictSection, verdictWords } from './sections/verdict.js';

const LINKS = [
  ['next', 'What to check next'],
  ['when', 'When'],
  ['shape', 'What the arc looks like'],
  ['place', 'Where it sits'],
  ['why', 'Why'],
  ['how', 'How it was made'],
] as const;

/**
 * The page of one run: everything in one file, nothing asked of a network.
 * @param script the bundled page script; it zooms, reads out and plays. Without it the page still says all.
 * @param up address of the index that this page belongs to
 */
export function runPage(run: RunView, script: string, up?: string): string {
  const { result } = run;
  const sections = [
    verdictSection(result),
    questionCards(result),
    actionSection(result, run.units),
    timeSection(run, ENGLISH_PICTURES),
    shapeSection(run, ENGLISH_PICTURES),
    placeSection(run, ENGLISH_PICTURES),
    reasonSection(run, ENGLISH_PICTURES),
    provenanceSection(run),
  ].join('\n');
  const links = LINKS.filter(([id]) => sections.includes(`<section id="${id}"`)).map(
    ([id, words]) => `<li><a href="#${id}">${words}</a></li>`,
  );
  const back = up === undefined ? '' : `<p><a href="${escapeHtml(up)}">← all runs</a></p>`;
  const body = `<a class="skip" href="#main">Skip to the answer</a>
<header class="top">${back}${sourceHeader(result)}</header>
<main id="main">
${sections.replace('</section>', `</section>\n<nav aria-label="On this page"><ul>${links.join('')}</ul></nav>`)}
</main>
<footer class="foot"><p>Made by ${escapeHtml(result.tool.name)} ${escapeHtml(result.tool.version)}. This page works offline and sends nothing anywhere.</p></footer>
${timeData(run)}`;
  const live = run.evidence !== null && run.evidence.durationS > 0;
  return htmlDocument(`${verdictWords(result)}: ${result.source.path}`, body, live ? script : '');
}

/** What the script needs to draw the run over time at any zoom. */
function timeData({ result, evidence }: RunView): string {
  if (!evidence) return '';
  const unused = { plane: null, levels: null, averageShort: null, spectrum: null, intervals: null };
  const data = pack({
    arcStretches: result.arcStretches,
    segments: result.segments,
    evidence: { ...evidence, ...unused },
  });
  return `<script type="application/json" id="run-data">${scriptJson(data)}</script>`;
}
