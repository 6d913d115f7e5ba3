import { describe, expect, it } from 'vitest';
import { RowReader } from '../../../../src/apps/watch/sources/rows.js';
import { type LiveItem, noLosses } from '../../../../src/apps/watch/sources/types.js';
import { bufferSource, openRecording } from '../../../../src/recording/index.js';

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
    expect(() => read([`time_s,voltage_v,current_a\n${text}`])).toThrow(
      expect.objectContaining({ code: 'time-too-coarse' }),
    );
  });
});

/** The samples that `classify` reads from the same text as a file. */
async function asFile(text: string): Promise<{ names: string[]; samples: number[][] }> {
  const source = bufferSource(new TextEncoder().encode(text), 'log.csv');
  const recording = await openRecording(source);
  const samples: number[][] = recording.channels.map(() => []);
  for await (const block of recording.blocks())
    for (const [c, part] of block.channels.entries()) samples[c]!.push(...part);
  return { names: recording.channels.map(({ quantity }) => quantity), samples };
}

const many = (line: (i: number) => string): string =>
  Array.from({ length: 400 }, (_, i) => `${line(i)}\n`).join('');
const clock = (i: number): string => new Date(Date.UTC(2024, 4, 1, 12) + i).toISOString();
const volts = (i: number): number => 20 + (i % 50) / 10;

// Each was read otherwise live, or ended the watch: the file is the measure.
describe('rows are read live as they are from a file', () => {
  it.each([
    [
      'millivolts and kiloamperes',
      `time_s,U [mV],I [kA]\n${many((i) => `${i / 1000},${1000 * volts(i)},0.18`)}`,
    ],
    [
      'dates of ISO 8601',
      `timestamp,voltage_V,current_A\n${many((i) => `${clock(i)},${volts(i)},180`)}`,
    ],
    [
      'decimal commas',
      `Zeit [s];Spannung [V];Strom [A]\n${many((i) => `${String(i / 1000).replace('.', ',')};${String(volts(i)).replace('.', ',')};180,5`)}`,
    ],
    [
      'names, then units',
      `time;voltage;current\ns;V;A\n${many((i) => `${i / 1000};${volts(i)};180`)}`,
    ],
    [
      'names behind a comment mark',
      `# time_s, current_A, voltage_V\n${many((i) => `${i / 1000},180,${volts(i)}`)}`,
    ],
    [
      'a supply voltage beside',
      `time_s,supply voltage (V),arc voltage (V)\n${many((i) => `${i / 1000},48,${volts(i)}`)}`,
    ],
    [
      'spaces between',
      `time_s voltage_V current_A\n${many((i) => `${i / 1000}  ${volts(i)}  180`)}`,
    ],
  ])('with %s', async (_, text) => {
    const { items } = read([text]);
    const file = await asFile(text);
    const [format] = items;
    if (format?.type !== 'format') throw new Error('no format');
    expect(format.format.channels.map(({ quantity }) => quantity)).toEqual(file.names);
    const live = file.names.map((_, c) =>
      items.flatMap((item) => (item.type === 'samples' ? [...item.channels[c]!] : [])),
    );
    expect(live).toEqual(file.samples);
  });

  it('asks as for a file where the time gives no unit', () => {
    const text = `time,voltage,current\n${many((i) => `${i / 5},${volts(i)},180`)}`;
    expect(() => read([text])).toThrow(expect.objectContaining({ code: 'time-unit-unclear' }));
  });
});

describe('what comes before the rows', () => {
  const text = many((i) => `${(10 + i / 1000).toFixed(4)},${volts(i).toFixed(2)},180`);
  const plain = read([text]);

  it.each([
    ['a row cut in two', text.slice(3)],
    ['a row cut within its voltage', text.slice(11)],
    ['a banner', `Logger 7 ready\r\nfirmware 1.2, unit 4\r\n\r\n${text}`],
    ['bytes of telnet', `\ufffd\ufffd\u0001\ufffd\ufffd\u0003${text}`],
    ['line noise, then names', `\ufffd\u0000x\ufffd~\ntime_s,voltage_v,current_a\n${text}`],
    ['a screen of text', `${'no numbers here\n'.repeat(450)}${text}`],
  ])('does not fix a wrong layout: %s', (_, given) => {
    const { items, volts: heard } = read([given]);
    expect(items[0]).toMatchObject({ type: 'format', format: { sampleRateHz: 1000 } });
    expect(items.filter((item) => item.type === 'gap')).toEqual([]);
    // But for the cut row all of them.
    expect(plain.volts.slice(-heard.length)).toEqual(heard);
    expect(heard.length).toBeGreaterThanOrEqual(399);
  });

  it('may come again after a reconnect and is no bad row', () => {
    const names = 'time_s,voltage_v,current_a\n';
    const { losses } = read([names, text, names]);
    expect(losses.badRows).toBe(0);
  });
});
