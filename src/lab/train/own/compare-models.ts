import { createRandom, MODES, type Mode } from '../../../core/index.js';
import { calibrate, type FittedModel } from '../../../model/index.js';
import {
  accuracyOf,
  bootstrapAll,
  brierScore,
  type ForecastCase,
  type Interval,
  logLoss,
} from '../../evaluate/index.js';
import { calibrateRuns, type HeldOutRun } from '../fit/fit-model.js';
import { scoreRun } from '../fit/run-rows.js';

/** A new model and the shipped one on the same recordings, none of which the new one had learnt from. */
export interface ModelComparison {
  runs: number;
  /** On what the interval of the difference lies wholly on one side, see {@link MATTERS}. */
  better: FigureName[];
  worse: FigureName[];
  answer: 'better' | 'worse' | 'cannot-tell';
  accuracy: ComparedFigure;
  brier: ComparedFigure;
  logLoss: ComparedFigure;
  /** Accuracy in each mode and each group. */
  parts: { part: string; runs: number; own: number; shipped: number }[];
}

export type FigureName = 'accuracy' | 'brier' | 'logLoss';

/**
 * Smallest difference that matters (own choice): a model that knows fewer modes is a little surer of them,
 * which alone is no gain.
 */
const MATTERS: Record<FigureName, number> = { accuracy: 0, brier: 0.02, logLoss: 0.05 };

export interface ComparedFigure {
  own: number;
  shipped: number;
  /** Own less shipped, over recordings drawn again. */
  difference: Interval;
}

interface Pair {
  mode: Mode;
  group: string;
  own: ForecastCase;
  shipped: ForecastCase;
}

/**
 * Compares on held-out runs. Each group's probabilities are calibrated on the other groups, so that the
 * new model gains nothing from having seen the group.
 */
export function compareModels(
  heldOut: readonly HeldOutRun[],
  shipped: FittedModel,
): ModelComparison {
  const pairs = pairsOf(heldOut, shipped);
  const difference = bootstrapAll(
    pairs,
    (drawn) => ({
      accuracy: accuracy(drawn, 'own') - accuracy(drawn, 'shipped'),
      brier: brier(drawn, 'own') - brier(drawn, 'shipped'),
      logLoss: loss(drawn, 'own') - loss(drawn, 'shipped'),
    }),
    createRandom('compare models'),
  );
  const compared = (
    figure: (pairs: readonly Pair[], who: Who) => number,
    name: FigureName,
  ): ComparedFigure => ({
    own: figure(pairs, 'own'),
    shipped: figure(pairs, 'shipped'),
    difference: difference[name]!,
  });
  const better = FIGURES.filter((name) => gains(name, difference[name]!, 1));
  const worse = FIGURES.filter((name) => gains(name, difference[name]!, -1));
  return {
    runs: pairs.length,
    better,
    worse,
    answer: answerOf(better, worse),
    accuracy: compared(accuracy, 'accuracy'),
    brier: compared(brier, 'brier'),
    logLoss: compared(loss, 'logLoss'),
    parts: partsOf(pairs),
  };
}

type Who = 'own' | 'shipped';
const FIGURES: readonly FigureName[] = ['accuracy', 'brier', 'logLoss'];

/** Whether the new model gains (`sign` 1) or loses (−1) by all of the interval, and by enough to matter. */
function gains(name: FigureName, { value, low, high }: Interval, sign: 1 | -1): boolean {
  const upwards = (name === 'accuracy' ? 1 : -1) * sign;
  return (upwards > 0 ? low > 0 : high < 0) && Math.abs(value) >= MATTERS[name];
}

function answerOf(better: FigureName[], worse: FigureName[]): ModelComparison['answer'] {
  if (better.length > 0 && worse.length === 0) return 'better';
  return worse.length > 0 && better.length === 0 ? 'worse' : 'cannot-tell';
}

function pairsOf(heldOut: readonly HeldOutRun[], shipped: FittedModel): Pair[] {
  const groups = [...new Set(heldOut.map((one) => one.run.family))];
  const maps = new Map(
    groups.map((group) => [
      group,
      calibrateRuns(heldOut.filter((one) => one.run.family !== group)),
    ]),
  );
  return heldOut.flatMap(({ run, mode, scores }) => {
    const shippedScores = scoreRun(run, mode, shipped);
    if (!shippedScores) return [];
    const truth = MODES.indexOf(mode);
    const own = Array.from(calibrate(maps.get(run.family)!, scores));
    const other = calibrate(shipped.runCalibration, shippedScores);
    return [
      {
        mode,
        group: run.family,
        own: { probabilities: own, truth },
        shipped: { probabilities: Array.from(other), truth },
      },
    ];
  });
}

const casesOf = (pairs: readonly Pair[], who: Who) => pairs.map((pair) => pair[who]);
const accuracy = (pairs: readonly Pair[], who: Who) => accuracyOf(casesOf(pairs, who))!;
const brier = (pairs: readonly Pair[], who: Who) => brierScore(casesOf(pairs, who))!;
const loss = (pairs: readonly Pair[], who: Who) => logLoss(casesOf(pairs, who))!;

function partsOf(pairs: readonly Pair[]): ModelComparison['parts'] {
  const parts = new Map<string, Pair[]>();
  for (const pair of pairs)
    for (const name of [`mode ${pair.mode}`, `group ${pair.group}`])
      parts.set(name, [...(parts.get(name) ?? []), pair]);
  return [...parts]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([part, own]) => ({
      part,
      runs: own.length,
      own: accuracy(own, 'own'),
      shipped: accuracy(own, 'shipped'),
    }));
}
