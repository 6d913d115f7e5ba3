import { MODES, type Mode } from '../../core/index.js';
import type { FeatureSet } from '../../features/index.js';
import { message } from '../../messages/index.js';
import type { RunEvidence } from '../run-evidence.js';
import type { Reason } from '../verdict.js';
import { MEASURED_SIGNS, type MeasuredSign } from './measured-signs.js';
import type { UsualRange } from './usual-range.js';
import { USUAL_SIGNS } from './usual-signs.js';

const MOST = 6;
/** Share of runs of a mode that must show a sign for its range to mean anything. Own choice. */
const LEAST_SHOWN = 0.2;
/** Largest distance, in spreads of a mode, that counts: beyond it the range is simply left. */
const FAR = 4;
/** Spread of the spacing, over its mean, up to which cracks are even, and from which they are uneven. Own choice. */
const EVEN = 0.35;
const UNEVEN = 0.6;

/**
 * Measured signs beside an answer by ear, as far as they tell modes apart: those usual for the likeliest mode, the
 * most telling first, then those that are not (with a weight below 0). They were measured apart from the answer.
 */
export function signReasons(evidence: RunEvidence, set: FeatureSet, likeliest: Mode): Reason[] {
  const mean = (feature: string): number =>
    evidence.vector.mean(set.features.findIndex(({ id }) => id === feature));
  const reasons = MEASURED_SIGNS.flatMap((sign) => {
    const value = sign.value(mean);
    return Number.isFinite(value) ? reasonOf(sign, value, likeliest, mean) : [];
  });
  return reasons
    .sort(
      (a, b) =>
        Number(b.weight > 0) - Number(a.weight > 0) || Math.abs(b.weight) - Math.abs(a.weight),
    )
    .slice(0, MOST);
}

function reasonOf(
  sign: MeasuredSign,
  value: number,
  likeliest: Mode,
  mean: (feature: string) => number,
): Reason[] {
  const usual = USUAL_SIGNS[sign.id];
  const range = usual[likeliest];
  if (range.shown < LEAST_SHOWN) return [];
  const isUsual = (mode: Mode): boolean =>
    usual[mode].shown >= LEAST_SHOWN && value >= usual[mode].low && value <= usual[mode].high;
  const fits = isUsual(likeliest);
  const rivals = MODES.filter((mode) => mode !== likeliest);
  const others = rivals.filter((mode) => isUsual(mode) !== fits);
  // What is usual for all, or for none, tells nothing apart.
  if (others.length === 0) return [];
  const nearest = Math.max(...rivals.map((mode) => likelihood(sign, value, usual[mode])));
  const margin = likelihood(sign, value, range) - nearest;
  const weight = fits ? Math.max(0.05, margin) : Math.min(-0.05, margin);
  const { low, high } = range;
  return [
    {
      feature: sign.id,
      value,
      unit: sign.unit,
      speaksFor: likeliest,
      weight,
      ...message('usual-sign', {
        sign: sign.id,
        value,
        spacing: sign.id === 'crackRateHz' ? spacingOf(mean('onsetIntervalCv')) : null,
        mode: likeliest,
        low,
        high,
        fits,
        others,
      }),
    },
  ];
}

function spacingOf(cv: number): 'even' | 'uneven' | null {
  if (cv <= EVEN) return 'even';
  return cv >= UNEVEN ? 'uneven' : null;
}

/** Log-likelihood but for a constant, as if each side of the middle were half a bell. */
function likelihood({ byRatio }: MeasuredSign, value: number, range: UsualRange): number {
  const scale = (x: number): number => (byRatio ? Math.log(Math.max(x, 1e-6)) : x);
  const side = value < range.middle ? range.low : range.high;
  const spread = Math.max(Math.abs(scale(side) - scale(range.middle)) / 1.2816, 1e-3);
  const z = Math.min(FAR, Math.abs(scale(value) - scale(range.middle)) / spread);
  return -0.5 * z * z - Math.log(spread);
}
