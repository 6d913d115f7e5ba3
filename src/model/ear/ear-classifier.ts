import { MODES } from '../../core/index.js';
import type { FeatureWindow, HeardBlock } from '../../features/index.js';
import { isSilent } from '../arc-classifier.js';
import { softmax } from '../calibration.js';
import type {
  ArcQuestion,
  Classifier,
  RunOpinion,
  RunSums,
  WindowJudgement,
} from '../classifier.js';
import { HeardSums, outputOf } from '../network/index.js';
import { noveltyDistance } from '../novelty.js';
import { type Ear, type EarModel, earOf, type SlopeAndOffsets } from './ear-document.js';

/** Mean square (−130 dB of full scale) below which nothing was recorded. */
const SILENCE = 1e-13;

/** Judges by what a network heard. */
export class EarClassifier implements Classifier {
  readonly model: EarModel;
  readonly findsArcs = true;
  readonly leapLenience = 0;
  readonly hearsBlocks = true;
  readonly acceptScore: number;
  readonly rejectScore: number;
  readonly leastDropsHeard: number;
  readonly #ear: Ear;

  constructor(model: EarModel) {
    this.model = model;
    this.#ear = earOf(model);
    this.acceptScore = logit(model.answer.nameArc);
    this.rejectScore = logit(model.answer.rejectArc);
    this.leastDropsHeard = model.answer.nameDrops;
  }

  judge({ startS, endS, values, heard, sound }: FeatureWindow, prior: number): WindowJudgement {
    const { probabilities, ...opinion } = this.judgeShort({ values, heard }, prior);
    const silent = sound?.levels.every((level) => level <= SILENCE) ?? isSilent(values);
    const arcScore = silent ? -Infinity : opinion.arcScore;
    const { blockS } = this.#ear;
    const blocks = (heard ?? []).map(({ index, arc }) => ({
      startS: index * blockS,
      endS: (index + 1) * blockS,
      score: silent ? -Infinity : this.#rowScore(arc, prior),
    }));
    const scores = probabilities.map((p) => Math.log(Math.max(p, 1e-9)));
    return { startS, endS, scores, parts: [], probabilities, arcScore, blocks, novelty: 0 };
  }

  judgeShort(
    { heard = [] }: { values: Float64Array; heard?: readonly HeardBlock[] | undefined },
    prior: number,
  ): Pick<WindowJudgement, 'arcScore' | 'probabilities'> {
    const sums = new HeardSums();
    for (const block of heard) sums.add(block);
    const even = new Float64Array(MODES.length).fill(1 / MODES.length);
    if (sums.blocks === 0) return { arcScore: -Infinity, probabilities: even };
    const belief = heard.reduce((sum, { arc }) => sum + arc, 0) / heard.length;
    return {
      arcScore: this.#rowScore(belief, prior),
      probabilities: this.#modes(sums).probabilities,
    };
  }

  arcIntervalScore({ heard }: ArcQuestion, prior: number): number {
    if (heard.blocks === 0) return -Infinity;
    const { outputs } = outputOf(this.#ear.network, heard);
    const { slope, offset } = this.model.calibration.arc;
    return slope * outputs[this.#ear.arcAt]! + offset[0]! + logit(prior);
  }

  arcProbability(score: number): number {
    return sigmoid(score);
  }

  run({ heard }: RunSums): RunOpinion {
    return this.#modes(heard);
  }

  explainRun(): null {
    return null;
  }

  /** Log-odds of an arc where the rows of the network believe in one so much. */
  #rowScore(belief: number, prior: number): number {
    const { slope, offset } = this.model.calibration.rows;
    return slope * logit(belief) + offset[0]! + logit(prior);
  }

  #modes(sums: HeardSums): RunOpinion {
    const { network, classes, dropsHeardAt, blockS } = this.#ear;
    const { calibration, novelty } = this.model;
    const { hidden, outputs } = outputOf(network, sums);
    const by = calibrationFor(calibration, sums.blocks * blockS);
    const shares = softmax(
      Float64Array.from(classes, ({ at }, k) => by.slope * outputs[at]! + by.offset[k]!),
    );
    const of = (name: string): number => shares[classes.findIndex((one) => one.name === name)] ?? 0;
    const free = of('free-flight');
    // Drops of a size that cannot be told are of one of the two modes in which drops fly free.
    const known = of('globular') + of('spray');
    const probabilities = Float64Array.from(MODES, (mode) => {
      const drops = mode === 'globular' || mode === 'spray';
      return of(mode) + (drops ? (known > 0 ? (free * of(mode)) / known : free / 2) : 0);
    });
    const heardLogit = dropsHeardAt === null ? null : outputs[dropsHeardAt]!;
    const { slope, offset } = calibration.dropsHeard;
    return {
      probabilities,
      dropsHeard:
        heardLogit === null
          ? classes.length > MODES.length
            ? 1 - free
            : null
          : sigmoid(slope * heardLogit + offset[0]!),
      novelty: novelty && noveltyDistance(novelty, Float64Array.from(hidden)),
    };
  }
}

function calibrationFor(
  { modes, modesByS }: EarModel['calibration'],
  heardS: number,
): SlopeAndOffsets {
  return modesByS.find(({ toS }) => heardS <= toS + 1e-9) ?? modes;
}

function sigmoid(x: number): number {
  return 1 / (1 + Math.exp(-x));
}

/** Log-odds, kept finite. */
function logit(p: number): number {
  const kept = Math.min(1 - 1e-6, Math.max(1e-6, p));
  return Math.log(kept / (1 - kept));
}
