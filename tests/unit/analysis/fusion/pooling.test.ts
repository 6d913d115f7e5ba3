import { describe, expect, it } from 'vitest';
import { parsePooling, pool } from '../../../../src/analysis/fusion/index.js';

describe('pool', () => {
  // Hand calculation: (0.8·0.6, 0.2·0.4) = (0.48, 0.08) → 6/7, 1/7. Rejects an average (0.7).
  it('multiplies independent opinions', () => {
    const both = pool([0.8, 0.2], [0.6, 0.4], { sound: 1, trace: 1 });
    expect(both[0]).toBeCloseTo(6 / 7, 12);
    expect(both[1]).toBeCloseTo(1 / 7, 12);
  });

  it('leaves a witness of weight 0 out, and takes a zero as a millionth', () => {
    expect(Array.from(pool([0.9, 0.1], [0.3, 0.7], { sound: 0, trace: 1 }))[1]).toBeCloseTo(0.7);
    const certain = pool([1, 0], [0.5, 0.5], { sound: 1, trace: 1 });
    expect(certain[1]).toBeCloseTo(1e-6, 9);
  });

  it('refuses a document of another kind', () => {
    expect(() => parsePooling({ kind: 'arc-transfer-model' })).toThrow(/pooling/);
  });
});
