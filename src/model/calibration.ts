/** Maps scores to probabilities: `softmax(slope·score + offset)`, fitted on runs the scorer never saw. */
export interface Calibration {
  slope: number;
  offset: number[];
  /** How it was fitted and on how many runs, for the reader of a probability. */
  method: string;
  runs: number;
}

/** Probabilities from scores; they add up to 1. */
export function calibrate(calibration: Calibration, scores: ArrayLike<number>): Float64Array {
  return softmax(
    Float64Array.from(calibration.offset, (offset, k) => calibration.slope * scores[k]! + offset),
  );
}

/** Probability of the first of two classes from one score. */
export function calibrateBinary(calibration: Calibration, score: number): number {
  return 1 / (1 + Math.exp(-(calibration.slope * score + calibration.offset[0]!)));
}

/** What a prior probability other than one half adds to a score of two classes that were fitted as even. */
export function priorScore(calibration: Calibration, prior: number): number {
  return Math.log(prior / (1 - prior)) / calibration.slope;
}

export function softmax(scores: Float64Array): Float64Array {
  const top = Math.max(...scores);
  const powers = scores.map((score) => Math.exp(score - top));
  const sum = powers.reduce((total, power) => total + power, 0);
  return powers.map((power) => power / sum);
}
