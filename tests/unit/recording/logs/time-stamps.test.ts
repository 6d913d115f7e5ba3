import { describe, expect, it } from 'vitest';
import { errorOf, readCsv } from './read-log.js';

/* Expected values by hand from the formula that writes each text. */

const table = (
  rows: readonly (readonly [number | string, number | string])[],
  header = 't,U',
): string => `${header}\n${rows.map((row) => row.join(',')).join('\n')}\n`;
const count = <T>(n: number, make: (i: number) => T): T[] =>
  Array.from({ length: n }, (_, i) => make(i));

describe('rate from time stamps', () => {
  // Milliseconds, or a slow log of seconds? A 5 Hz log read as milliseconds was named globular with 96 %.
  it.each([0.1, 0.2, 1, 200, 10_000])('asks for the unit where steps are %d', async (step) => {
    const rows = count(300, (i) => [i * step, i % 7] as const);
    await expect(readCsv(table(rows))).rejects.toMatchObject({ code: 'time-unit-unclear' });
  });

  // Rejects the median step: 23 µs would be 43,478 Hz.
  it('finds 44,100 Hz in stamps rounded to microseconds', async () => {
    const rows = count(5000, (i) => [(i / 44_100).toFixed(6), i] as const);
    const { recording, channels } = await readCsv(table(rows));
    expect(recording.sampleRateHz).toBe(44_100);
    expect(channels[0]).toEqual(count(5000, (i) => i));
  });

  // Rejects a reader that divides by a step of zero, or drops rows with equal stamps.
  it('keeps every row when stamps are rounded to milliseconds at 10 kHz', async () => {
    const rows = count(5000, (i) => [(Math.floor(i / 10) / 1000).toFixed(3), i % 7] as const);
    const { recording, channels, codes } = await readCsv(table(rows));
    expect(recording.sampleRateHz).toBeCloseTo(10_000, -1);
    expect(channels[0]).toHaveLength(5000);
    expect(codes).toContain('coarse-time');
  });

  it.each([
    ['t', 0.0001, 10_000],
    ['t [ms]', 0.1, 10_000],
    ['t [ms]', 10, 100],
    ['t [us]', 10, 100_000],
  ])('header %s, steps of %d: %d Hz', async (header, step, rateHz) => {
    const { recording, codes } = await readCsv(
      table(
        count(50, (i) => [(i * step).toFixed(5), 20] as const),
        `${header},U`,
      ),
    );
    expect(recording.sampleRateHz).toBeCloseTo(rateHz, 6);
    expect(codes.includes('time-unit-assumed')).toBe(header === 't');
  });

  it('lets a stated rate decide the unit, and refuses one that no unit gives', async () => {
    const text = table(count(50, (i) => [i * 10, 20] as const));
    expect((await readCsv(text, { sampleRateHz: 100_000 })).recording.sampleRateHz).toBe(100_000);
    expect(await errorOf(readCsv(text, { sampleRateHz: 7000 }))).toMatchObject({
      code: 'rate-contradiction',
    });
    const without = await readCsv(text, { sampleRateHz: 7000, channelMap: { time: 'none' } });
    expect(without.recording.sampleRateHz).toBe(7000);
  });
});

describe('order and spacing', () => {
  // Rejects a reader that takes rows as they come.
  it('puts rows in order and draws straight lines between uneven ones', async () => {
    // U = 1000 t is a straight line, so linear resampling must give it back exactly at every place.
    const times = count(4000, (i) => i * 0.001 + 0.0004 * Math.sin(i * i));
    const rows = times.map((t) => [t.toFixed(7), (1000 * t).toFixed(4)] as const);
    for (let i = 0; i + 20 < rows.length; i += 20)
      rows.splice(i, 20, ...rows.slice(i, i + 20).reverse());
    const { recording, channels, codes } = await readCsv(table(rows));
    expect(codes).toEqual(expect.arrayContaining(['rows-reordered', 'uneven-time']));
    expect(Math.abs(recording.sampleRateHz - 1000)).toBeLessThan(120);
    const first = channels[0]?.[0] ?? Number.NaN;
    channels[0]?.forEach((value, i) => {
      expect(Math.abs(value - first - (1000 * i) / recording.sampleRateHz)).toBeLessThan(0.01);
    });
  });

  it('refuses rows that come later than the window', async () => {
    const rows = count(30_000, (i) => [(i * 1e-4).toFixed(4), 20] as const);
    rows.push(['0.5', 20]);
    const error = await errorOf(readCsv(table(rows)));
    expect(error.code).toBe('out-of-order');
    expect(error.message).toContain('trace.csv');
  });

  // Rejects closing the gap up (times would shift) and drawing 100 ms of made-up arc.
  it('keeps the place of what follows a gap; bridges a short one, sets a long one to 0', async () => {
    const at = (i: number): number => (i < 500 ? i : i < 900 ? i + 10 : i + 1010);
    const rows = count(1500, (i) => [(at(i) * 1e-4).toFixed(4), at(i) / 100] as const);
    const { channels, note } = await readCsv(table(rows));
    const volts = channels[0] ?? [];
    expect(volts).toHaveLength(at(1499) + 1);
    volts.forEach((value, place) => {
      const lost = place >= 910 && place < 1910;
      expect(value).toBeCloseTo(lost ? 0 : place / 100, 9);
    });
    expect(note('gaps')).toContain('2 gaps');
    expect(note('filled')).toContain('10 bridged');
    expect(note('filled')).toContain('1000 set to 0');
  });

  it('bridges values that are not finite and says how many', async () => {
    const words = ['NaN', 'inf', '-Infinity', '', '---', 'OL', '1.#QNAN', '#DIV/0!'];
    const rows = count(
      400,
      (i) => [i * 1e-4, i % 20 === 5 ? (words[(i / 20) | 0] ?? i) : i] as const,
    );
    const { channels, note } = await readCsv(table(rows));
    channels[0]?.forEach((value, i) => {
      expect(value).toBeCloseTo(i, 9);
    });
    expect(note('filled')).toContain('8 values');
  });

  it.each([
    [
      'a gap of an hour',
      count(100, (i) => [i < 50 ? i * 1e-3 : 3600 + i * 1e-3, 1]),
      'gap-too-long',
    ],
    ['a clock that stands', count(100, () => [5, 1]), 'no-time-steps'],
    ['no number but in time', count(100, (i) => [i * 1e-3, 'NaN']), 'unknown-columns'],
  ] as const)('%s', async (_, rows, code) => {
    expect((await errorOf(readCsv(table(rows as never)))).code).toBe(code);
  });

  it('refuses a rate that changes', async () => {
    const rows = count(
      40_000,
      (i) => [i < 20_000 ? i * 2e-4 : 4 + (i - 20_000) * 1e-4, 20] as const,
    );
    expect((await errorOf(readCsv(table(rows)))).code).toBe('rate-changed');
  });
});
