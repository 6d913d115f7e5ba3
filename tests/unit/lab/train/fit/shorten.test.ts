import { describe, expect, it } from 'vitest';
import { shortened } from '../../../../../src/lab/train/fit/shorten.js';
import { type FittedModel, score } from '../../../../../src/model/index.js';
import { tinyModel } from '../../../../support/tiny-model.js';

/** One tree: above 0.1234565432 the value is 2, else −1. */
const SCORER: FittedModel['modeScorer'] = {
  kind: 'trees',
  bias: [0],
  trees: [
    [
      {
        feature: [0, -1, -1],
        threshold: [0.1234565432, 0, 0],
        left: [1, -1, -1],
        right: [2, -1, -1],
        absentLeft: [true, true, true],
        value: [0, -1, 2],
      },
    ],
  ],
};

describe('shortened', () => {
  it('keeps six digits of each threshold and every answer away from it', () => {
    const model: FittedModel = { ...tinyModel(), runScorer: SCORER };
    const short = shortened(model);
    // Rejects rounding the answers too, or cutting digits off (0.123456).
    expect(short.runScorer).toEqual({
      ...SCORER,
      trees: [[{ ...SCORER.trees[0]![0]!, threshold: [0.123457, 0, 0] }]],
    });
    for (const value of [0.1234, 0.1235, Number.NaN])
      expect(score(short.runScorer, Float64Array.of(value))).toEqual(
        score(SCORER, Float64Array.of(value)),
      );
    expect({ ...short, runScorer: null }).toEqual({ ...model, runScorer: null });
  });
});
