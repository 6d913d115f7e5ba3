import { describe, expect, it } from 'vitest';
import {
  calibrateBinary,
  priorScore,
  RunVector,
  ruleScore,
  type Scorer,
  windowArcScore,
} from '../../../src/model/index.js';

/** A scorer that gives the last feature. */
const SCORER: Scorer = {
  kind: 'linear',
  mean: [0, 0],
  deviation: [1, 1],
  bias: [0],
  weight: [[0, 1]],
};

describe('the score of a window', () => {
  it('is nothing at all in digital silence, and that of the trees in all else', () => {
    expect(windowArcScore(SCORER, Float64Array.of(Number.NaN, Number.NaN))).toBe(-Infinity);
    expect(windowArcScore(SCORER, Float64Array.of(3, 0.5))).toBeCloseTo(0.5, 12);
  });
});

/** log10(excess kurtosis + 2) as in the features: 8 is that of a dip arc, 998 that of a fire. */
function evidenceOf(kurtosis: number, startDb: number, stopDb: number): number {
  const vector = new RunVector(1);
  vector.add(Float64Array.of(Math.log10(kurtosis + 2)));
  return ruleScore({ vector, startDb, stopDb }, ['kurtosis']);
}

describe('evidence beside the fitted score', () => {
  it('grows with the height of a leap at either end', () => {
    // Rejects leaps that are counted once, a small one that counts, and a sudden bound instead of a slope.
    expect(evidenceOf(8, 8, 8)).toBe(0);
    const [small, high] = [evidenceOf(8, 11, 0), evidenceOf(8, 20, 0)];
    expect(small).toBeCloseTo(high / 4, 12);
    expect(evidenceOf(8, 0, 11)).toBe(small);
    expect(evidenceOf(8, 20, 20)).toBeCloseTo(2 * high, 12);
    expect(evidenceOf(8, 50, 0)).toBe(high);
  });

  it('speaks against what is as impulsive as a fire, whatever its leaps', () => {
    expect(evidenceOf(998, 40, 40)).toBeLessThan(0);
    expect(evidenceOf(Number.NaN, 0, 0)).toBe(0);
  });
});

describe('priorScore', () => {
  const map = { slope: 0.5, offset: [Math.log(3 / 7)], method: '', runs: 0 };

  it('makes the posterior that Bayes asks for', () => {
    // Score 0: odds 3 to 7 as even. A prior of 0.9 (9 to 1) makes 27 to 7 (hand calculation).
    expect(calibrateBinary(map, priorScore(map, 0.9))).toBeCloseTo(27 / 34, 12);
    expect(priorScore(map, 0.5)).toBe(0);
    expect(priorScore(map, 0.2)).toBeCloseTo(-priorScore(map, 0.8), 12);
  });
});
