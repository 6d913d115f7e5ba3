import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../../src/core/index.js';
import { fitCalibration } from '../../../../../src/lab/train/fit/fit-calibration.js';
import { fitLogistic } from '../../../../../src/lab/train/fit/logistic.js';

interface Reference {
  logistic: {
    values: (number | null)[][];
    label: number[];
    ridge: number;
    mean: number[];
    deviation: number[];
    weight: number[][];
    bias: number[];
  };
  calibration: { scores: number[][]; label: number[]; slope: number; offset: number[] };
}
const reference = JSON.parse(
  readFileSync(new URL('../../../../../fixtures/reference/evaluate.json', import.meta.url), 'utf8'),
) as Reference;

describe('fitLogistic', () => {
  it('reaches the minimum that SciPy finds (fixtures/reference/evaluate.py)', () => {
    // Unequal classes and absent values: rejects missing class weights, a penalty on the bias, absent
    // values taken as anything but the centre, and a descent that stops early.
    const { values, label, ridge, ...expected } = reference.logistic;
    const fitted = fitLogistic(
      {
        values: values.map((row) => Float64Array.from(row, (value) => value ?? Number.NaN)),
        label: Uint8Array.from(label),
        weight: new Float64Array(label.length).fill(1),
        run: Int32Array.from(label, (_, i) => i),
      },
      3,
      ridge,
      2000,
    );
    // Centre and width are kept to six digits in the document.
    expected.mean.forEach((mean, i) => {
      expect(fitted.mean[i]).toBeCloseTo(mean, 4);
    });
    expected.deviation.forEach((width, i) => {
      expect(fitted.deviation[i]).toBeCloseTo(width, 4);
    });
    const shift = fitted.bias.reduce((sum, one) => sum + one, 0) / 3;
    for (let k = 0; k < 3; k++) {
      expect(fitted.bias[k]! - shift).toBeCloseTo(expected.bias[k]!, 3);
      for (let f = 0; f < 2; f++)
        expect(fitted.weight[k]![f]).toBeCloseTo(expected.weight[k]![f]!, 3);
    }
  });
});

describe('fitCalibration', () => {
  it('reaches the minimum that SciPy finds (fixtures/reference/evaluate.py)', () => {
    const { scores, label, slope, offset } = reference.calibration;
    const cases = scores.map((row, i) => ({
      scores: Float64Array.from(row),
      label: label[i] ?? 0,
      weight: 1,
    }));
    const fitted = fitCalibration(cases, 'test');
    expect(fitted.slope).toBeCloseTo(slope, 3);
    offset.forEach((value, k) => {
      expect(fitted.offset[k]).toBeCloseTo(value, 3);
    });
    expect(fitted.runs).toBe(80);
  });

  it('finds the slope with which the outcomes were drawn', () => {
    // 1,000 outcomes drawn with slope 0.5: the standard error is near 0.025, so 0.1 is four of them.
    // Rejects the inverse slope (2) and a fit that leaves overconfident scores as they are (1).
    const random = createRandom('slope');
    const cases = Array.from({ length: 1000 }, () => {
      const scores = Float64Array.from({ length: 4 }, () => random.normal(0, 2));
      const powers = scores.map((one) => Math.exp(0.5 * one));
      let left = random.next() * powers.reduce((sum, one) => sum + one, 0);
      let label = 0;
      while (label < 3 && left >= powers[label]!) left -= powers[label++]!;
      return { scores, label, weight: 1 };
    });
    expect(Math.abs(fitCalibration(cases, 'test').slope - 0.5)).toBeLessThan(0.1);
  });

  it('with one score fits the probability of class 1', () => {
    // Scores 0 only, 3 of 4 are class 1: the minimum solves σ(b) − 0.75 + 0.02·b = 0, b ≈ 1.003
    // (bisection by hand: σ(1.003) = 0.7316, and 0.75 − 0.0201 = 0.7299; σ(0.99) = 0.7291, 0.7302).
    const cases = [1, 1, 1, 0].map((label) => ({ scores: Float64Array.of(0), label, weight: 1 }));
    const { offset } = fitCalibration(cases, 'test');
    const b = offset[0]!;
    expect(1 / (1 + Math.exp(-b)) - 0.75 + 0.02 * b).toBeCloseTo(0, 4);
    expect(b).toBeGreaterThan(0.98);
    expect(b).toBeLessThan(1.01);
  });

  it('counts a case by its weight', () => {
    const one = { scores: Float64Array.of(1, -1), label: 0, weight: 1 };
    const other = { scores: Float64Array.of(1, -1), label: 1, weight: 1 };
    const thrice = fitCalibration([one, one, one, other], 'test');
    const weighed = fitCalibration([{ ...one, weight: 3 }, other], 'test');
    expect(weighed.slope).toBeCloseTo(thrice.slope, 5);
  });
});
