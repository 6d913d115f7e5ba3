import { describe, expect, it } from 'vitest';
import { errorOf, readCsv } from './read-log.js';

/* Limits of plausible voltage and current: common practice, no source (see suspicion.ts). */

const trace = (header: string, volts: number, amps?: number): string => {
  const rows = Array.from({ length: 200 }, (_, i) => {
    const swing = 1 + 0.2 * Math.sin(i);
    const current = amps === undefined ? '' : `,${(amps * swing).toFixed(4)}`;
    return `${(i * 1e-4).toFixed(4)},${(volts * swing).toFixed(6)}${current}`;
  });
  return `${header}\n${rows.join('\n')}\n`;
};

describe('mistakes are named and not repaired', () => {
  it.each([
    ['millivolts taken for volts', 't,U', 24_000, undefined, 'voltage-too-high', 'millivolts'],
    ['kilovolts taken for volts', 't,U', 0.024, undefined, 'voltage-too-low', 'kilovolts'],
    ['a 10:1 divider', 't,U', 2.4, undefined, 'voltage-too-low', 'divider'],
    ['polarity', 't,U', -24, undefined, 'negative-voltage', 'polarity'],
    ['swapped columns', 't,U,I', 180, 24, 'swapped-channels', 'swapped'],
    ['milliamperes', 't,U,I', 24, 180_000, 'current-too-high', 'milliamperes'],
    ['shunt volts', 't,U,I', 24, 0.18, 'current-too-low', 'shunt'],
    ['clamp turned round', 't,U,I', 24, -180, 'negative-current', 'clamp'],
  ])('%s', async (_, header, volts, amps, code, word) => {
    const { note, channels } = await readCsv(trace(header, volts, amps));
    expect(note(code)).toContain(word);
    // Row 0 has swing 1: the value stands as it was written.
    expect(channels[0]?.[0]).toBe(volts);
  });

  it('has nothing to say about a usual trace', async () => {
    const { codes } = await readCsv(trace('t [s],U [V],I [A]', 24, 180));
    const alarms = /too-|negative|swapped|assumed|filled|gaps|other/;
    expect(codes.filter((code) => alarms.test(code))).toEqual([]);
  });

  it('says what a rate cannot show', async () => {
    const rows = `U\n${'20\n'.repeat(50)}`;
    const slow = await readCsv(rows, { sampleRateHz: 2000 });
    // 2 samples in 1 ms, 5 samples take 2.5 ms (hand calculation).
    expect(slow.note('rate-low')).toContain('2 samples');
    expect(slow.note('rate-low')).toContain('2.5 ms');
    const fast = await readCsv(rows, { sampleRateHz: 5000 });
    expect(fast.codes).not.toContain('rate-low');
    expect(fast.codes).toContain('aliasing');
    expect((await readCsv(rows, { sampleRateHz: 250_000 })).codes).not.toContain('aliasing');
  });
});

describe('columns and scales stated by the user', () => {
  const text = 't,first,second,third\n0,1,20,30\n0.001,2,21,31\n0.002,3,22,32\n';

  it('takes names and numbers, and scales', async () => {
    const named = await readCsv(text, {
      channelMap: { voltage: 'Second', current: 4 },
      scale: { voltage: 2, current: -10 },
    });
    expect(named.channels).toEqual([
      [40, 42, 44],
      [-300, -310, -320],
    ]);
  });

  it.each([
    ['no recognisable column', {}, 'unknown-columns', '“second”'],
    ['an unknown name', { channelMap: { voltage: 'fourth' } }, 'bad-channel', '“third”'],
    ['a number too high', { channelMap: { voltage: 5 } }, 'bad-channel', 'from 1 to 4'],
    [
      'one column twice',
      { channelMap: { voltage: 2, current: 2 } },
      'contradicting-channels',
      'two',
    ],
    ['sound', { channelMap: { sound: 1, voltage: 2 } }, 'contradicting-channels', 'electrical log'],
    ['scale 0', { channelMap: { voltage: 2 }, scale: { voltage: 0 } }, 'bad-scale', '0'],
    ['idle scale', { channelMap: { voltage: 2 }, scale: { current: 5 } }, 'bad-scale', 'current'],
    ['absurd rate', { channelMap: { voltage: 2 }, sampleRateHz: 0 }, 'bad-sample-rate', '0 Hz'],
  ])('%s', async (_, options, code, words) => {
    const error = await errorOf(readCsv(text, options));
    expect(error.code).toBe(code);
    expect(error.message).toContain(words);
  });
});

describe('damaged texts', () => {
  it('names file, line and text of a broken value', async () => {
    const rows = Array.from({ length: 300 }, (_, i) => `${i * 1e-4},20`);
    rows[249] = '0.0249,2x0';
    const error = await errorOf(readCsv(`t,U\n${rows.join('\n')}\n`));
    expect(error.code).toBe('bad-log-line');
    // One header line: row index 249 stands in line 251.
    expect(error.message).toContain('trace.csv, line 251');
    expect(error.message).toContain('“0.0249,2x0”');
  });

  it('names a row that is too short', async () => {
    const error = await errorOf(readCsv('t,U,I\n0,20,1\n0.1,20,1\n0.2,20\n0.3,20,1\n0.4,20,1\n'));
    expect(error.message).toContain('line 4 has 2 values instead of 3');
  });

  it('leaves out a last line that breaks off, and says so', async () => {
    const { channels, codes } = await readCsv('t,U,I\n0,20,1\n0.001,21,1\n0.002,22,1\n0.003,2');
    expect(channels[0]).toEqual([20, 21, 22]);
    expect(codes).toContain('cut-off-line');
  });

  it.each([
    ['prose', 'This is a letter.\nIt holds no numbers.\n', 'not-a-table'],
    [
      'comma as delimiter and decimal sign',
      't,U\n0,000,20,5\n0,001,20,6\n0,002,20,7\n',
      'comma-twice',
    ],
    ['no time', 'U,I\n20,1\n21,2\n', 'no-time'],
    ['one row', 't,U\n0,20\n', 'no-time-steps'],
  ])('%s', async (_, text, code) => {
    expect((await errorOf(readCsv(text))).code).toBe(code);
  });
});
