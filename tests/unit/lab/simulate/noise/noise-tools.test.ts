import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../../src/core/index.js';
import { triggered } from '../../../../../src/lab/simulate/noise/noise-tools.js';

const RATE_HZ = 1000;

describe('what is switched', () => {
  const { level, edges } = triggered(createRandom('switch'), RATE_HZ, 20_000, {
    onS: 1,
    offS: 0.5,
    riseS: 0.02,
    fallS: 0.1,
  });

  // By hand: a rise of 0.02 s is 20 samples of 1/20 each, a fall of 0.1 s a hundred of 1/100. Rejects rise and
  // fall changed round, an exponential approach, and edges told one sample late.
  it('rises and falls in a straight line from each edge on', () => {
    expect(edges.length).toBeGreaterThan(10);
    edges.slice(0, -1).forEach((edge) => {
      const rises = level[edge]! > level[edge - 1]!;
      const lasts = rises ? 20 : 100;
      expect(level[edge + lasts / 2 - 1]).toBeCloseTo(0.5, 9);
      expect(level[edge + lasts - 1]).toBeCloseTo(rises ? 1 : 0, 9);
    });
  });

  it('stays between half and one and a half of the mean time in each state', () => {
    const lasted = edges.slice(1).map((edge, k) => (edge - edges[k]!) / RATE_HZ);
    const on = lasted.filter((_, k) => level[edges[k]!]! > level[edges[k]! - 1]!);
    const off = lasted.filter((_, k) => level[edges[k]!]! < level[edges[k]! - 1]!);
    for (const seconds of on) expect(Math.abs(seconds - 1)).toBeLessThanOrEqual(0.501);
    for (const seconds of off) expect(Math.abs(seconds - 0.5)).toBeLessThanOrEqual(0.251);
  });
});
