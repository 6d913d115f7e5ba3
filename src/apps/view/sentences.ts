import type { Result } from '../../analysis/result/index.js';
import { MODES } from '../../core/index.js';
import { sayShares } from './timeline-bar.js';
import { figure, MODE_WORDS, percent, sayTime } from './words.js';

/** Over what share of the arc and since when; empty without an arc. */
export function sayWhere(result: Result): string {
  const first = result.arcStretches[0];
  const last = result.arcStretches.at(-1);
  if (!first || !last) return '';
  const arcS = result.arcStretches.reduce((total, one) => total + one.endS - one.startS, 0);
  const from = first.openStart ? `before the recording began` : sayTime(first.startS);
  const to = last.openEnd ? 'its end' : sayTime(last.endS);
  const count = result.arcStretches.length;
  const parts = count > 1 ? ` in ${count} stretches` : '';
  const shares = result.shareOfArcTime ? `${sayShares(result.shareOfArcTime)} of ` : '';
  return `${shares}${sayTime(arcS)} of arc${parts}, from ${from} to ${to}`;
}

const RATES = [
  ['shortCircuitRateHz', 'short circuits'],
  ['dropRateHz', 'drops'],
  ['pulseRateHz', 'pulses'],
  ['eventRateHz', 'arc events'],
] as const;

/** Event rates that the recording shows; empty where it shows none. */
export function sayRates(result: Result): string {
  const known = RATES.flatMap(([key, name]) => {
    const value = result.features[key];
    return typeof value === 'number' ? [{ value, name }] : [];
  });
  // The event rate often is one of the others under its general name.
  const shown = known
    .filter(({ value }, k) => known.findIndex((one) => one.value === value) === k)
    .map(({ value, name }) => `${figure(value)} ${name} a second`);
  return shown.join(', ');
}

/** The modes by probability, for an answer that names none; empty without probabilities. */
export function sayLeaning(result: Result): string {
  const { probabilities } = result;
  if (!probabilities) return '';
  const parts = MODES.map((mode) => ({ mode, p: probabilities[mode] ?? 0 }))
    .sort((a, b) => b.p - a.p)
    .map(({ mode, p }) => `${MODE_WORDS[mode].name} ${percent(p)}`);
  return `Leaning: ${parts.join(', ')}.`;
}
