import { describe, expect, it } from 'vitest';
import { LevelHistory } from '../../../src/detect/level-edge.js';

const STEP_S = 0.016;

/** Levels that change from `low` to `high` at step `at`. */
function history(count: number, at: number, low: number, high: number, keepS = 60): LevelHistory {
  const made = new LevelHistory(STEP_S, keepS);
  const levels = Float64Array.from({ length: count }, (_, i) => (i < at ? low : high));
  for (let i = 0; i < count; i += 16) made.push(levels.subarray(i, i + 16));
  return made;
}

describe('LevelHistory', () => {
  it('places a rise at its step, with its ratio', () => {
    // 1 → 9 at step 50: 0.8 s, ratio 9 on both scales. Rejects an edge half a side early or late.
    const step = history(128, 50, 1, 9).sharpest('rise', 0, 2)!;
    expect(step.timeS).toBeCloseTo(50 * STEP_S, 12);
    expect(step.ratio).toBeCloseTo(9, 9);
    expect(step.sharpRatio).toBeCloseTo(9, 9);
  });

  it('places a fall by the smallest ratio, not the largest', () => {
    const step = history(128, 70, 9, 1).sharpest('fall', 0, 2)!;
    expect(step.timeS).toBeCloseTo(70 * STEP_S, 12);
    expect(step.ratio).toBeCloseTo(1 / 9, 9);
  });

  it('calls a slow rise not sharp', () => {
    // Up by 4 % a step: over 8 steps a side the mean rises by 1.04^8 = 1.37, over 3 by 1.04^3 = 1.12.
    // Rejects one scale for both.
    const made = new LevelHistory(STEP_S, 60);
    made.push(Float64Array.from({ length: 100 }, (_, i) => 1.04 ** i));
    const step = made.sharpest('rise', 0.3, 1.2)!;
    expect(step.ratio).toBeCloseTo(1.04 ** 8, 6);
    expect(step.sharpRatio).toBeCloseTo(1.04 ** 3, 6);
  });

  it('keeps times right after old levels were dropped', () => {
    // 1,600 levels of which 2 s are kept: a rise at step 1,550 still stands at 24.8 s.
    const step = history(1600, 1550, 1, 5, 2).sharpest('rise', 24, 25.6)!;
    expect(step.timeS).toBeCloseTo(1550 * STEP_S, 9);
  });

  it('finds nothing in a span that holds nothing', () => {
    expect(new LevelHistory(STEP_S, 2).sharpest('rise', 0, 1)).toBeNull();
    expect(history(32, 16, 1, 9).sharpest('rise', 5, 6)).toBeNull();
  });

  it.each([
    // 30 ms of digital silence, of which the second level holds 14 of its 16 ms. Rejects taking what is
    // left of it for a quiet room out of which something leaps by 9 dB.
    ['digital silence that ends within a level', [0, 0.125]],
    // A recorder that fades in over 80 ms, its mean squares (k + ½)² / 5².
    ['a fade', [0.01, 0.09, 0.25, 0.49, 0.81]],
  ])('hears no leap where a recorder opens: %s', (_, opening) => {
    const made = new LevelHistory(STEP_S, 60);
    made.push(Float64Array.from({ length: 64 }, (_, i) => opening[i] ?? 1));
    const step = made.sharpest('rise', 0, 0.8, { settled: true })!;
    expect(step.heard && step.sharpRatio > 1.5).toBe(false);
    // A leap of 9 that follows is found all the same, where it is.
    const then = new LevelHistory(STEP_S, 60);
    then.push(Float64Array.from({ length: 64 }, (_, i) => opening[i] ?? (i < 30 ? 1 : 9)));
    const leap = then.sharpest('rise', 0, 0.8, { settled: true })!;
    expect(leap.heard).toBe(true);
    expect(leap.timeS).toBeCloseTo(30 * STEP_S, 12);
    expect(leap.sharpRatio).toBeCloseTo(9, 9);
  });

  it('sees no leap out of samples lost in steady sound', () => {
    // Six levels lost, and one on either side in part. Rejects ratios to digital silence.
    const made = new LevelHistory(STEP_S, 60);
    const lost = (i: number) => (i === 29 || i === 36 ? 0.1 : 0);
    made.push(Float64Array.from({ length: 64 }, (_, i) => (i < 29 || i > 36 ? 1 : lost(i))));
    for (const direction of ['rise', 'fall'] as const) {
      const step = made.sharpest(direction, 0.3, 0.8)!;
      expect(step.heard && Math.abs(Math.log(step.sharpRatio)) > 0.1).toBe(false);
    }
  });

  it('bears digital silence', () => {
    const step = history(64, 32, 0, 0.01).sharpest('rise', 0, 1)!;
    expect(step.timeS).toBeCloseTo(32 * STEP_S, 12);
    expect(Number.isFinite(step.ratio)).toBe(true);
  });
});
