import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../src/core/index.js';
import { type Belief, ModeFilter, SegmentBuilder } from '../../../../src/judge/timeline/index.js';

const OPTIONS = { hopS: 0.25, weight: 0.25, meanDwellS: 2, lookAhead: 2 };

function drawn(count: number): Float64Array[] {
  const random = createRandom('windows');
  return Array.from({ length: count }, () => {
    const raw = Float64Array.from({ length: 4 }, () => random.next() ** 3 + 0.01);
    const sum = raw.reduce((total, one) => total + one, 0);
    return raw.map((one) => one / sum);
  });
}

function beliefs(windows: readonly Float64Array[], options = OPTIONS): Belief[] {
  const filter = new ModeFilter(options);
  const out = windows.flatMap((p, i) => filter.push(i * 0.25, i * 0.25 + 1, p) ?? []);
  return [...out, ...filter.flush()];
}

/**
 * The belief about window `t` from windows 0…`last`, by adding up every path of modes: the definition of
 * the posterior of a hidden Markov chain, without any recursion.
 */
function byAllPaths(windows: readonly Float64Array[], t: number, last: number): number[] {
  const change = OPTIONS.hopS / OPTIONS.meanDwellS;
  const sums = [0, 0, 0, 0];
  const length = last + 1;
  for (let code = 0; code < 4 ** length; code++) {
    const path = Array.from({ length }, (_, i) => Math.floor(code / 4 ** i) % 4);
    let weight = 1;
    path.forEach((mode, i) => {
      weight *= windows[i]![mode]! ** OPTIONS.weight;
      if (i > 0) weight *= mode === path[i - 1] ? 1 - change : change / 3;
    });
    sums[path[t]!] = sums[path[t]!]! + weight;
  }
  const total = sums.reduce((sum, one) => sum + one, 0);
  return sums.map((one) => one / total);
}

describe('ModeFilter', () => {
  it('equals the sum over all paths, with the look-ahead and no more', () => {
    // Rejects forward-only filtering, looking further ahead than said, evidence used twice at the join,
    // and a transition matrix whose rows do not add up to 1.
    const windows = drawn(6);
    const found = beliefs(windows);
    expect(found).toHaveLength(6);
    found.forEach(({ probabilities }, t) => {
      const expected = byAllPaths(windows, t, Math.min(5, t + OPTIONS.lookAhead));
      expected.forEach((one, k) => {
        expect(probabilities[k]).toBeCloseTo(one, 10);
      });
    });
  });

  it('gives every window once, in order, the first after the look-ahead', () => {
    const filter = new ModeFilter(OPTIONS);
    const given = drawn(5).map((p, i) => filter.push(i, i + 1, p)?.startS);
    expect(given).toEqual([undefined, undefined, 0, 1, 2]);
    expect(filter.flush().map((one) => one.startS)).toEqual([3, 4]);
    expect(filter.flush()).toEqual([]);
  });

  it('starts anew after a flush', () => {
    // Rejects a filter that carries the mode of the last arc interval into the next.
    const filter = new ModeFilter(OPTIONS);
    const sure = Float64Array.of(0.997, 0.001, 0.001, 0.001);
    for (let i = 0; i < 8; i++) filter.push(i, i + 1, sure);
    filter.flush();
    filter.push(0, 1, Float64Array.of(0.25, 0.25, 0.25, 0.25));
    expect([...filter.flush()[0]!.probabilities]).toEqual([0.25, 0.25, 0.25, 0.25]);
  });

  it('bears a window that calls a mode impossible', () => {
    // Rejects a zero that no later window can lift: log(0) or a product of 0.
    const none = Float64Array.of(1, 0, 0, 0);
    const other = Float64Array.of(0, 1, 0, 0);
    const last = beliefs([none, ...new Array<Float64Array>(12).fill(other)]).at(-1)!;
    expect(last.probabilities[1]).toBeGreaterThan(0.9);
    expect(last.probabilities.every(Number.isFinite)).toBe(true);
  });
});

describe('SegmentBuilder', () => {
  const belief = (startS: number, k: number, p = 0.8): Belief => ({
    startS,
    endS: startS + 1,
    probabilities: Float64Array.from({ length: 4 }, (_, i) => (i === k ? p : (1 - p) / 3)),
  });

  it('puts a change half way between the middles of the two windows', () => {
    // Windows [0, 1) and [1, 2) have middles 0.5 and 1.5: the change is at 1. The edges of the arc interval
    // (0.1 and 2.3) go to the first and last. Rejects ends at window edges, which leave gaps or overlap.
    const builder = new SegmentBuilder(0.1);
    builder.push(belief(0, 0, 0.9));
    builder.push(belief(1, 2, 0.7));
    expect(builder.finish(2.3)).toEqual([
      { startS: 0.1, endS: 1, mode: 'short-circuit', confidence: 0.9 },
      { startS: 1, endS: 2.3, mode: 'spray', confidence: expect.closeTo(0.7, 12) },
    ]);
  });

  it('averages the confidence over the windows of a segment', () => {
    const builder = new SegmentBuilder(0);
    for (const p of [0.9, 0.6, 0.6]) builder.push(belief(0, 1, p));
    expect(builder.finish(3)[0]!.confidence).toBeCloseTo(0.7, 12);
  });

  it('names nothing at one half or below', () => {
    const builder = new SegmentBuilder(0);
    builder.push(belief(0, 1, 0.5));
    expect(builder.finish(1)[0]).toEqual({ startS: 0, endS: 1, mode: null, confidence: 0.5 });
  });

  it('leaves a stretch without windows whole and unnamed', () => {
    const whole = new SegmentBuilder(2).finish(2.2);
    expect(whole).toEqual([{ startS: 2, endS: 2.2, mode: null, confidence: 0 }]);
  });

  it('tiles any stretch without gap or overlap', () => {
    // 200 drawn arc intervals, some ending before the last window does.
    const random = createRandom('stretches');
    for (let run = 0; run < 200; run++) {
      const startS = random.uniform(0, 2);
      const builder = new SegmentBuilder(startS);
      const count = random.integer(1, 12);
      for (let i = 0; i < count; i++)
        builder.push(belief(startS - 0.5 + i * 0.25, random.integer(0, 3), random.uniform(0.3, 1)));
      const endS = startS + random.uniform(0.05, count * 0.25 + 0.5);
      const segments = builder.finish(endS);
      expect(segments[0]!.startS).toBe(startS);
      expect(segments.at(-1)!.endS).toBe(endS);
      segments.forEach((one, i) => {
        expect(one.endS).toBeGreaterThan(one.startS);
        if (i > 0) expect(one.startS).toBe(segments[i - 1]!.endS);
      });
    }
  });
});

describe('without look-ahead', () => {
  it('still remembers the windows before', () => {
    // Rejects a filter whose memory is the list of windows still waiting.
    const filter = new ModeFilter({ hopS: 0.25, weight: 1, meanDwellS: 10, lookAhead: 0 });
    const sure = Float64Array.of(0.97, 0.01, 0.01, 0.01);
    const open = Float64Array.of(0.25, 0.25, 0.25, 0.25);
    filter.push(0, 1, sure);
    expect(filter.push(0.25, 1.25, open)!.probabilities[0]).toBeGreaterThan(0.9);
  });
});
