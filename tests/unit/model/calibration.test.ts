import { describe, expect, it } from 'vitest';
import {
  arcSignVector,
  calibrate,
  calibrateBinary,
  centred,
  noveltyDistance,
  RunVector,
  softmax,
} from '../../../src/model/index.js';

describe('softmax', () => {
  it('gives shares of powers', () => {
    // e^0 : e^ln2 : e^ln5 = 1 : 2 : 5 of 8 (hand calculation).
    const p = softmax(Float64Array.of(0, Math.log(2), Math.log(5)));
    expect([...p].map((one) => one * 8)).toEqual([1, 2, 5].map((one) => expect.closeTo(one, 12)));
  });

  it('bears scores whose powers overflow', () => {
    // e^1000 is infinite: rejects dividing infinity by infinity.
    expect([...softmax(Float64Array.of(1000, 1000))]).toEqual([0.5, 0.5]);
    expect(softmax(Float64Array.of(-1000, 0))[1]).toBe(1);
  });
});

describe('calibrate', () => {
  const map = { slope: 0.5, offset: [0, Math.log(3)], method: '', runs: 0 };

  it('scales the scores before it shifts them', () => {
    // 0.5·(2·ln 4) = ln 4 against 0 + ln 3: 4 : 3. Rejects slope·(score + offset).
    const p = calibrate(map, [2 * Math.log(4), 0]);
    expect(p[0]).toBeCloseTo(4 / 7, 12);
    expect(p[1]).toBeCloseTo(3 / 7, 12);
  });

  it('of one score is the logistic function', () => {
    // 0.5·0 + ln 3: odds 3 to 1.
    const binary = { slope: 0.5, offset: [Math.log(3)], method: '', runs: 0 };
    expect(calibrateBinary(binary, 0)).toBeCloseTo(0.75, 12);
    expect(calibrateBinary(binary, -2 * Math.log(3))).toBeCloseTo(0.5, 12);
  });
});

describe('the vector of a run', () => {
  it('holds means, then population deviations, over the windows that show a feature', () => {
    // Feature 0: 1, 3 → mean 2, deviation 1. Feature 1: only 5 → no spread. Feature 2: never shown.
    // Rejects counting absent as 0 (feature 1 would be 2.5).
    const vector = new RunVector(3);
    vector.add(Float64Array.of(1, 5, Number.NaN));
    vector.add(Float64Array.of(3, Number.NaN, Number.NaN));
    const nan = Number.NaN;
    expect([...vector.values()]).toEqual([2, 5, nan, 1, nan, nan]);
  });

  it('joined from two stretches is that of all windows', () => {
    const [all, one, two] = [new RunVector(1), new RunVector(1), new RunVector(1)];
    [2, 4, 9].forEach((value, i) => {
      all.add(Float64Array.of(value));
      (i < 2 ? one : two).add(Float64Array.of(value));
    });
    one.merge(two);
    expect(one.values()).toEqual(all.values());
  });

  it('of a stretch carries the two leaps, held at 40 dB', () => {
    const vector = new RunVector(1);
    vector.add(Float64Array.of(2));
    expect([...arcSignVector({ vector, startDb: 12, stopDb: 55 })].slice(2)).toEqual([12, 40]);
  });
});

describe('centred', () => {
  it('takes the mean away and no difference', () => {
    expect([...centred(Float64Array.of(1, 2, 6))]).toEqual([-2, -1, 3]);
  });
});

describe('noveltyDistance', () => {
  it('is the root mean square of the whitened distance to the nearest centre', () => {
    // Standardised (3, −1) by (1, 1)/(2, 0.5): z = (1, −4). Centre (0, 0): factor rows (1), (0.5, 2) give
    // 1 and 0.5 − 8 = −7.5, so √((1 + 56.25)/2). Centre (1, −4) is the point itself: 0, which is nearest.
    const novelty = {
      mean: [1, 1],
      deviation: [2, 0.5],
      centres: [[0, 0]],
      factor: [1, 0.5, 2],
      limit: 1,
    };
    const point = Float64Array.of(3, -1);
    expect(noveltyDistance(novelty, point)).toBeCloseTo(Math.sqrt(57.25 / 2), 12);
    const two = {
      ...novelty,
      centres: [
        [0, 0],
        [1, -4],
      ],
    };
    expect(noveltyDistance(two, point)).toBe(0);
  });
});
