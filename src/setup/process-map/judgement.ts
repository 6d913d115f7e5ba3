import type { ProcessMap } from './boundary-lines.js';
import { likelihoods, type MapPoint } from './likelihood.js';
import { type Likelihoods, type Outcome, ranked } from './outcomes.js';

/** `permitted`: three of ten or more; `unlikely`: at least one of twenty; else `not-possible`. Own choice. */
export type Chance = 'permitted' | 'unlikely' | 'not-possible';

const PERMITTED = 0.3;
const POSSIBLE = 0.05;
/** Two outcomes at or above this make a mixed zone; own choice. */
export const MIXED = 0.25;

/** What is said of one outcome. */
export interface OutcomeJudgement {
  outcome: Outcome;
  likelihood: number;
  /** The likelihood in tenths, 0 to 10. */
  inTen: number;
  chance: Chance;
  /** Volts at the feeder, at the same current, where this outcome becomes or ceases to be the likeliest; null where none does. */
  flipsAtV: number | null;
}

/** What is to be expected at a point. */
export interface PointJudgement {
  likelihoods: Likelihoods;
  likeliest: OutcomeJudgement;
  /** The outcome that takes over with the least change of volts, and the change; null where none does within 8 V. */
  next: { outcome: Outcome; byV: number } | null;
  /** True where two outcomes stand at a quarter or more. */
  mixed: boolean;
  outcomes: OutcomeJudgement[];
}

const FARTHEST_V = 8;
const STEP_V = 0.1;

/** Judges a point: every outcome with its chance, and the figure where it flips. */
export function judgePoint(map: ProcessMap, point: MapPoint): PointJudgement {
  const here = likelihoods(map, point);
  const order = ranked(here);
  const first = order[0]!.outcome;
  const walk = walkVolts(map, point);
  const outcomes = order.map(({ outcome, likelihood }) => ({
    outcome,
    likelihood,
    inTen: Math.round(likelihood * 10),
    chance: chanceOf(likelihood),
    flipsAtV: outcome === first ? leaves(walk, point.voltageV.mean) : reaches(walk, outcome, point),
  }));
  return {
    likelihoods: here,
    likeliest: outcomes[0]!,
    next: nextOutcome(walk, first),
    mixed: order[1]!.likelihood >= MIXED,
    outcomes,
  };
}

export const chanceOf = (likelihood: number): Chance =>
  likelihood >= PERMITTED ? 'permitted' : likelihood >= POSSIBLE ? 'unlikely' : 'not-possible';

/** Likeliest outcome for volts moved by `byV`, nearest first. */
interface Step {
  byV: number;
  likeliest: Outcome;
}

function walkVolts(map: ProcessMap, point: MapPoint): Step[] {
  const steps: Step[] = [];
  for (let n = 0; n <= FARTHEST_V / STEP_V; n++) {
    for (const sign of n === 0 ? [1] : [-1, 1]) {
      const byV = Number((sign * n * STEP_V).toFixed(1));
      const moved = { ...point, voltageV: { ...point.voltageV, mean: point.voltageV.mean + byV } };
      steps.push({ byV, likeliest: ranked(likelihoods(map, moved))[0]!.outcome });
    }
  }
  return steps;
}

function leaves(walk: readonly Step[], volts: number): number | null {
  const first = walk[0]!.likeliest;
  const step = walk.find((one) => one.likeliest !== first);
  return step === undefined ? null : volts + step.byV;
}

function reaches(walk: readonly Step[], outcome: Outcome, point: MapPoint): number | null {
  const step = walk.find((one) => one.likeliest === outcome);
  return step === undefined ? null : point.voltageV.mean + step.byV;
}

function nextOutcome(walk: readonly Step[], first: Outcome): PointJudgement['next'] {
  const step = walk.find((one) => one.likeliest !== first);
  return step === undefined ? null : { outcome: step.likeliest, byV: step.byV };
}
