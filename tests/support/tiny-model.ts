import { MODES } from '../../src/core/index.js';
import type { FeatureSet } from '../../src/features/index.js';
import type { FittedModel } from '../../src/model/index.js';

/** Two invented features: `lean` separates the first two modes, `lift` the other two. */
export const TINY_SET: FeatureSet = {
  id: 'tiny',
  version: 1,
  features: [
    { id: 'lean', unit: '1', meaning: 'how far it leans' },
    { id: 'lift', unit: '1', meaning: 'how far it is lifted' },
  ],
};

/** A linear model small enough to follow by hand: lean ±1 means mode 0 or 1, lift ±1 mode 2 or 3. */
export function tinyModel(changes: Partial<FittedModel> = {}): FittedModel {
  const even = { slope: 1, offset: [0, 0, 0, 0], method: 'none', runs: 0 };
  const sides = [
    [2, 0],
    [-2, 0],
    [0, 2],
    [0, -2],
  ];
  return {
    kind: 'arc-transfer-model',
    schemaVersion: '1',
    id: 'tiny model',
    version: '1',
    featureSet: { id: 'tiny', version: 1, features: ['lean', 'lift'] },
    modes: [...MODES],
    modeScorer: {
      kind: 'linear',
      mean: [0, 0],
      deviation: [1, 1],
      bias: [0, 0, 0, 0],
      weight: sides,
    },
    windowCalibration: even,
    runScorer: {
      kind: 'linear',
      mean: [0, 0, 0, 0],
      deviation: [1, 1, 1, 1],
      bias: [0, 0, 0, 0],
      weight: sides.map((side) => [...side, 0, 0]),
    },
    runCalibration: even,
    gate: null,
    novelty: {
      mean: [0, 0],
      deviation: [1, 1],
      centres: [[0, 0]],
      factor: [1, 0, 1],
      limit: 3,
    },
    training: {},
    ...changes,
  };
}
