import * as z from 'zod/mini';

/** Maps scores to probabilities: `softmax(slope·score + offset)`, fitted on runs the scorer never saw. */
export const calibrationSchema = z.object({
  slope: z.number().check(z.positive()),
  offset: z.array(z.number()).check(z.minLength(1), z.maxLength(16)),
  /** How it was fitted and on how many runs, for the reader of a probability. */
  method: z.string(),
  runs: z.int().check(z.nonnegative()),
});
export type Calibration = z.infer<typeof calibrationSchema>;

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
