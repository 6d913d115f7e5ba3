import type { Result } from '../../../analysis/result/index.js';
import { rangeWithUnit, type UnitSystem } from '../../../core/index.js';
import { cautionsOf, percent } from '../../view/index.js';
import { escapeHtml } from '../escape.js';

type CrossCheck = NonNullable<Result['crossCheck']>;

const ANSWERS = {
  agrees: ['good', '✓ Agrees'],
  disagrees: ['bad', '✗ Disagrees'],
  'cannot-tell': ['doubt', '? Cannot tell'],
} as const;

/** The three questions that come before acting: is the evidence good, does the set-up fit, was it wanted. */
export function questionCards(result: Result): string {
  if (result.status === 'failed') return '';
  const { crossCheck } = result;
  const cards = [
    card('Can I rely on this recording?', quality(result)),
    card(
      'Does it fit the settings?',
      crossCheck
        ? answer(crossCheck.settings)
        : notStated('No set-up was stated, so there is nothing to compare with.'),
    ),
    card(
      'Is it the mode that was wanted?',
      crossCheck?.intended
        ? answer(crossCheck.intended)
        : notStated('No wanted mode was stated (--expect).'),
    ),
  ];
  return `<section class="questions" aria-label="Before you rely on it">${cards.join('\n')}</section>`;
}

function card(title: string, body: string): string {
  return `<div><h2>${title}</h2>${body}</div>`;
}

function quality({ quality: doubts, source }: Result): string {
  const notes =
    source.notes.length === 0
      ? ''
      : `<details><summary>${source.notes.length} assumed while reading</summary><ul>${source.notes
          .map((note) => `<li>${escapeHtml(note.message)}</li>`)
          .join('')}</ul></details>`;
  if (doubts.length === 0)
    return `<p class="answer good">✓ Nothing speaks against it</p><p>No clipping, gaps or other faults were found.</p>${notes}`;
  const count = doubts.length === 1 ? '! One doubt' : `! ${doubts.length} doubts`;
  const list = doubts
    .map(({ message, share }) => `<li>${escapeHtml(message)} (${percent(share)} of it)</li>`)
    .join('');
  return `<p class="answer doubt">${count}</p><ul>${list}</ul>${notes}`;
}

function answer(
  part: NonNullable<CrossCheck['intended']> & Partial<CrossCheck['settings']>,
): string {
  const [kind, words] = ANSWERS[part.answer];
  const compared = part.comparedVoltage
    ? `<p>Compared: ${escapeHtml(part.comparedVoltage)}.</p>`
    : '';
  return `<p class="answer ${kind}">${words}</p><p>${escapeHtml(part.text)}</p>${compared}`;
}

function notStated(words: string): string {
  return `<p class="answer doubt">– Not stated</p><p>${words}</p>`;
}

/** What to change, then what to check next, likeliest first, each with what speaks for and against it; and the cautions. */
export function actionSection(result: Result, units: UnitSystem = 'metric'): string {
  const { crossCheck } = result;
  const cautions = cautionsOf(result);
  const ranked = (crossCheck?.explanations ?? []).toSorted((a, b) => a.rank - b.rank);
  const checks = ranked
    .map(
      (one) =>
        `<li><strong>${escapeHtml(one.check)}</strong><div class="because">${escapeHtml(one.text)}</div>${evidence('Speaks for it', one.evidenceFor)}${evidence('Speaks against it', one.evidenceAgainst)}</li>`,
    )
    .join('\n');
  const advice = crossCheck?.advice ?? [];
  const change =
    advice.length === 0
      ? ''
      : `<h2>What do I change?</h2>${advice.map((one) => `<p>${escapeHtml(one)}</p>`).join('')}`;
  const head =
    change +
    energy(crossCheck?.heatInput, units) +
    (checks === '' ? '' : `<h2>What do I check next?</h2><ol class="checks">${checks}</ol>`);
  const warn =
    cautions.length === 0
      ? ''
      : `<div class="cautions" role="note" aria-label="Cautions"><ul>${cautions.map((one) => `<li>${escapeHtml(one)}</li>`).join('')}</ul></div>`;
  return head + warn === '' ? '' : `<section id="next">${head}\n${warn}</section>`;
}

function evidence(title: string, points: readonly string[]): string {
  if (points.length === 0) return '';
  return `<div class="because">${title}: ${escapeHtml(points.map(sentence).join(' '))}</div>`;
}

/** Energy along the seam, both ways of counting. */
function energy(heat: NonNullable<Result['crossCheck']>['heatInput'], units: UnitSystem): string {
  if (heat === undefined) return '';
  const shown = (one: { min: number; max: number }): string => rangeWithUnit(one, 'energy', units);
  return `<p>Heat input ${shown(heat.arcEnergyKjPerMm)} without thermal efficiency (AWS, ASME), ${shown(heat.heatInputKjPerMm)} with thermal efficiency 0.8 (EN 1011-1).</p>`;
}

/** With its full stop, where it has none. */
const sentence = (point: string): string => (/[.!?]$/u.test(point) ? point : `${point}.`);
