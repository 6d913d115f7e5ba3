import { describe, expect, it } from 'vitest';
import { tracePaths } from '../../../../src/apps/report/charts/thin-path.js';
import type { ThinnedTrace } from '../../../../src/apps/view/evidence/index.js';

const area = { left: 0, right: 100, y: (value: number) => value };
const trace = (values: Float64Array, everySample = true): ThinnedTrace => ({
  quantity: 'voltage',
  unit: 'V',
  binS: 0.001,
  everySample,
  min: values,
  max: values,
});

describe('tracePaths', () => {
  it('shows single extremes among a million values, at their pixel', () => {
    // Rejects thinning by taking every n-th value.
    const values = new Float64Array(1_000_000);
    values[123_456] = 50;
    values[654_321] = -40;
    const { coarse } = tracePaths(trace(values), [], 0, {
      ...area,
      window: { fromS: 0, toS: 1000 },
    });
    const points = [...coarse.matchAll(/[ML]([\d.]+) (-?[\d.]+)/g)].map((one) => [
      Number(one[1]),
      Number(one[2]),
    ]);
    expect(points.length).toBeLessThanOrEqual(202);
    const top = points.find((one) => one[1] === 50)!;
    const bottom = points.find((one) => one[1] === -40)!;
    expect(Math.abs(top[0]! - 12.3456)).toBeLessThan(1.1);
    expect(Math.abs(bottom[0]! - 65.4321)).toBeLessThan(1.1);
  });

  it('joins single values when they are further apart than pixels', () => {
    const { coarse } = tracePaths(trace(Float64Array.of(1, 2, NaN, 4)), [], 0, {
      ...area,
      window: { fromS: 0, toS: 0.004 },
    });
    expect(coarse).toBe('M12.5 1L37.5 2M87.5 4');
  });

  it('draws a close-up where the trace is too coarse', () => {
    const closeUp = { startS: 0.001, binS: 0.0002, traces: [Float64Array.of(5, 6, 7)] };
    const window = { fromS: 0, toS: 0.004 };
    const values = Float64Array.of(1, 2, 3, 4);
    expect(tracePaths(trace(values, false), [closeUp], 0, { ...area, window }).fine).toContain(
      'M27.5 5L32.5 6L37.5 7',
    );
    expect(tracePaths(trace(values, true), [closeUp], 0, { ...area, window }).fine).toBe('');
  });
});
