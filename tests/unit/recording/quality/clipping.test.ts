import { describe, expect, it } from 'vitest';
import { ClipCounter } from '../../../../src/recording/quality/index.js';

const share = (samples: number[]): number => {
  const counter = new ClipCounter();
  counter.push(Float64Array.from(samples));
  return counter.take();
};

describe('clipping', () => {
  it('counts runs of three or more samples at the largest magnitude', () => {
    // By hand: 3 of 10. Rejects counting any sample at full scale, and runs of two.
    expect(share([0, 0.5, 1, 1, 1, 0.5, 0, -0.5, 0.2, 0.1])).toBeCloseTo(0.3, 12);
    expect(share([0, 1, 1, 0, -1, -1, 0, 1, 0, 0])).toBe(0);
  });

  it('finds rails below full scale, as after gain control', () => {
    expect(share([0.1, 0.4, 0.4, 0.4, 0.4, 0.1, 0, 0])).toBeCloseTo(0.5, 12);
  });

  it('does not take quantised silence for clipping', () => {
    expect(share([0, 0, 0, 0, 0, 0, 0, 0])).toBe(0);
    expect(share([1e-4, 1e-4, 1e-4, 1e-4])).toBe(0);
  });

  it('starts over with each take, and carries a run over the end of a block', () => {
    const counter = new ClipCounter();
    counter.push(Float64Array.of(0, 1, 1));
    counter.push(Float64Array.of(1, 0, 0));
    expect(counter.take()).toBeCloseTo(0.5, 12);
    expect(counter.take()).toBe(0);
  });
});
