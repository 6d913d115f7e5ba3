import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../../src/core/index.js';
import {
  DEAD_TRACE_KINDS,
  NON_ARC_SOUNDS,
  simulateNonArc,
} from '../../../../../src/lab/simulate/index.js';

describe('simulateNonArc', () => {
  it.each(NON_ARC_SOUNDS)('%s is a sound within full scale', (kind) => {
    const made = simulateNonArc(kind, createRandom(kind), 16000, 1);
    if (made.type !== 'sound') throw new Error('a sound was asked for');
    expect(made.samples).toHaveLength(16000);
    expect(made.samples.every((v) => Math.abs(v) <= 1)).toBe(true);
  });

  it.each(DEAD_TRACE_KINDS)('%s is a pair of traces', (kind) => {
    const made = simulateNonArc(kind, createRandom(kind), 5000, 1);
    if (made.type !== 'electrical') throw new Error('traces were asked for');
    expect(made.voltageV).toHaveLength(5000);
    expect(made.currentA.every(Number.isFinite)).toBe(true);
  });

  it('keeps open circuit between 50 and 100 V and a dead short near 0 V', () => {
    // Ranges are common practice, no source.
    for (let k = 0; k < 10; k++) {
      const open = simulateNonArc('open-circuit', createRandom(k), 2000, 1);
      const dead = simulateNonArc('dead-short', createRandom(k), 2000, 1);
      if (open.type !== 'electrical' || dead.type !== 'electrical') throw new Error('traces');
      const mean = (x: Float64Array) => x.reduce((a, b) => a + b, 0) / x.length;
      expect(mean(open.voltageV)).toBeGreaterThan(49);
      expect(mean(open.voltageV)).toBeLessThan(101);
      expect(mean(dead.voltageV)).toBeLessThan(5);
      expect(mean(dead.currentA)).toBeGreaterThan(70);
    }
  });

  it('names the kinds when it does not know one', () => {
    expect(() => simulateNonArc('plasma', createRandom(1), 8000, 1)).toThrow(/grinder/);
  });
});
