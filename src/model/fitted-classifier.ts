import { MODES } from '../core/index.js';
import type { FeatureWindow } from '../features/index.js';
import { arcSignVector, ruleScore, windowArcScore } from './arc-classifier.js';
import { calibrate, calibrateBinary, priorScore } from './calibration.js';
import type {
  ArcQuestion,
  Classifier,
  RunOpinion,
  RunSums,
  WindowJudgement,
} from './classifier.js';
import type { FittedModel } from './model-document.js';
import { noveltyDistance } from './novelty.js';
import { runScores } from './run-scores.js';
import { explain, score } from './scorer.js';

/** A leap of the level makes up for this much score of a window: steady hiss scores low. Own choice. */
export const LEAP_LENIENCE = 2.5;

/** Judges by scorers that were fitted on measured features. */
export class FittedClassifier implements Classifier {
  readonly model: FittedModel;
  readonly leapLenience = LEAP_LENIENCE;
  readonly leastDropsHeard = 0;
  readonly hearsBlocks = false;

  constructor(model: FittedModel) {
    this.model = model;
  }

  get findsArcs(): boolean {
    return this.model.gate !== null;
  }

  get acceptScore(): number {
    return this.model.gate?.acceptScore ?? -Infinity;
  }

  get rejectScore(): number {
    return this.model.gate?.rejectScore ?? -Infinity;
  }

  arcIntervalScore({ vector, startDb, stopDb }: ArcQuestion, prior: number): number {
    const gate = this.model.gate;
    if (!gate) return Infinity;
    const signs = { vector, startDb, stopDb };
    const fitted = score(gate.stretch, arcSignVector(signs))[0]!;
    const { features } = this.model.featureSet;
    return fitted + ruleScore(signs, features) + priorScore(gate.calibration, prior);
  }

  arcProbability(ofScore: number): number {
    const gate = this.model.gate;
    return gate ? calibrateBinary(gate.calibration, ofScore) : 1;
  }

  judgeShort({ values }: { values: Float64Array }) {
    const probabilities = calibrate(
      this.model.windowCalibration,
      score(this.model.modeScorer, values),
    );
    return { arcScore: this.#arcScore(values), probabilities };
  }

  judge(window: FeatureWindow): WindowJudgement {
    const scores = score(this.model.modeScorer, window.values);
    return {
      startS: window.startS,
      endS: window.endS,
      scores,
      parts: MODES.map((_, k) => explain(this.model.modeScorer, window.values, k)),
      probabilities: calibrate(this.model.windowCalibration, scores),
      arcScore: this.#arcScore(window.values),
      novelty: noveltyDistance(this.model.novelty, window.values),
    };
  }

  run({ vector, opinions }: RunSums, trust = 1): RunOpinion {
    const scores = runScores(this.model, vector.values(), opinions.scores());
    const probabilities = calibrate(
      this.model.runCalibration,
      scores.map((one) => one * trust),
    );
    return { probabilities, dropsHeard: null, novelty: null };
  }

  explainRun({ vector, opinions }: RunSums): Float64Array[] {
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

  #arcScore(values: Float64Array): number {
    const gate = this.model.gate;
    return gate ? windowArcScore(gate.scorer, values) : Infinity;
  }
}
