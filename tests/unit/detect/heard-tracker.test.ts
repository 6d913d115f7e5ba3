import { describe, expect, it } from 'vitest';
import { type ArcChange, HeardTracker } from '../../../src/detect/index.js';

const BLOCK_S = 0.128;
const HOP_S = 0.256;

/** Sound of some seconds whose belief and level change at given times; levels stand in dB. */
function changes(
  endS: number,
  belief: (s: number) => number,
  levelDb: (s: number) => number,
): ArcChange[] {
  const tracker = new HeardTracker();
  const found: ArcChange[] = [];
  const block = (k: number) => ({
    startS: k * BLOCK_S,
    endS: (k + 1) * BLOCK_S,
    score: belief((k + 0.5) * BLOCK_S),
  });
  for (let end = 4 * HOP_S; end <= endS + 1e-9; end += HOP_S) {
    const startS = end - 4 * HOP_S;
    const first = found.length === 0 && startS < 1e-9;
    const from = first ? 0 : end - HOP_S;
    const count = Math.round((end - from) / 0.016);
    const levels = Float64Array.from(
      { length: count },
      (_, i) => 10 ** (levelDb(from + (i + 0.5) * 0.016) / 10),
    );
    const blocks = Array.from({ length: 8 }, (_, i) => block(Math.round(startS / BLOCK_S) + i));
    found.push(...tracker.push({ startS, endS: end, score: 0, levels, blocks }));
  }
  return [...found, ...tracker.flush(endS)];
}

const between = (fromS: number, toS: number, inside: number, outside: number) => (s: number) =>
  s >= fromS && s < toS ? inside : outside;

describe('HeardTracker', () => {
  it('puts the edges where the level leaps near the change of belief', () => {
    // The belief changes up to a block late; the level tells the time to 16 ms.
    const found = changes(8.192, between(2.1, 5.1, 4, -4), between(2, 5, -20, -45));
    expect(found.map(({ type, open }) => [type, open])).toEqual([
      ['arc-start', false],
      ['arc-stop', false],
    ]);
    expect(found[0]!.timeS).toBeCloseTo(2, 1);
    expect(found[1]!.timeS).toBeCloseTo(5, 1);
    expect(Math.abs(found[0]!.timeS - 2)).toBeLessThan(0.03);
    expect(Math.abs(found[1]!.timeS - 5)).toBeLessThan(0.03);
  });

  it('keeps to the block where the level does not leap', () => {
    const found = changes(8.192, between(2.05, 5, 4, -4), () => -30);
    expect(found[0]!.timeS).toBeCloseTo(16 * BLOCK_S, 9);
  });

  it('says that the arc burnt before the first and after the last sample', () => {
    const found = changes(
      4.096,
      () => 4,
      () => -30,
    );
    expect(found).toEqual([
      { type: 'arc-start', timeS: 0, open: true },
      { type: 'arc-stop', timeS: 4.096, open: true },
    ]);
  });

  it('bridges a doubt of a quarter second and ends the arc after a longer one', () => {
    const doubt = (lastsS: number) =>
      changes(
        8.192,
        (s) => (s > 3 && s < 3 + lastsS ? -4 : 4),
        () => -30,
      );
    expect(doubt(0.25)).toHaveLength(2);
    expect(doubt(1.2)).toHaveLength(4);
  });

  it('takes no single block for an arc', () => {
    expect(changes(4.096, between(2.05, 2.17, 9, -2), () => -30)).toEqual([]);
  });
});
