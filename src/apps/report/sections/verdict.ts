import type { Result } from '../../../analysis/result/index.js';
import { MODES } from '../../../core/index.js';
import {
  MODE_WORDS,
  percent,
  sayConfidence,
  sayLeaning,
  sayRate,
  sayRates,
  sayTime,
  sayWhere,
} from '../../view/index.js';
import { modeClass, modeFill } from '../charts/mode-marks.js';
import { el } from '../charts/svg.js';
import { escapeHtml } from '../escape.js';

/** The verdict in words, as it stands on top of the page and in an index. */
export function verdictWords(result: Result): string {
  switch (result.status) {
    case 'ok': {
      if (result.mode === null || result.mode === 'mixed') return 'Mixed transfer';
      const { name } = MODE_WORDS[result.mode];
      return `${name.charAt(0).toUpperCase()}${name.slice(1)} transfer`;
    }
    case 'unsure':
      return 'Unsure: no mode is named';
    case 'no-arc':
      return 'No arc in this recording';
    case 'failed':
      return 'This input could not be judged';
  }
}

/** The letter of the mode, or a sign where none is named. */
export function verdictLetter({ status, mode }: Result): string {
  if (status === 'failed') return '!';
  if (status === 'no-arc') return '–';
  if (status === 'unsure' || mode === null) return '?';
  return mode === 'mixed' ? 'M' : MODE_WORDS[mode].letter;
}

/** File, verdict, how sure, over what, how often, and the chance of each mode. */
export function verdictSection(result: Result): string {
  const single = result.mode !== null && result.mode !== 'mixed' ? result.mode : null;
  const lines = [sayWhere(result), sayRates(result)].filter((one) => one !== '');
  const sure =
    result.confidence === null ? '' : `<p class="sure">${sayConfidence(result.confidence)}</p>`;
  const reason =
    result.status === 'failed'
      ? (result.error?.message ?? result.statusReason)
      : result.statusReason;
  return `<section id="verdict" class="verdict ${modeClass(single)}" aria-labelledby="verdict-words">
${plate(result)}
<div><h1 id="verdict-words">${escapeHtml(verdictWords(result))}</h1>
${sure}<p>${escapeHtml(reason)}</p>
${lines.map((line) => `<p>${escapeHtml(capital(line))}.</p>`).join('\n')}
${result.status === 'unsure' ? `<p>${escapeHtml(sayLeaning(result))}</p>` : ''}
${chances(result)}</div>
</section>`;
}

/** What was judged, in one line above the verdict. */
export function sourceHeader({ source }: Result): string {
  const kind = source.kind === 'electrical' ? 'voltage and current trace' : source.kind;
  const facts = [
    kind,
    source.format,
    source.sampleRateHz === null ? null : sayRate(source.sampleRateHz),
    source.durationS === null ? null : sayTime(source.durationS),
  ].filter((one) => one !== null);
  return `<p><span class="file">${escapeHtml(source.path)}</span> ${escapeHtml(facts.join(', '))}</p>`;
}

function plate(result: Result): string {
  const mode = result.mode !== null && result.mode !== 'mixed' ? result.mode : null;
  const ground = el('rect', {
    class: 'plate-ground',
    x: 2,
    y: 2,
    width: 88,
    height: 88,
    fill: modeFill(mode),
  });
  const letter = `<text x="46" y="62" text-anchor="middle">${verdictLetter(result)}</text>`;
  return `<svg class="plate-letter" viewBox="0 0 92 92" aria-hidden="true">${ground}${letter}</svg>`;
}

function chances({ probabilities }: Result): string {
  if (!probabilities) return '';
  const rows = MODES.map((mode) => {
    const share = probabilities[mode] ?? 0;
    const bar =
      el('rect', { class: 'ground', width: 200, height: 12 }) +
      el('rect', {
        class: `block ${modeClass(mode)}`,
        fill: modeFill(mode),
        width: Math.max(0.5, 200 * share),
        height: 12,
      });
    const { name, letter } = MODE_WORDS[mode];
    return `<li><span>${letter} ${name}</span><svg viewBox="0 0 200 12" preserveAspectRatio="none" aria-hidden="true">${bar}</svg><span class="number">${percent(share)}</span></li>`;
  });
  return `<ul class="chances" aria-label="Chance of each mode">${rows.join('')}</ul>`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
