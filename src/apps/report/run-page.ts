import { ENGLISH, viewAnswer, viewResult, type Words } from '../view/index.js';
import { htmlDocument } from './document.js';
import { escapeHtml, scriptJson } from './escape.js';
import { pack } from './pack.js';
import type { RunView } from './run-view.js';
import { answerCards } from './sections/answer-cards.js';
import { conditionSection } from './sections/condition.js';
import { placeSection, reasonSection } from './sections/place-and-reasons.js';
import { provenanceSection } from './sections/provenance.js';
import { actionSection } from './sections/questions.js';
import { shapeSection } from './sections/shape.js';
import { timeSection } from './sections/time.js';
import { sourceHeader, verdictSection } from './sections/verdict.js';

const LINKS = ['next', 'condition', 'when', 'shape', 'place', 'why', 'how'] as const;

/**
 * The page of one run: everything in one file, nothing asked of a network.
 * @param script the bundled page script; it zooms, reads out and plays. Without it the page still says all.
 * @param up address of the index that this page belongs to
 * @param words of the page's language; English unless told
 */
export function runPage(run: RunView, script: string, up?: string, words: Words = ENGLISH): string {
  const { result } = run;
  const { report } = words;
  const view = viewResult(result, words);
  const answer = viewAnswer(result, words);
  const sections = [
    verdictSection(view, answer, words),
    answerCards(run, view, answer, words),
    actionSection(view, words, answer),
    conditionSection(view, words),
    timeSection(run, words),
    shapeSection(run, words),
    placeSection(run, words),
    reasonSection(run, words),
    provenanceSection(run, view, words),
  ].join('\n');
  const links = LINKS.filter((id) => sections.includes(`<section id="${id}"`)).map(
    (id) => `<li><a href="#${id}">${report.links[id]}</a></li>`,
  );
  const back = up === undefined ? '' : `<p><a href="${escapeHtml(up)}">${report.allRuns}</a></p>`;
  const body = `<a class="skip" href="#main">${report.skip}</a>
<header class="top">${back}${sourceHeader(view)}</header>
<main id="main">
${sections.replace('</section>', `</section>\n<nav aria-label="${report.onThisPage}"><ul>${links.join('')}</ul></nav>`)}
</main>
<footer class="foot"><p>${escapeHtml(report.madeBy(`${result.tool.name} ${result.tool.version}`))}</p></footer>
${timeData(run)}`;
  const live = run.evidence !== null && run.evidence.durationS > 0;
  const title = `${answer.title}: ${result.source.path}`;
  return htmlDocument(title, body, live ? script : '', words.lang);
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
