import type { RunFigures } from '../extractor.js';
import { STEP_OVER_NOISE } from './drop-steps.js';

/** Counted steps are believed when half of them clear their threshold by this factor: else many were missed. */
const CLEARANCE = 1.5;
/** Rates at which single steps stand apart; below, chance steps count as much as drops. */
const STEP_SPAN_HZ = [3, 150] as const;
/** Rates at which a line of the spectrum can be drops: below lie pool, hand and pendant drop. */
const LINE_FROM_HZ = 60;
/** Up to here a line may be a swinging pool or pendant drop, and must show its double as drops do. */
const SWING_TO_HZ = 250;

/**
 * Decides which rates of a run are shown. Drops come from counted steps where these are clear, else from
 * a line of the spectrum averaged over `segments`; the events of the run are pulses, or shorts and drops
 * together. NaN means not shown.
 */
export function judgeDrops(figures: RunFigures, segments: number): RunFigures {
  const of = (key: string) => figures[key] ?? Number.NaN;
  const pulseHz = of('pulseRateHz');
  const bySteps = pulseHz > 0 ? Number.NaN : rateFromSteps(of);
  const byLine = pulseHz > 0 ? Number.NaN : rateFromLine(of, segments);
  const dropRateHz = Number.isNaN(bySteps) ? byLine : bySteps;
  const shortHz = of('shortCircuitRateHz');
  const eventHz = shortHz + (Number.isNaN(dropRateHz) ? 0 : dropRateHz);
  const counted = !Number.isNaN(bySteps);
  return {
    dropRateHz,
    dropIntervalCv: counted ? of('stepIntervalCv') : Number.NaN,
    dropStepV: counted ? of('stepV') : Number.NaN,
    eventRateHz: pulseHz > 0 ? pulseHz : eventHz > 0 ? eventHz : Number.NaN,
  };
}

function rateFromSteps(of: (key: string) => number): number {
  const rateHz = of('stepRateHz');
  const clear = of('stepV') >= CLEARANCE * STEP_OVER_NOISE * of('stepNoiseV');
  return clear && rateHz >= STEP_SPAN_HZ[0] && rateHz <= STEP_SPAN_HZ[1] ? rateHz : Number.NaN;
}

function rateFromLine(of: (key: string) => number, segments: number): number {
  const lineHz = of('lineHz');
  // The highest of 240 bins of averaged noise: about 1 + 3/√n standard deviations of each; twice that is a line.
  const least = 1 + 8 / Math.sqrt(segments);
  if (!(lineHz >= LINE_FROM_HZ && of('lineProminence') >= least)) return Number.NaN;
  const double = of('lineHarmonic');
  if (lineHz < SWING_TO_HZ && !(double >= 1 + 4 / Math.sqrt(segments))) return Number.NaN;
  // Shorts leave their own lines, whatever is cut out of the trace.
  return of('allShortsRateHz') > 3 ? Number.NaN : lineHz;
}
