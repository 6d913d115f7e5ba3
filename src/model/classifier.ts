import { MODES } from '../core/index.js';
import type { FeatureWindow } from '../features/index.js';
import { type ArcSigns, arcSignVector, ruleScore, windowArcScore } from './arc-classifier.js';
import { calibrate, priorScore } from './calibration.js';
import type { Model } from './model-document.js';
import { noveltyDistance } from './novelty.js';
import { runScores } from './run-scores.js';
import type { RunVector } from './run-vector.js';
import { explain, score } from './scorer.js';
import type { WindowOpinions } from './window-opinions.js';

/** What a model says of one window. */
export interface WindowJudgement {
  startS: number;
  endS: number;
  /** Scores in the order of {@link MODES}. */
  scores: Float64Array;
  /** What each feature added to the score of each mode. */
  parts: Float64Array[];
  /** Calibrated probabilities in the order of {@link MODES}, given that an arc burns. */
  probabilities: Float64Array;
  /** Score for an arc against everything else; +Infinity where the feature extractor itself finds the arc. */
  arcScore: number;
  /** About 1 for a typical window, see `novelty.ts`. */
  novelty: number;
}

/** Judges windows one by one; it keeps nothing between them. */
export class Classifier {
  readonly model: Model;

  constructor(model: Model) {
    this.model = model;
  }

  /** Arc score alone: cheap enough for every window of a long recording. */
  arcScore(values: Float64Array): number {
    const gate = this.model.gate;
    if (!gate) return Infinity;
    return windowArcScore(gate.scorer, values);
  }

  /**
   * Log-odds, before calibration, that a stretch was an arc; +Infinity where the feature extractor itself finds the arc.
   * @param prior probability of an arc before listening
   */
  arcIntervalScore(signs: ArcSigns, prior: number): number {
    const gate = this.model.gate;
    if (!gate) return Infinity;
    const fitted = score(gate.stretch, arcSignVector(signs))[0]!;
    const { features } = this.model.featureSet;
    return fitted + ruleScore(signs, features) + priorScore(gate.calibration, prior);
  }

  /** Calibrated probabilities of one window's features in the order of {@link MODES}, given that an arc burns. */
  windowProbabilities(values: Float64Array): Float64Array {
    return calibrate(this.model.windowCalibration, score(this.model.modeScorer, values));
  }

  judge(window: FeatureWindow, arcScore = this.arcScore(window.values)): WindowJudgement {
    const scores = score(this.model.modeScorer, window.values);
    return {
      startS: window.startS,
      endS: window.endS,
      scores,
      parts: MODES.map((_, k) => explain(this.model.modeScorer, window.values, k)),
      probabilities: calibrate(this.model.windowCalibration, scores),
      arcScore,
      novelty: noveltyDistance(this.model.novelty, window.values),
    };
  }

  /** Calibrated probabilities of a run; `trust` below 1 flattens them (contradicting evidence). */
  runProbabilities(vector: RunVector, opinions: WindowOpinions, trust = 1): Float64Array {
    const scores = runScores(this.model, vector.values(), opinions.scores());
    return calibrate(
      this.model.runCalibration,
      scores.map((one) => one * trust),
    );
  }

  /** Contributions of each window feature to each mode's score of a run, against the average of the modes. */
  explainRun(vector: RunVector, opinions: WindowOpinions): Float64Array[] {
    const values = vector.values();
    const n = this.model.featureSet.features.length;
    const parts = MODES.map((_, k) => {
      const both = explain(this.model.runScorer, values, k);
      return opinions.parts(k).map((part, i) => part + both[i]! + both[n + i]!);
    });
    for (let i = 0; i < n; i++) {
      const mean = parts.reduce((sum, part) => sum + part[i]!, 0) / parts.length;
      for (const part of parts) part[i] = part[i]! - mean;
    }
    return parts;
  }
}
