import { describe, expect, it } from 'vitest';
import { createRandom } from '../../src/core/index.js';
import { trainOf } from '../../src/features/electrical/intervals.js';
import { LevelHistogram, splitTwoLevels } from '../../src/features/electrical/level-histogram.js';
import { momentsOf } from '../../src/features/electrical/moments.js';
import { PulseTracker } from '../../src/features/electrical/pulse-tracker.js';
import { SampleCounts } from '../../src/features/electrical/running.js';
import { trace } from '../unit/features/electrical/traces.js';

function filled(values: Float64Array): LevelHistogram {
  const histogram = new LevelHistogram(-20, 0.1, 900);
  histogram.add(values);
  return histogram;
}

describe('two levels', () => {
  it('splits a clean square wave into its levels', () => {
    const levels = splitTwoLevels(
      filled(trace(1, 10_000, (t) => (Math.round(t * 10_000) % 100 < 30 ? 34.05 : 20.05))),
    );
    expect(levels.low).toBeCloseTo(20.05, 6);
    expect(levels.high).toBeCloseTo(34.05, 6);
    expect(levels.highShare).toBeCloseTo(0.3, 6);
    expect(levels.separation).toBeCloseTo(1, 9);
  });

  it('gives the separations of a flat spread, a sine and a bell', () => {
    // Plain maths, split at the middle: (mean distance)² over variance: (1/2)²/(1/3) = 0.75 for a flat
    // spread, (2/π)²/(1/2) = 0.811 for a sine, 2/π = 0.637 for a bell. Rejects: calling those two-level.
    const random = createRandom(2);
    const flat = trace(5, 10_000, (t) => 20 + ((t * 997) % 1) * 20);
    const sine = trace(5, 10_000, (t) => 30 + 10 * Math.sin(2 * Math.PI * 97 * t));
    const bell = trace(5, 10_000, () => 30 + random.normal(0, 4));
    expect(splitTwoLevels(filled(flat)).separation).toBeCloseTo(0.75, 2);
    expect(splitTwoLevels(filled(sine)).separation).toBeCloseTo(8 / Math.PI ** 2, 2);
    expect(splitTwoLevels(filled(bell)).separation).toBeCloseTo(2 / Math.PI, 1);
  });

  it('has no levels without spread', () => {
    const levels = splitTwoLevels(filled(new Float64Array(100).fill(7)));
    expect(levels).toEqual({ low: Number.NaN, high: Number.NaN, highShare: 0, separation: 0 });
    expect(splitTwoLevels(new LevelHistogram(0, 1, 10)).separation).toBe(0);
  });

  it('answers quantiles, and NaN when empty', () => {
    const histogram = filled(trace(1, 1000, (t) => 10 * t));
    expect(histogram.quantile(0.5)).toBeCloseTo(5, 1);
    expect(histogram.quantile(0.2, 5)).toBeCloseTo(6, 1);
    expect(new LevelHistogram(0, 1, 10).quantile(0.5)).toBeNaN();
  });
});

describe('pulses of a trace', () => {
  it('times the rises of a square wave to the sample', () => {
    const values = trace(0.1, 10_000, (t) => ((Math.round(t * 10_000) + 50) % 100 < 40 ? 34 : 20));
    const slot = new PulseTracker().push(values, filled(values), 3);
    // Rises at 5, 15, … ms: the level changes between samples 49 and 50, crossing 65 % of the way.
    expect(slot.rises.length).toBe(10);
    expect(slot.rises[0]).toBeCloseTo(50 - 0.35, 1);
    expect(slot.highSamples).toBe(400);
    expect(slot.highSum / slot.highSamples).toBeCloseTo(34, 9);
  });

  it('does not follow a swing below the least one', () => {
    const values = trace(0.1, 10_000, (t) => ((t * 100) % 1 < 0.4 ? 22 : 20));
    expect(new PulseTracker().push(values, filled(values), 3).rises).toEqual([]);
  });
});

describe('trains of events', () => {
  it('knows rate and evenness of an even train, and of one with an event missing', () => {
    const even = Array.from({ length: 21 }, (_, k) => k * 0.01);
    expect(trainOf(even).rateHz).toBeCloseTo(100, 9);
    expect(trainOf(even).cv).toBeCloseTo(0, 6);
    const missing = even.filter((_, k) => k !== 10);
    // Rejects: the plain coefficient as the only one; a missed pulse would hide the clock.
    expect(trainOf(missing).cv).toBeGreaterThan(0.2);
    expect(trainOf(missing).robustCv).toBeCloseTo(0, 6);
  });

  it('says nothing about fewer than three events', () => {
    expect(trainOf([0, 1])).toEqual({ rateHz: Number.NaN, cv: Number.NaN, robustCv: Number.NaN });
  });

  it('takes the median of sample counts as any text does', () => {
    const counts = new SampleCounts(1000);
    expect(counts.median()).toBeNaN();
    for (const samples of [10, 30, 20, 60]) counts.add(samples);
    expect(counts.median()).toBe(25);
  });
});

describe('moments', () => {
  it('matches hand calculation, skips what it is told, and is NaN where nothing is', () => {
    // 1, 1, 4: mean 2, variance 2, third central moment (−1−1+8)/3 = 2, so skewness 2/2^1.5 = 0.7071.
    const moments = momentsOf([Float64Array.of(1, 9, 1, 4)], [Uint8Array.of(0, 1, 0, 0)]);
    expect(moments.mean).toBeCloseTo(2, 12);
    expect(moments.sd).toBeCloseTo(Math.SQRT2, 12);
    expect(moments.skewness).toBeCloseTo(Math.SQRT1_2, 12);
    expect(momentsOf([new Float64Array(0)]).mean).toBeNaN();
    expect(momentsOf([new Float64Array(5)]).skewness).toBeNaN();
  });
});
