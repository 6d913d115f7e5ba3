import { describe, expect, it } from 'vitest';
import {
  calibrateBinary,
  edgeEvidence,
  priorScore,
  type Scorer,
  windowArcScore,
} from '../../../src/classify/index.js';

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

describe('evidence of the edges', () => {
  it('grows with the height of a leap at either end', () => {
    // Rejects leaps that are counted once, a small one that counts, and a sudden bound instead of a slope.
    expect(edgeEvidence({ startDb: 8, stopDb: 8 })).toBe(0);
    const [small, high] = [11, 20].map((startDb) => edgeEvidence({ startDb, stopDb: 0 }));
    expect(small).toBeCloseTo(high! / 4, 12);
    expect(edgeEvidence({ startDb: 0, stopDb: 11 })).toBe(small);
    expect(edgeEvidence({ startDb: 20, stopDb: 20 })).toBeCloseTo(2 * high!, 12);
    expect(edgeEvidence({ startDb: 50, stopDb: 0 })).toBe(high);
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
