import type { FeatureWindow, HeardBlock } from '../features/index.js';
import type { Model } from './model-document.js';
import type { HeardSums } from './network/index.js';
import type { RunVector } from './run-vector.js';
import type { WindowOpinions } from './window-opinions.js';

/** What a model says of one window. */
export interface WindowJudgement {
  startS: number;
  endS: number;
  /** Scores in the order of `MODES`. */
  scores: Float64Array;
  /** What each feature added to the score of each mode; empty where the model does not judge by features. */
  parts: Float64Array[];
  /** Calibrated probabilities in the order of `MODES`, given that an arc burns. */
  probabilities: Float64Array;
  /** Score for an arc against everything else; +Infinity where the feature extractor itself finds the arc. */
  arcScore: number;
  /** The same for the blocks of the window, where a network listens. */
  blocks?: readonly { startS: number; endS: number; score: number }[];
  /** About 1 for a typical window, see `novelty.ts`. */
  novelty: number;
}

/** Sums over the windows of an arc interval or of a run. */
export interface RunSums {
  /** Means and spreads of the features. */
  vector: RunVector;
  /** What the scorer of windows said. */
  opinions: WindowOpinions;
  /** What the network heard; no block where none listens. */
  heard: HeardSums;
}

/** An arc interval when it is decided whether it was an arc. */
export interface ArcQuestion extends RunSums {
  /** Leaps of the level at the two edges, dB; 0 where none was seen. */
  startDb: number;
  stopDb: number;
}

/** What a run shows by a model. */
export interface RunOpinion {
  /** Calibrated probabilities in the order of `MODES`. */
  probabilities: Float64Array;
  /** Probability that the size of the drops is audible; null where the model does not say. */
  dropsHeard: number | null;
  /** About 1 for a typical run; null where the model tells it window by window. */
  novelty: number | null;
}

/** Judges windows one by one and runs by their sums; it keeps nothing between them. */
export interface Classifier {
  readonly model: Model;
  /** Whether it says itself where an arc burns; if not, the feature extractor finds that. */
  readonly findsArcs: boolean;
  /** What an abrupt start of the sound may make up for, in log-odds for an arc. */
  readonly leapLenience: number;
  /** Whether it judges blocks that are shorter than a window. */
  readonly hearsBlocks: boolean;
  /** Scores of {@link arcIntervalScore} from which a mode may be named, and below which it was no arc. */
  readonly acceptScore: number;
  readonly rejectScore: number;
  /** Probability that the size of drops is audible below which a size is not named. */
  readonly leastDropsHeard: number;
  /** @param prior probability of an arc before listening */
  judge(window: FeatureWindow, prior: number): WindowJudgement;
  /** The same of the newest half second alone, what it takes to follow a mode. */
  judgeShort(
    window: { values: Float64Array; heard?: readonly HeardBlock[] | undefined },
    prior: number,
  ): Pick<WindowJudgement, 'arcScore' | 'probabilities'>;
  /** Log-odds, before calibration, that an interval was an arc; +Infinity where the extractor finds the arc. */
  arcIntervalScore(question: ArcQuestion, prior: number): number;
  /** Probability of an arc from its score. */
  arcProbability(score: number): number;
  /** @param trust below 1 flattens the probabilities of scores of features (contradicting evidence) */
  run(sums: RunSums, trust?: number): RunOpinion;
  /** What each feature added to the score of each mode of a run, against the average of the modes; null where the model does not judge by features. */
  explainRun(sums: RunSums): Float64Array[] | null;
}
