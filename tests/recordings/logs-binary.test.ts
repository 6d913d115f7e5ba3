import { zipSync } from 'fflate';
import { File as HdfFile, ready } from 'h5wasm';
import { parquetWriteBuffer } from 'hyparquet-writer';
import { beforeAll, describe, expect, it } from 'vitest';
import { errorOf } from '../unit/recording/logs/read-log.js';
import { CURRENT, fixture, RATE_HZ, readLog, SAMPLES, TIME, VOLTAGE } from './log-files.js';

/*
 * The expected samples come from the formulas in log-files.ts, the files from other programs: SciPy and
 * NumPy (fixtures/logs/make_logs.py), the HDF5 C library, and a Parquet writer that shares no code with
 * the reader. `toEqual` on numbers compares bits (but for -0): a reader that goes through float32, or
 * resamples what is steady, fails.
 */

const bits = (values: readonly number[]): bigint[] => [
  ...new BigUint64Array(Float64Array.from(values).buffer),
];

let files: Record<string, Uint8Array>;

beforeAll(async () => {
  const { FS } = (await ready) as unknown as {
    FS: { readFile(path: string): Uint8Array; unlink(path: string): void };
  };
  const hdf5 = (fill: (file: HdfFile) => void): Uint8Array => {
    const file = new HdfFile('/made.h5', 'w');
    fill(file);
    file.close();
    const bytes = FS.readFile('/made.h5').slice();
    FS.unlink('/made.h5');
    return bytes;
  };
  const f64 = (values: readonly number[]): Float64Array => Float64Array.from(values);
  const column = (name: string, data: readonly number[]) => ({
    name,
    data: f64(data),
    type: 'DOUBLE' as const,
  });
  const parquet = (columns: ReturnType<typeof column>[], more = {}): Uint8Array =>
    new Uint8Array(parquetWriteBuffer({ columnData: columns, ...more }));
  // A MATLAB v7.3 file is HDF5 behind 512 bytes of text; HDF5 finds its start there by itself.
  const v73 = (): Uint8Array => {
    const body = hdf5((file) => {
      // MATLAB stores a column vector of N values as N columns of one row.
      file.create_dataset({ name: 'Spannung', data: f64(VOLTAGE), shape: [1, SAMPLES] });
      file.create_dataset({ name: 'Strom', data: f64(CURRENT), shape: [1, SAMPLES] });
      file.create_dataset({ name: 'fs', data: f64([RATE_HZ]), shape: [1, 1] });
    });
    const bytes = new Uint8Array(512 + body.length);
    bytes.set(new TextEncoder().encode('MATLAB 7.3 MAT-file, Platform: invented'));
    bytes.set(body, 512);
    return bytes;
  };
  files = {
    'csv (shortest digits)': new TextEncoder().encode(
      `t,voltage,current\n${TIME.map((t, i) => `${t},${VOLTAGE[i]},${CURRENT[i]}`).join('\n')}\n`,
    ),
    'parquet with time': parquet([
      column('time_s', TIME),
      column('U', VOLTAGE),
      column('I', CURRENT),
    ]),
    'parquet with rate, small row groups': parquet(
      [column('voltage', VOLTAGE), column('current', CURRENT)],
      {
        rowGroupSize: 64,
        kvMetadata: [{ key: 'sample_rate', value: '10000' }],
      },
    ),
    'hdf5, contiguous, time': hdf5((file) => {
      file.create_dataset({ name: 'time', data: f64(TIME) });
      file.create_dataset({ name: 'voltage', data: f64(VOLTAGE) });
      file.create_dataset({ name: 'current', data: f64(CURRENT) });
    }),
    'hdf5, groups, gzip, attributes': hdf5((file) => {
      const group = file.create_group('run1');
      for (const [name, data, units] of [
        ['ch0', VOLTAGE, 'V'],
        ['ch1', CURRENT, 'A'],
      ] as const) {
        group.create_dataset({
          name,
          data: f64(data),
          chunks: [100],
          compression: 'gzip',
          compression_opts: 4,
        });
        (group.get(name) as { create_attribute(n: string, v: string): void }).create_attribute(
          'units',
          units,
        );
      }
      group.create_attribute('fs', RATE_HZ);
    }),
    'mat v7.3': v73(),
    ...Object.fromEntries(
      [
        'v5-compressed.mat',
        'v5-plain.mat',
        'v5-struct.mat',
        'table.npy',
        'table-fortran.npy',
        'stored.npz',
        'deflated.npz',
      ].map((name) => [name, fixture(name)]),
    ),
  };
});

describe('the same samples out of every binary format', () => {
  it.each([
    'parquet with time',
    'parquet with rate, small row groups',
    'hdf5, contiguous, time',
    'hdf5, groups, gzip, attributes',
    'mat v7.3',
    'v5-compressed.mat',
    'v5-plain.mat',
    'v5-struct.mat',
    'table.npy',
    'table-fortran.npy',
    'stored.npz',
    'deflated.npz',
  ])('%s', async (name) => {
    const { recording, channels } = await readLog(files[name] as Uint8Array);
    expect(recording.sampleRateHz).toBe(RATE_HZ);
    expect(recording.channels.map(({ quantity }) => quantity)).toEqual(['voltage', 'current']);
    expect(bits(channels[0] ?? [])).toEqual(bits(VOLTAGE));
    expect(bits(channels[1] ?? [])).toEqual(bits(CURRENT));
  });

  it('csv with the shortest digits within 5e-16', async () => {
    const { recording, channels } = await readLog(files['csv (shortest digits)'] as Uint8Array);
    expect(recording.sampleRateHz).toBe(RATE_HZ);
    channels[0]?.forEach((value, i) => {
      expect(Math.abs(value / (VOLTAGE[i] as number) - 1)).toBeLessThan(5e-16);
    });
    expect(channels[1]).toHaveLength(SAMPLES);
  });
});

describe('other layouts', () => {
  const both = { channelMap: { voltage: 'log[1]', current: 'log[2]' } };

  it.each(['v5-matrix.mat', 'v5-rows.mat'])('%s: a matrix, picked by number', async (name) => {
    const { channels } = await readLog(fixture(name), both);
    expect(channels).toEqual([VOLTAGE, CURRENT]);
  });

  it('v5-int16.mat: integers and float32', async () => {
    const { recording, channels } = await readLog(fixture('v5-int16.mat'));
    const counting = Array.from({ length: SAMPLES }, (_, i) => i);
    expect(recording.sampleRateHz).toBe(RATE_HZ);
    expect(channels).toEqual([counting, counting]);
  });

  it('structured.npy: fields by name, text passed over', async () => {
    const { recording, channels } = await readLog(fixture('structured.npy'));
    expect(recording.sampleRateHz).toBe(RATE_HZ);
    expect(channels).toEqual([VOLTAGE, Array.from({ length: SAMPLES }, (_, i) => i)]);
  });

  it('big-endian.npy and half.npy: one series with a stated rate', async () => {
    const options = { sampleRateHz: RATE_HZ, channelMap: { voltage: 1, time: 'none' } };
    const big = await readLog(fixture('big-endian.npy'), options);
    expect(big.channels).toEqual([VOLTAGE]);
    expect(big.recording.expectedSamples).toBe(SAMPLES);
    const half = await readLog(fixture('half.npy'), options);
    expect(half.channels).toEqual([Array.from({ length: SAMPLES }, (_, i) => i / 8)]);
  });
});

describe('damage', () => {
  // Rejects a reader that hands on what the HDF5 library leaves in memory after a failed read.
  it('hdf5: a damaged packed chunk is an error, not samples', async () => {
    const bytes = (files['hdf5, groups, gzip, attributes'] as Uint8Array).slice();
    // A zlib stream begins 78 5e (level 4, RFC 1950); spoil the middle of each.
    for (let at = 0; at + 60 < bytes.length; at++) {
      if (bytes[at] === 0x78 && bytes[at + 1] === 0x5e) bytes.fill(0xff, at + 20, at + 40);
    }
    expect((await errorOf(readLog(bytes))).code).toBe('damaged-file');
  });

  it('names series of different lengths', async () => {
    const options = { channelMap: { time: 't', voltage: 'voltage' } };
    const other = zipSync({
      't.npy': fixture('half.npy'),
      'voltage.npy': npySeries(VOLTAGE.slice(1)),
    });
    const error = await errorOf(readLog(other, options));
    expect(error.code).toBe('length-mismatch');
    expect(error.message).toContain('“t” 400, “voltage” 399');
  });
});

/** NumPy's format 1.0, little-endian float64. */
function npySeries(values: readonly number[]): Uint8Array {
  const dict = `{'descr': '<f8', 'fortran_order': False, 'shape': (${values.length},), }`;
  const header = new TextEncoder().encode(`${dict.padEnd(117, ' ')}\n`);
  const bytes = new Uint8Array(10 + header.length + 8 * values.length);
  bytes.set([0x93, 0x4e, 0x55, 0x4d, 0x50, 0x59, 1, 0, header.length, 0]);
  bytes.set(header, 10);
  bytes.set(new Uint8Array(Float64Array.from(values).buffer), 10 + header.length);
  return bytes;
}
