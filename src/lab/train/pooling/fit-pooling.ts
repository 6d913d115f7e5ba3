import { type Pooling, type PoolWeights, pool } from '../../../analysis/fusion/index.js';
import {
  accuracyOf,
  brierScore,
  calibrationError,
  type ForecastCase,
  logLoss,
} from '../../evaluate/index.js';
import type { OpinionPair } from './opinions.js';

type TraceSet = keyof Pooling['weights'];
/** Weights that are tried: 0 to 1 in steps of a twentieth. Calibrated opinions are not sharpened. */
const STEPS = Array.from({ length: 21 }, (_, i) => i / 20);

/**
 * Weights with the least log loss over pairs of held-out opinions. The figures beside them are honest too:
 * each family is pooled by weights fitted on the others.
 */
export function fitPooling(
  pairs: Record<TraceSet, readonly OpinionPair[]>,
  models: Record<string, string>,
  record: Record<string, unknown>,
): Pooling {
  const bySet = <T>(of: (pairs: readonly OpinionPair[]) => T): Record<TraceSet, T> => ({
    voltage: of(pairs.voltage),
    'voltage-current': of(pairs['voltage-current']),
    current: of(pairs.current),
  });
  return {
    kind: 'arc-transfer-pooling',
    schemaVersion: '1',
    weights: bySet(fitWeights),
    models,
    fitting: { ...record, checked: bySet(checkFigures) },
  };
}

/** The pair of weights with the least log loss; ties go to the smaller. */
function fitWeights(pairs: readonly OpinionPair[]): PoolWeights {
  let best: PoolWeights = { sound: 0, trace: 1 };
  let least = Infinity;
  for (const trace of STEPS)
    for (const sound of STEPS) {
      const loss = logLoss(casesOf(pairs, { sound, trace })) ?? Infinity;
      if (loss >= least) continue;
      least = loss;
      best = { sound, trace };
    }
  return best;
}

/** Sound alone, trace alone and both by weights that were fitted on the other families. */
function checkFigures(pairs: readonly OpinionPair[]) {
  const families = [...new Set(pairs.map((one) => one.family))].sort();
  const pooled = families.flatMap((family) => {
    const by = fitWeights(pairs.filter((one) => one.family !== family));
    return casesOf(
      pairs.filter((one) => one.family === family),
      by,
    );
  });
  return {
    sound: figures(casesOf(pairs, { sound: 1, trace: 0 })),
    trace: figures(casesOf(pairs, { sound: 0, trace: 1 })),
    both: figures(pooled),
  };
}

/** A pooled opinion against the truth. */
interface PooledCase extends ForecastCase {
  unambiguous: boolean;
}

function figures(cases: readonly PooledCase[]) {
  const clear = cases.filter((one) => one.unambiguous);
  return {
    runs: cases.length,
    accuracy: round(accuracyOf(cases)),
    unambiguousRuns: clear.length,
    accuracyOfUnambiguous: round(accuracyOf(clear)),
    logLoss: round(logLoss(cases)),
    brier: round(brierScore(cases)),
    calibrationError: round(calibrationError(cases)),
  };
}

function casesOf(pairs: readonly OpinionPair[], by: PoolWeights): PooledCase[] {
  return pairs.map(({ truth, unambiguous, sound, trace }) => ({
    truth,
    unambiguous,
    probabilities: Array.from(pool(sound, trace, by)),
  }));
}

function round(value: number | null): number | null {
  return value === null ? null : Number(value.toFixed(4));
}
