import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parquetWriteBuffer } from 'hyparquet-writer';
import { describe, expect, it } from 'vitest';
import { type ReadOptions, writeWav } from '../../src/recording/index.js';
import { analyseBytes } from '../support/analyse-bytes.js';

const [, ...lines] = readFileSync(
  join(import.meta.dirname, '../../fixtures/recordings/spray.csv'),
  'utf8',
)
  .trim()
  .split('\n');
const rows = lines.map((line) => line.split(',').map(Number) as [number, number, number]);

/** The demonstration spray, a line each, under another head and in other figures. */
const log = (
  head: string,
  row: (t: number, u: number, i: number, n: number) => unknown[],
): Uint8Array =>
  new TextEncoder().encode(`${head}${rows.map((one, n) => row(...one, n).join(',')).join('\n')}\n`);

const read = (bytes: Uint8Array, options: ReadOptions = {}) => analyseBytes(bytes, options);

describe('what cannot be', () => {
  // Each of these named a mode, for the most part with more than 90 %.
  it.each([
    [
      'the mains',
      'time_s,voltage_v\n',
      (t: number) => [t, 325 * Math.sin(2 * Math.PI * 50 * t)],
      'implausible-voltage',
    ],
    [
      'millivolts taken for volts',
      'time_s,voltage_v\n',
      (t: number, u: number) => [t, 1000 * u],
      'implausible-voltage',
    ],
    [
      'milliamperes taken for amperes',
      'time_s,voltage_v,current_a\n',
      (t: number, u: number, i: number) => [t, u, 1000 * i],
      'implausible-current',
    ],
    [
      'the volts of a shunt taken for amperes',
      'time_s,voltage_v,current_a\n',
      (t: number, u: number, i: number) => [t, u, i / 100],
      'implausible-current',
    ],
    [
      'swapped columns',
      'time_s,voltage_v,current_a\n',
      (t: number, u: number, i: number) => [t, i, u],
      'swapped-channels',
    ],
    [
      'a log of 250 Hz',
      'time_s,voltage_v,current_a\n',
      (_: number, u: number, i: number, n: number) => [n / 250, u, i],
      'rate-too-low',
    ],
  ])('names no mode: %s', async (_, head, row, code) => {
    const result = await read(log(head, row));
    expect(result.source.notes.map((note) => note.code)).toContain(code);
    expect([result.mode, result.confidence]).toEqual([null, null]);
    expect(result.status).not.toBe('ok');
    expect(result.segments.filter((segment) => segment.mode !== null)).toEqual([]);
  });

  it('leaves a plain log and single glitches alone', async () => {
    const plain = await read(log('time_s,voltage_v,current_a\n', (t, u, i) => [t, u, i]));
    const glitch = await read(
      log('time_s,voltage_v,current_a\n', (t, u, i, n) => [t, n === 9000 ? 900 : u, i]),
    );
    expect([plain.mode, glitch.mode]).toEqual(['spray', 'spray']);
  });

  it('is told of a WAV of volts and amperes that nobody called so', async () => {
    const channel = (c: 1 | 2, full: number) =>
      Float64Array.from(
        { length: 10 * rows.length },
        (_, n) => rows[Math.floor(n / 10)]![c] / full,
      );
    const wav = new Uint8Array(await writeWav([channel(1, 100), channel(2, 1000)], 50_000));
    const result = await read(wav);
    expect(result.source.notes.map((note) => note.code)).toContain('one-sided-sound');
    expect([result.mode, result.status === 'ok']).toEqual([null, false]);
    const stated = await read(wav, {
      channelMap: { voltage: 1, current: 2 },
      scale: { voltage: 100, current: 1000 },
    });
    expect(stated.mode).toBe('spray');
  });
});

describe('what may be this or that', () => {
  it('is asked for: time without a unit that would be too slow in seconds', async () => {
    // 0, 0.2, 0.4 …: 5 Hz in seconds, 5 kHz in milliseconds.
    const bytes = log('time,voltage_v,current_a\n', (t, u, i) => [(1000 * t).toFixed(1), u, i]);
    await expect(read(bytes)).rejects.toMatchObject({ code: 'time-unit-unclear' });
    expect((await read(bytes, { sampleRateHz: 5000 })).mode).toBe('spray');
  });

  it('is asked for: a lone column without a name that is too high for volts', async () => {
    const bytes = log('', (t, _, i) => [t, i]);
    await expect(read(bytes)).rejects.toMatchObject({ code: 'unknown-columns' });
    const result = await read(bytes, { channelMap: { current: 2 } });
    expect(result.source.channels.map(({ quantity }) => quantity)).toEqual(['current']);
    const volts = await read(log('', (t, u) => [t, u]));
    expect(volts.source.channels.map(({ quantity }) => quantity)).toEqual(['voltage']);
  });
});

describe('the column of the arc', () => {
  it.each([
    'Supply voltage (V)',
    'mains_voltage_V',
    'Netzspannung [V]',
    'DC-link voltage',
    'lineVoltage',
    'Battery V',
  ])('is not %s', async (name) => {
    const both = await read(log(`time_s,${name},arc voltage (V)\n`, (t, u) => [t, 48, u]));
    expect(both.source.channels.map((one) => one.name)).toEqual(['arc voltage']);
    await expect(read(log(`time_s,${name}\n`, (t) => [t, 48]))).rejects.toMatchObject({
      code: 'unknown-columns',
    });
  });

  it.each(['Line 1 voltage', 'weld voltage', 'U_arc', 'Inline voltage'])('may be %s', async () => {
    const result = await read(log('time_s,weld voltage\n', (t, u) => [t, u]));
    expect(result.source.channels).toHaveLength(1);
  });
});

describe('names above the numbers', () => {
  // Such a line made the log one without names, mapped by place: current first was read as volts.
  it.each([
    ['a remark', '# spray, second try of the day\n'],
    ['a remark with as many commas', '# spray, second try, Monday\n'],
    ['a rule', '------,------,------\n'],
    ['a rule without columns', '====================\n'],
    ['a row of types', 'float,float,double\n'],
    ['units, then a rule', 's,A,V\n---,---,---\n'],
  ])('are found over %s', async (_, between) => {
    const result = await read(
      log(`time_s,current_a,voltage_v\n${between}`, (t, u, i) => [t, i, u]),
    );
    expect(result.source.channels.map(({ name, quantity }) => [name, quantity])).toEqual([
      ['voltage', 'voltage'],
      ['current', 'current'],
    ]);
    expect(result.mode).toBe('spray');
  });
});

describe('values that instruments write for no value', () => {
  it('are none', async () => {
    const one = (value: string) =>
      read(log('time_s,voltage_v,current_a\n', (t, u, i, n) => [t, n % 100 === 7 ? value : u, i]));
    const [scpi, empty] = [await one('9.91E+37'), await one('')];
    expect(scpi.features).toEqual(empty.features);
    expect(scpi.mode).toBe('spray');
  });
});

describe('columns in forms that are rare', () => {
  const series = (c: number): number[] => rows.map((row) => row[c]!);

  it('are read where they are decimal numbers of Parquet', async () => {
    const bytes = new Uint8Array(
      parquetWriteBuffer({
        columnData: ['time_s', 'voltage_v', 'current_a'].map((name, c) => ({
          name,
          data: series(c),
        })),
        schema: [
          { name: 'root', num_children: 3 },
          { name: 'time_s', type: 'DOUBLE', repetition_type: 'REQUIRED' },
          ...['voltage_v', 'current_a'].map((name) => ({
            name,
            type: 'FIXED_LEN_BYTE_ARRAY' as const,
            type_length: 4,
            repetition_type: 'REQUIRED' as const,
            converted_type: 'DECIMAL' as const,
            precision: 8,
            scale: 2,
          })),
        ],
      } as never),
    );
    expect((await read(bytes)).mode).toBe('spray');
  });
});
