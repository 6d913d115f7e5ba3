import { describe, expect, it } from 'vitest';
import { inspectRecording } from '../../../../src/recording/inspect/index.js';
import { bufferSource } from '../../../../src/recording/sources/buffer.js';
import type { ReadOptions } from '../../../../src/recording/types.js';
import { writeWav } from '../../../../src/recording/write-wav.js';

/* Expected figures: hand calculation from the numbers in each text. */

const inspect = (text: string, options: ReadOptions = {}) =>
  inspectRecording(bufferSource(new TextEncoder().encode(text), 'my trace.csv'), options);

describe('inspectRecording on a log', () => {
  it('lists every column with its figures, and what it is read as', async () => {
    const rows = ['0,20,5,ok', '0.001,30,,ok', '0.002,10,7,late', '0.003,20,6,ok'];
    const found = await inspect(`t,U [V],gas flow,state\n${rows.join('\n')}\n`);
    expect(found).toMatchObject({
      format: 'csv',
      kind: 'electrical',
      sampleRateHz: 1000,
      samples: 4,
      problem: null,
    });
    expect(found.durationS).toBeCloseTo(0.004, 12);
    const [time, volts, flow, state] = found.series;
    expect(time?.readAs).toBe('time');
    expect(volts).toMatchObject({ number: 2, name: 'U', unit: 'V', readAs: 'voltage' });
    // Four parts, lowest 10 V, highest 30 V: 20 V lies half way, in the fifth of eight levels.
    expect(volts?.figures).toEqual({
      count: 4,
      missing: 0,
      first: [20, 30, 10, 20],
      min: 10,
      mean: 20,
      max: 30,
      sketch: '▅█▁▅',
    });
    expect(flow).toMatchObject({
      readAs: null,
      figures: { count: 4, missing: 1, min: 5, mean: 6, max: 7 },
    });
    expect(state).not.toHaveProperty('figures');
    expect(found.command).toBe('arc-transfer classify "my trace.csv"');
  });

  it.each([
    ['no time', 'U,I\n20,100\n21,110\n22,120\n', {}, 'no-time', '--sample-rate <Hz>'],
    [
      'unknown columns',
      't,a1,b1\n0,20,1\n0.1,21,2\n',
      {},
      'unknown-columns',
      '--map "voltage=<column>"',
    ],
    ['prose', 'Dear reader,\nno numbers here.\n', {}, 'not-a-table', 'classify'],
  ])('%s: says the problem and how to go on', async (_, text, options, code, words) => {
    const found = await inspect(text, options);
    expect(found.problem?.code).toBe(code);
    expect(found.command).toContain(words);
  });

  it('still lists the columns when a line is broken', async () => {
    const found = await inspect('t,U\n0,20\n0.001,30\n0.002,x7\n0.003,20\n0.004,20\n0.005,20\n');
    expect(found.problem).toMatchObject({ code: 'bad-log-line' });
    expect(found.problem?.message).toContain('line 4');
    expect(found.series.map(({ name }) => name)).toEqual(['t', 'U']);
  });

  it('suggests the scale that undoes millivolts, and swapped columns', async () => {
    const rows = (volts: number, amps: number): string =>
      Array.from({ length: 50 }, (_, i) => `${i / 1000},${volts},${amps}`).join('\n');
    const millivolts = await inspect(`t,U,I\n${rows(24_000, 180)}\n`);
    expect(millivolts.command).toContain('--scale voltage=0.001');
    const swapped = await inspect(`t,U,I\n${rows(180, 24)}\n`);
    expect(swapped.command).toContain('--map voltage=3,current=2');
  });

  it('keeps what the user stated', async () => {
    const found = await inspect('p;q\n1;22\n3;24\n', {
      sampleRateHz: 5000,
      channelMap: { voltage: 'q' },
    });
    expect(found.series.map(({ readAs }) => readAs)).toEqual([null, 'voltage']);
    expect(found.command).toContain('--map voltage=q --sample-rate 5000');
  });

  it('draws a long series in at most 60 characters', async () => {
    const rows = Array.from({ length: 10_007 }, (_, i) => `${i}`).join('\n');
    const found = await inspect(`U\n${rows}\n`, { sampleRateHz: 1000 });
    const sketch = found.series[0]?.figures?.sketch ?? '';
    expect(sketch.length).toBeGreaterThan(30);
    expect(sketch.length).toBeLessThanOrEqual(60);
    // A straight line rises from the lowest bar to the highest and never falls.
    expect([...sketch].sort().join('')).toBe(sketch);
    expect(sketch.at(0)).toBe('▁');
    expect(sketch.at(-1)).toBe('█');
  });
});

describe('inspectRecording on other content', () => {
  it('lists every channel of a sound file', async () => {
    const loud = Float64Array.from({ length: 800 }, (_, i) => (i % 2 === 0 ? 0.5 : -0.5));
    const bytes = await writeWav([new Float64Array(800), loud], 8000, '64');
    const found = await inspectRecording(bufferSource(bytes, 'two.wav'));
    expect(found).toMatchObject({ format: 'wav', kind: 'sound', sampleRateHz: 8000, samples: 800 });
    expect(found.series.map(({ readAs }) => readAs)).toEqual(['sound', null]);
    expect(found.series[1]?.figures).toMatchObject({ count: 800, min: -0.5, mean: 0, max: 0.5 });
  });

  it.each([
    ['nothing', new Uint8Array(0), 'empty-file'],
    ['unknown bytes', Uint8Array.of(1, 2, 3, 4, 0, 255, 7, 9), 'unknown-format'],
  ])('%s', async (_, bytes, code) => {
    const found = await inspectRecording(bufferSource(bytes, 'x.bin'));
    expect(found).toMatchObject({ format: null, samples: null, series: [], problem: { code } });
  });
});
