import { describe, expect, it } from 'vitest';
import type { Mode } from '../../../src/core/index.js';
import { freeDrops, oneOf, remainingModes } from '../../../src/judge/remaining.js';

const chances = (d: number, g: number, s: number, p: number): Record<Mode, number> => ({
  'short-circuit': d,
  globular: g,
  spray: s,
  'pulsed-spray': p,
});

describe('remainingModes', () => {
  it('takes the fewest likeliest modes that reach 85 % together', () => {
    const two = remainingModes(chances(0.02, 0.5, 0.43, 0.05));
    expect(two?.modes).toEqual(['globular', 'spray']);
    expect(two?.probability).toBeCloseTo(0.93, 12);
    expect(remainingModes(chances(0.3, 0.35, 0.3, 0.05))?.modes).toHaveLength(3);
  });

  it('is nothing where all modes would remain', () => {
    expect(remainingModes(chances(0.25, 0.25, 0.25, 0.25))).toBeNull();
  });
});

describe('oneOf', () => {
  it('rules out what is under 5 %, and no other', () => {
    const of = chances(0.02, 0.5, 0.4, 0.08);
    expect(oneOf(remainingModes(of)!, of).text).toBe(
      'Globular or spray (90 % together); not short-circuit.',
    );
  });
});

describe('freeDrops', () => {
  it('is an answer where drops that fly free are likely enough together', () => {
    expect(freeDrops(chances(0.1, 0.4, 0.4, 0.1), 0.6)?.probability).toBeCloseTo(0.8, 12);
    expect(freeDrops(chances(0.5, 0.2, 0.2, 0.1), 0.6)).toBeNull();
  });
});
