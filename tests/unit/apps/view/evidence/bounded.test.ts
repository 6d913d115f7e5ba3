import { describe, expect, it } from 'vitest';
import { CloseUps } from '../../../../../src/apps/view/evidence/close-ups.js';
import { MinMaxTrace } from '../../../../../src/apps/view/evidence/min-max-trace.js';
import { TimedSums } from '../../../../../src/apps/view/evidence/timed-sums.js';
import { VectorSeries } from '../../../../../src/apps/view/evidence/vector-series.js';

describe('MinMaxTrace', () => {
  it('never loses an extreme, in bounded memory', () => {
    // Rejects thinning by picking or averaging: single samples at odd places must survive.
    const trace = new MinMaxTrace(64);
    const samples = new Float64Array(10_000);
    samples[4321] = 9;
    samples[7777] = -5;
    for (let from = 0; from < samples.length; from += 33)
      trace.push(samples.slice(from, from + 33));
    const { min, max } = trace.bins();
    expect(max.length).toBeLessThanOrEqual(65);
    expect(max[Math.floor(4321 / trace.binSamples)]).toBe(9);
    expect(min[Math.floor(7777 / trace.binSamples)]).toBe(-5);
    expect(max.filter((one) => one === 9).length).toBe(1);
  });

  it('passes over NaN, and says NaN for a bin of nothing else', () => {
    const trace = new MinMaxTrace(4);
    trace.push(Float64Array.of(1, NaN, NaN, NaN, NaN, 2));
    expect(trace.binSamples).toBe(2);
    const { min, max } = trace.bins();
    expect([...min]).toEqual([1, NaN, 2]);
    expect([...max]).toEqual([1, NaN, 2]);
  });
});

describe('TimedSums', () => {
  it('joins slots in pairs and keeps the total', () => {
    const sums = new TimedSums(1, { slotS: 1, most: 4 });
    for (let second = 0; second < 13; second++) sums.at(second + 0.5)[0]! += 1;
    expect(sums.slotS).toBe(4);
    expect(sums.slots.map((slot) => slot[0])).toEqual([4, 4, 4, 1]);
    expect(sums.within([{ startS: 4, endS: 12 }])[0]).toBe(8);
  });

  it('takes the slots touched where a stretch is shorter than a slot', () => {
    const sums = new TimedSums(1, { slotS: 1, most: 4 });
    sums.at(0.5)[0]! += 7;
    expect(sums.within([{ startS: 0.2, endS: 0.4 }])[0]).toBe(7);
    expect(sums.within([])[0]).toBe(0);
  });
});

describe('CloseUps', () => {
  it('keeps every sample of pieces evenly spread', () => {
    const closeUps = new CloseUps({ samples: 3, every: 5, most: 4, channels: 1 });
    const samples = Float64Array.from({ length: 97 }, (_, k) => k);
    for (let from = 0; from < 97; from += 7) closeUps.push([samples.slice(from, from + 7)]);
    const pieces = closeUps.pieces();
    expect(pieces.length).toBeGreaterThan(1);
    expect(pieces.length).toBeLessThanOrEqual(4);
    for (const { startSample, channels } of pieces)
      expect([...channels[0]!]).toEqual([startSample, startSample + 1, startSample + 2]);
  });
});

describe('VectorSeries', () => {
  it('halves by the mean and passes over NaN', () => {
    const series = new VectorSeries(1, { stepS: 1, most: 4 });
    for (const value of [1, 3, NaN, 5, 7, 9]) series.push([value]);
    expect(series.stepS).toBe(2);
    expect(series.columns()).toEqual([Float64Array.of(2, 5, 8)]);
  });
});
