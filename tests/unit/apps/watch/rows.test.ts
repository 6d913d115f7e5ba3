import { describe, expect, it } from 'vitest';
import { RowReader } from '../../../../src/apps/watch/sources/rows.js';
import { type LiveItem, noLosses } from '../../../../src/apps/watch/sources/types.js';

/** Rows at 1 kHz: the voltage is 20 V plus the number of the row in mV. */
const row = (i: number): string => `${(i / 1000).toFixed(4)},${(20 + i / 1000).toFixed(3)},100\n`;
const rows = (from: number, to: number): string =>
  Array.from({ length: to - from }, (_, i) => row(from + i)).join('');

function read(texts: readonly string[], reading = {}) {
  const losses = noLosses();
  const reader = new RowReader(losses, reading);
  const items: LiveItem[] = texts.flatMap((text) => reader.push(text));
  items.push(...reader.end());
  const volts = items.flatMap((item) => (item.type === 'samples' ? [...item.channels[0]!] : []));
  return { items, losses, volts };
}

// All expected values are the rows themselves, or counts of rows by hand.
describe('rows of a logger', () => {
  it('finds the rate from the times and gives every row once', () => {
    const { items, volts, losses } = read([rows(0, 1000)]);
    expect(items[0]).toMatchObject({ type: 'format', format: { sampleRateHz: 1000 } });
    expect(volts).toHaveLength(1000);
    expect(volts[999]).toBeCloseTo(20.999, 9);
    expect(losses.lostSamples).toBe(0);
  });

  it('gives the same for lines split anywhere', () => {
    const text = rows(0, 600);
    const pieces = text.match(/[\s\S]{1,7}/g)!;
    expect(read(pieces).volts).toEqual(read([text]).volts);
  });

  it('bridges a hole of two rows by a straight line and counts them', () => {
    const { volts, losses } = read([rows(0, 500), rows(502, 1000)]);
    expect(losses).toMatchObject({ lostSamples: 2, bridgedSamples: 2, gaps: 0 });
    expect(volts).toHaveLength(1000);
    expect(volts[500]).toBeCloseTo(20.5, 6);
  });

  it('breaks the time base over a longer hole and says how long it is', () => {
    const { items, losses } = read([rows(0, 500), rows(700, 1000)]);
    const gap = items.find((item) => item.type === 'gap');
    expect(gap).toMatchObject({ lostS: expect.closeTo(0.2, 6) });
    expect(losses).toMatchObject({ lostSamples: 200, bridgedSamples: 0, gaps: 1 });
  });

  it('takes a clock that begins anew for a gap of unknown length', () => {
    const { items, volts } = read([rows(2000, 2500), rows(0, 500)]);
    expect(items.filter((item) => item.type === 'gap')).toMatchObject([{ lostS: null }]);
    expect(volts).toHaveLength(1000);
  });

  it('follows a clock that is 0.1 % fast without losing or making up a row, and states the drift', () => {
    // 30,000 rows 1.001 ms apart against a stated 1000 Hz: 30 rows would be "missing" on a stiff grid.
    const text = Array.from({ length: 30_000 }, (_, i) => `${(i * 0.001001).toFixed(6)},20,100\n`);
    const { volts, losses } = read([text.join('')], { sampleRateHz: 1000 });
    expect(volts).toHaveLength(30_000);
    expect(losses.lostSamples).toBe(0);
    // 1 / 1.001 − 1 = −999 parts in a million.
    expect(losses.driftPpm).toBeGreaterThan(-1040);
    expect(losses.driftPpm).toBeLessThan(-960);
  });

  it('measures jitter and drops rows out of order', () => {
    const late = '0.50030,20,100\n';
    const { losses, volts } = read([rows(0, 500), late, rows(501, 600), row(550)]);
    expect(losses.worstJitterS).toBeCloseTo(0.0003, 5);
    expect(losses.badRows).toBe(1);
    expect(volts).toHaveLength(600);
  });

  it('counts what is no row and goes on', () => {
    const { losses, volts } = read([rows(0, 300), 'overflow\n1,2\n,,\n', rows(300, 600)]);
    expect(losses.badRows).toBe(3);
    expect(volts).toHaveLength(600);
  });

  it('obeys a line of names, in any order and unit of time', () => {
    const text = Array.from({ length: 300 }, (_, i) => `${100 + i};${i * 0.2};${25}\n`).join('');
    const { items, volts } = read([`current_a;time_ms;voltage_v\n${text}`]);
    expect(items[0]).toMatchObject({ format: { sampleRateHz: 5000 } });
    expect(volts[0]).toBe(25);
  });

  it('tells on what the stream says between the rows', () => {
    const { items } = read([
      rows(0, 300),
      '#program 7\n#expect spray\n#expect none\n',
      rows(300, 310),
    ]);
    expect(items.filter((item) => item.type === 'program' || item.type === 'expect')).toEqual([
      { type: 'program', name: '7' },
      { type: 'expect', mode: 'spray' },
      { type: 'expect', mode: null },
    ]);
  });

  it('refuses times too coarse to tell rows apart', () => {
    const text = Array.from({ length: 400 }, (_, i) => `${(i / 5000).toFixed(2)},20,100\n`).join(
      '',
    );
    expect(() => read([text])).toThrow(expect.objectContaining({ code: 'time-too-coarse' }));
  });
});
