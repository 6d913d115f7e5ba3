import { describe, expect, it } from 'vitest';
import type { Note } from '../../../src/core/index.js';
import type { ChannelPick } from '../../../src/recording/channels.js';
import { createSampleGuard } from '../../../src/recording/guard.js';

const SOUND: ChannelPick = {
  index: 0,
  factor: 1,
  channel: { name: 'channel 1', quantity: 'sound', unit: 'full-scale' },
};
const VOLTAGE: ChannelPick = {
  index: 0,
  factor: 1,
  channel: { name: 'channel 1', quantity: 'voltage', unit: 'V' },
};

describe('createSampleGuard', () => {
  it('replaces by 0 in sound and gives the times', () => {
    const notes: Note[] = [];
    const guard = createSampleGuard([SOUND], 1000, notes);
    const samples = new Float64Array(500).fill(0.5);
    samples[10] = Number.NaN;
    samples[20] = Number.NEGATIVE_INFINITY;
    guard.check([samples], 1000);
    guard.finish();
    expect([samples[9], samples[10], samples[20], samples[21]]).toEqual([0.5, 0, 0, 0.5]);
    expect(notes).toHaveLength(1);
    // Hand calculation: (1000 + 10) / 1000 Hz and (1000 + 20) / 1000 Hz.
    expect(notes[0]!.message).toContain('2 samples');
    expect(notes[0]!.message).toContain('1.0100 s, 1.0200 s');
  });

  it('holds the last good value in a trace, across blocks (0 V would read as a short circuit)', () => {
    const notes: Note[] = [];
    const guard = createSampleGuard([VOLTAGE], 1000, notes);
    guard.check([new Float64Array(500).fill(20)], 0);
    const second = new Float64Array(500).fill(21);
    second[0] = Number.NaN;
    guard.check([second], 500);
    expect(second[0]).toBe(20);
  });

  it('refuses more than 1 %, and not exactly 1 %', () => {
    const withBad = (bad: number) => {
      const samples = new Float64Array(1000);
      samples.fill(Number.NaN, 0, bad);
      const guard = createSampleGuard([SOUND], 1000, []);
      guard.check([samples], 0);
      guard.finish();
    };
    expect(() => withBad(10)).not.toThrow();
    expect(() => withBad(11)).toThrow(/11 of the first 1000/);
  });

  it('says nothing about good samples, empty blocks and full scale itself', () => {
    const notes: Note[] = [];
    const guard = createSampleGuard([SOUND], 1000, notes);
    guard.check([new Float64Array(0)], 0);
    guard.check([Float64Array.of(-1, 1, 0)], 0);
    guard.finish();
    expect(notes).toEqual([]);
  });
});
