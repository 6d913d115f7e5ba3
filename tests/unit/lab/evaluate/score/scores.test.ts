import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../../src/core/index.js';
import { bootstrap } from '../../../../../src/lab/evaluate/score/bootstrap.js';
import { confusionOf, summarise } from '../../../../../src/lab/evaluate/score/confusion.js';
import {
  brierScore,
  calibrationError,
  logLoss,
  reliability,
} from '../../../../../src/lab/evaluate/score/proper-scores.js';

const pairs = (...list: string[]) =>
  list.map((one) => {
    const [truth, answer] = one.split('>') as [string, string];
    return { truth, answer };
  });

describe('confusion and its summary', () => {
  // Worked by hand. Truth a: 4 runs (2 a, 1 b, 1 unsure); b: 2 runs (2 b); c: 1 run (answered a); d: none.
  const matrix = confusionOf(
    pairs('a>a', 'a>a', 'a>b', 'a>unsure', 'b>b', 'b>b', 'c>a'),
    ['a', 'b', 'c', 'd'],
    ['a', 'b', 'c', 'd', 'unsure'],
  );
  const summary = summarise(matrix);

  it('counts rows by truth and columns by answer', () => {
    // Rejects the transposed matrix.
    expect(matrix.counts).toEqual([
      [2, 1, 0, 0, 1],
      [0, 2, 0, 0, 0],
      [1, 0, 0, 0, 0],
      [0, 0, 0, 0, 0],
    ]);
  });

  it('takes unsure as a miss in recall and not as an answer in precision', () => {
    expect(summary.labels[0]).toEqual({ label: 'a', support: 4, recall: 0.5, precision: 2 / 3 });
    expect(summary.labels[1]).toEqual({ label: 'b', support: 2, recall: 1, precision: 2 / 3 });
  });

  it('lets a mode that was never found pull the macro figures down', () => {
    // Recalls 1/2, 1, 0 (c), d has no runs: mean 1/2. F1 by 2pr/(p + r): 4/7, 4/5, 0: mean 16/35.
    // Rejects averages that drop c, and ones that count d.
    expect(summary.labels[2]).toEqual({ label: 'c', support: 1, recall: 0, precision: 0 });
    expect(summary.labels[3]!.recall).toBeNull();
    expect(summary.macroRecall).toBeCloseTo(0.5, 12);
    expect(summary.macroF1).toBeCloseTo(16 / 35, 12);
  });

  it('gives coverage and the accuracy of the answered beside the accuracy', () => {
    // 4 of 7 right; 6 of 7 answered; 4 of those 6 right.
    expect(summary.accuracy).toBeCloseTo(4 / 7, 12);
    expect(summary.coverage).toBeCloseTo(6 / 7, 12);
    expect(summary.accuracyOfAnswered).toBeCloseTo(4 / 6, 12);
  });

  it('has no figure without runs', () => {
    const none = summarise(confusionOf([], ['a'], ['a']));
    expect([none.accuracy, none.macroRecall, none.coverage]).toEqual([null, null, null]);
  });
});

describe('proper scores', () => {
  const cases = [
    { probabilities: [0.7, 0.2, 0.1], truth: 0 },
    { probabilities: [0.1, 0.1, 0.8], truth: 1 },
  ];

  it('gives Brier scores over all labels', () => {
    // (0.09 + 0.04 + 0.01) = 0.14 and (0.01 + 0.81 + 0.64) = 1.46: mean 0.8 (hand calculation).
    // Rejects the score of the true label alone (0.09 and 0.81).
    expect(brierScore(cases)).toBeCloseTo(0.8, 12);
    expect(brierScore([{ probabilities: [0, 1], truth: 0 }])).toBe(2);
  });

  it('gives the mean of −ln p of what happened', () => {
    expect(logLoss(cases)).toBeCloseTo((-Math.log(0.7) - Math.log(0.1)) / 2, 12);
  });

  it('keeps one certain error finite, at the stated floor', () => {
    expect(logLoss([{ probabilities: [0, 1], truth: 0 }])).toBeCloseTo(-Math.log(1e-6), 12);
  });

  it('sorts confidence into bins with counts', () => {
    // 0.7 right in [0.7, 0.8), 0.8 wrong in [0.8, 0.9). Rejects a bin edge counted below.
    const table = reliability(cases);
    expect(table[7]).toMatchObject({ count: 1, confidence: 0.7, accuracy: 1 });
    expect(table[8]).toMatchObject({ count: 1, confidence: 0.8, accuracy: 0 });
    expect(table[0]).toMatchObject({ count: 0, confidence: null, accuracy: null });
    // |0.7 − 1|·½ + |0.8 − 0|·½ = 0.55.
    expect(calibrationError(cases)).toBeCloseTo(0.55, 12);
  });

  it('puts certainty into the last bin', () => {
    expect(reliability([{ probabilities: [1, 0], truth: 0 }]).at(-1)!.count).toBe(1);
  });
});

describe('bootstrap', () => {
  const mean = (runs: readonly number[]) => runs.reduce((sum, one) => sum + one, 0) / runs.length;

  it('has about the width of the normal interval for a mean', () => {
    // 400 runs, half of them right: standard error √(0.25/400) = 0.025, so 0.5 ± 0.049.
    // Rejects draws without replacement (no width) and draws of single windows.
    const runs = Array.from({ length: 400 }, (_, i) => i % 2);
    const found = bootstrap(runs, mean, createRandom('b'))!;
    expect(found.value).toBe(0.5);
    expect(found.low).toBeGreaterThan(0.44);
    expect(found.low).toBeLessThan(0.46);
    expect(found.high).toBeGreaterThan(0.54);
    expect(found.high).toBeLessThan(0.56);
  });

  it('is the same for the same seed, and null where the figure is', () => {
    const runs = [1, 4, 2, 8];
    expect(bootstrap(runs, mean, createRandom(3))).toEqual(bootstrap(runs, mean, createRandom(3)));
    expect(bootstrap([], () => null, createRandom(3))).toBeNull();
  });
});
