import { beforeAll, describe, expect, it } from 'vitest';
import type { Result } from '../../src/analysis/result/index.js';
import { analyseBytes } from '../support/analyse-bytes.js';
import { shippedRecording } from '../support/judge.js';
import { type Columns, csvOf, hdf5Of, mat5Of, npyOf, parquetOf } from './log-writers.js';

/*
 * The same samples in every kind of log. Rejects a reader that rounds to float32, takes its rate from
 * elsewhere, or lets the kind of file reach the answer.
 */

let columns: Columns;
let parquet: Result;

/** All of a result that does not say where it came from. */
const told = (result: Result): string => JSON.stringify({ ...result, source: null });

beforeAll(async () => {
  const { channels, sampleRateHz } = await shippedRecording('short-circuit.csv');
  // Shifted by a third, so that no value fits into float32 or a few digits.
  const [voltage, current] = channels.map((data) => data.map((value) => value + 1 / 3));
  const time = voltage!.map((_, i) => i / sampleRateHz);
  columns = { time, voltage: voltage!, current: current! };
  parquet = await analyseBytes(parquetOf(columns));
});

describe('the same float64 samples', () => {
  it('are a run with an answer', () => {
    expect([parquet.status, parquet.mode]).toEqual(['ok', 'short-circuit']);
    expect(parquet.features['shortCircuitRateHz']).toBeGreaterThan(10);
    expect(parquet.source.format).toBe('parquet');
  });

  it.each([
    ['hdf5', () => hdf5Of(columns)],
    ['mat', () => mat5Of(columns)],
    ['mat', () => hdf5Of(columns, true)],
    ['npy', () => npyOf(columns)],
  ] as const)('give the same result, byte for byte, as %s', async (format, write) => {
    const result = await analyseBytes(await write());
    expect(result.source.format).toBe(format);
    expect(result.source.sampleRateHz).toBe(parquet.source.sampleRateHz);
    expect(told(result)).toBe(told(parquet));
  });
});

describe('the same samples with fewer digits', () => {
  const difference = (name: string, other: number | null): number => {
    const value = (parquet.features as Record<string, number | null>)[name] ?? null;
    if (value === null || other === null) return value === other ? 0 : Number.POSITIVE_INFINITY;
    return Math.abs(other - value) / Math.max(Math.abs(value), 1e-6);
  };
  const worst = (result: Result, steps: boolean): number =>
    Math.max(
      ...Object.entries(result.features)
        .filter(([name]) => name.startsWith('step') === steps)
        .map(([name, value]) => difference(name, value)),
    );

  // Half a unit in the last place of a value is 1e-16 (shortest digits), 6e-8 (float32) and 5e-6 (6 digits).
  // Figures that divide by small differences lose some digits more; those of steps hang on which few
  // steps stand out, where the last digit decides between two of equal height.
  it.each([
    ['CSV, shortest digits', () => csvOf(columns), 1e-12, 1e-3],
    ['float32', () => parquetOf(columns, 'FLOAT'), 1e-4, 1e-3],
    ['CSV, 6 digits', () => csvOf(columns, 6), 1e-3, 1e-2],
  ] as const)('agree as %s', async (_, write, tolerance, ofSteps) => {
    const result = await analyseBytes(write());
    expect([result.status, result.mode]).toEqual([parquet.status, parquet.mode]);
    expect(Object.keys(result.features)).toEqual(Object.keys(parquet.features));
    expect(worst(result, false)).toBeLessThan(tolerance);
    expect(worst(result, true)).toBeLessThan(ofSteps);
    expect(Math.abs(result.confidence! - parquet.confidence!)).toBeLessThan(ofSteps);
  });

  it('are told apart from the exact ones, so that the tolerance means something', async () => {
    const exact = told(parquet);
    expect(told(await analyseBytes(parquetOf(columns, 'FLOAT')))).not.toBe(exact);
  });
});
