import { describe, expect, it } from 'vitest';
import {
  calibrateBinary,
  positiveEvidence,
  priorScore,
  RunVector,
  type Scorer,
  windowArcScore,
} from '../../../src/classify/index.js';

const NAMES = [
  'lineProminence',
  'lineRate',
  'rateDisagreement',
  'onsetDispersion',
  'flatness',
  'kurtosis',
];
/** A clear line above 22 Hz on a flat band, counts that agree and are even, moderate impulses. */
const EVEN = [2, 6, 0.2, -0.7, 0.9, 1];
/** A scorer that gives the last feature. */
const SCORER: Scorer = {
  kind: 'linear',
  mean: [0, 0, 0, 0, 0, 0],
  deviation: [1, 1, 1, 1, 1, 1],
  bias: [0],
  weight: [[0, 0, 0, 0, 0, 1]],
};

const scoreOf = (values: readonly number[]) =>
  windowArcScore(SCORER, NAMES, Float64Array.from(values));

function evidenceOf(values: readonly number[], startDb: number, stopDb: number): number {
  const vector = new RunVector(NAMES.length);
  vector.add(Float64Array.from(values));
  return positiveEvidence({ vector, startDb, stopDb }, NAMES);
}

describe('the score of a window', () => {
  it('gains by even events on a flat band, and by nothing less', () => {
    // The linear scorer gives 1. Each row spoils one of the five signs: a rotor has a line on a band that
    // is not flat, rain a flat band without a line or with uneven drops. Rejects a sign left out.
    expect(scoreOf(EVEN)).toBeGreaterThan(1);
    for (const [name, value] of [
      ['lineProminence', 0.9],
      ['lineRate', 3],
      ['rateDisagreement', 2],
      ['onsetDispersion', 0],
      ['flatness', 0.3],
    ] as const) {
      const spoilt = EVEN.map((one, i) => (NAMES[i] === name ? value : one));
      expect(scoreOf(spoilt), name).toBeCloseTo(1, 12);
    }
    // A sign that could not be measured speaks for nothing.
    expect(scoreOf([Number.NaN, ...EVEN.slice(1)])).toBeCloseTo(1, 12);
  });

  it('is nothing at all in digital silence', () => {
    expect(scoreOf(NAMES.map(() => Number.NaN))).toBe(Number.NEGATIVE_INFINITY);
  });
});

describe('evidence beside the fitted score', () => {
  const plain = [0.9, 6, 2, 0, 0.9, 1];

  it('grows with the height of a leap at either end', () => {
    // Rejects leaps that are counted once, a small one that counts, and a sudden bound instead of a slope.
    expect(evidenceOf(plain, 8, 8)).toBe(0);
    const [small, high] = [evidenceOf(plain, 11, 0), evidenceOf(plain, 20, 0)];
    expect(small).toBeCloseTo(high / 4, 12);
    expect(evidenceOf(plain, 0, 11)).toBe(small);
    expect(evidenceOf(plain, 20, 20)).toBeCloseTo(2 * high, 12);
    expect(evidenceOf(plain, 50, 0)).toBe(high);
  });

  it('gives leaps no weight where the kurtosis could not be measured', () => {
    expect(evidenceOf([...plain.slice(0, 5), Number.NaN], 20, 20)).toBe(0);
  });

  it('gives leaps no weight in what crackles, and speaks against a fire', () => {
    // log10(kurtosis + 2): 2 is 98, the kurtosis of a clock; 3 is 998, that of a fire.
    const crackling = [...plain.slice(0, 5), 2];
    expect(evidenceOf(crackling, 20, 20)).toBe(0);
    expect(evidenceOf([...plain.slice(0, 5), 3], 20, 20)).toBeLessThan(0);
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
