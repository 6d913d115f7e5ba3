import { type Machine, mostRegular, type SweepStep } from '../../analysis/sweep/index.js';
import { MODES, unitOf } from '../../core/index.js';
import {
  BEFORE_YOU_CHANGE,
  BEFORE_YOU_CHANGE_MESSAGES,
  type processMaps,
} from '../../setup/index.js';
import { type StepView, sayStepPlace, tellAll, viewSteps, type Words } from '../view/index.js';
import { placedSteps, type SweepLimits, sweepChart } from './charts/sweep-chart.js';
import { htmlDocument } from './document.js';
import { escapeHtml } from './escape.js';
import { edgesOf } from './process-map/svg-fields.js';
import { mapChart } from './process-map/svg-map.js';
import { cautionBox } from './sections/questions.js';

type MapPicture = processMaps.MapPicture;

/** The measured map of a machine beside the published one, with the table of its steps. */
export function sweepPage(
  machine: Machine,
  published: { map: MapPicture; disagrees: { count: number; of: number } } | null,
  words: Words,
): string {
  const { sweep } = words;
  const title = sweep.title(machine.machine);
  const body = `<a class="skip" href="#main">${words.report.skip}</a>
<header class="top"><h1>${escapeHtml(title)}</h1><p>${sweep.steps(machine.steps.length)}</p></header>
<main id="main">
<section id="map" class="long"><div class="pair">${pictures(machine, published?.map ?? null, words)}</div>
${published === null ? `<p>${sweep.noPublished}</p>` : `<p>${escapeHtml(sweep.disagrees(published.disagrees.count, published.disagrees.of))}</p>`}</section>
<section id="best"><h2>${sweep.best}</h2>${bestList(machine, words)}</section>
<section id="steps"><h2>${sweep.steps(machine.steps.length)}</h2>${table(viewSteps(machine.steps, words), words)}</section>
<section>${cautionBox([{ text: sweep.caution, lang: words.lang }, ...tellAll(BEFORE_YOU_CHANGE, BEFORE_YOU_CHANGE_MESSAGES, words)], words)}</section>
</main>
<footer class="foot"><p>${escapeHtml(words.report.madeBy('arc-transfer'))}</p></footer>`;
  return htmlDocument(title, body, '', words.lang);
}

/** The measured map alone, as a picture with the look of the pages. */
export function sweepPicture(machine: Machine, published: MapPicture | null, words: Words): string {
  const steps = placedSteps(machine.steps);
  const limits = published ? edgesOf(published) : limitsOf(steps);
  const best = new Set<SweepStep>(Object.values(mostRegular(machine.steps)));
  return sweepChart(steps, best, limits, 'measured-map', words);
}

function pictures(machine: Machine, published: MapPicture | null, words: Words): string {
  const { measured, published: other } = words.sweep;
  const cards = [[measured, sweepPicture(machine, published, words)]];
  if (published)
    cards.push([
      other,
      mapChart(published, 'published-map', words.numbers, unitOf('feed', words.units), words.map),
    ]);
  return cards
    .map(([name, svg]) => `<figure class="card"><figcaption>${name}</figcaption>${svg}</figure>`)
    .join('');
}

/** Room around the steps, where no published map sets the axes. */
function limitsOf(steps: readonly { meanVoltageV: number; meanCurrentA: number }[]): SweepLimits {
  const amps = steps.map((one) => one.meanCurrentA);
  const volts = steps.map((one) => one.meanVoltageV);
  return {
    leastA: Math.min(50, ...amps) - 10,
    mostA: Math.max(150, ...amps) + 30,
    leastV: Math.min(14, ...volts) - 2,
    mostV: Math.max(24, ...volts) + 3,
  };
}

function bestList(machine: Machine, words: Words): string {
  const best = mostRegular(machine.steps);
  const items = MODES.flatMap((mode) => {
    const step = best[mode];
    if (!step) return [];
    const spread = words.numbers.figure(step.regularity!);
    return [words.sweep.bestOf(words.mode(mode), sayStepPlace(step, words), spread)];
  });
  if (items.length === 0) return `<p>${words.sweep.none}</p>`;
  return `<ul>${items.map((one) => `<li>${escapeHtml(one)}</li>`).join('')}</ul>`;
}

function table(steps: readonly StepView[], { sweep }: Words): string {
  const rows = steps.map(
    ({ cells }) =>
      `<tr>${cells.map((cell, k) => (k === 0 ? `<th scope="row">${escapeHtml(cell)}</th>` : `<td${NUMBERS.includes(k) ? ' class="n"' : ''}>${escapeHtml(cell)}</td>`)).join('')}</tr>`,
  );
  const heads = sweep.heads.map(
    (one, k) => `<th${NUMBERS.includes(k) ? ' class="n"' : ''} scope="col">${one}</th>`,
  );
  return `<div class="card scroll" tabindex="0" role="group" aria-label="${sweep.steps(steps.length)}"><table><thead><tr>${heads.join('')}</tr></thead><tbody>${rows.join('')}</tbody></table></div>`;
}

/** Columns of numbers. */
const NUMBERS: readonly number[] = [1, 3, 4, 5, 6, 7, 8];
