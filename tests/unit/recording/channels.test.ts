import { describe, expect, it } from 'vitest';
import { chooseChannels } from '../../../src/recording/channels.js';
import { readAll } from '../../recordings/read-all.js';
import { chunk, formatChunk, riff, store, tone } from '../../recordings/wav-bytes.js';
import { codeOf } from '../../support/code-of.js';

function stereo(first: Float64Array, second: Float64Array): Uint8Array {
  return riff([
    formatChunk({ tag: 3, bits: 64, channels: 2 }),
    chunk('data', store([first, second], 'f64')),
  ]);
}

describe('chooseChannels', () => {
  it('takes the first of several as sound and says so', () => {
    const choice = chooseChannels(3, {});
    expect(choice.picks.map((pick) => pick.index)).toEqual([0]);
    expect(choice.notes.map((note) => note.code)).toEqual(['channel-assumed']);
  });

  it('says nothing when there is nothing to choose, or the user chose', () => {
    expect(chooseChannels(1, {}).notes).toEqual([]);
    expect(chooseChannels(2, { channelMap: { sound: 2 } }).notes).toEqual([]);
  });

  it('orders voltage before current whatever the order of the channels', () => {
    const choice = chooseChannels(2, {
      channelMap: { current: 1, voltage: '2' },
      scale: { voltage: 100, current: 1000 },
    });
    expect(choice.kind).toBe('electrical');
    expect(choice.picks.map((pick) => [pick.index, pick.factor, pick.channel.unit])).toEqual([
      [1, 100, 'V'],
      [0, 1000, 'A'],
    ]);
  });

  // Each turns down a reader that clamps, counts from 0, or lets a statement fall silently.
  const wrong: [string, Parameters<typeof chooseChannels>[1], string][] = [
    ['channel 0', { channelMap: { sound: 0 } }, 'bad-channel'],
    ['a channel beyond the last', { channelMap: { sound: 3 } }, 'bad-channel'],
    ['half a channel', { channelMap: { sound: 1.5 } }, 'bad-channel'],
    ['a column name', { channelMap: { sound: 'left' } }, 'bad-channel'],
    ['a time channel', { channelMap: { time: 1 } }, 'bad-channel'],
    ['voltage without a scale', { channelMap: { voltage: 1 } }, 'bad-scale'],
    ['a scale of 0', { channelMap: { voltage: 1 }, scale: { voltage: 0 } }, 'bad-scale'],
    ['a scale without a channel', { scale: { voltage: 100 } }, 'bad-scale'],
    [
      'sound and voltage',
      { channelMap: { sound: 1, voltage: 2 }, scale: { voltage: 1 } },
      'contradicting-channels',
    ],
    [
      'one channel twice',
      { channelMap: { voltage: 1, current: 1 }, scale: { voltage: 1, current: 1 } },
      'contradicting-channels',
    ],
  ];
  for (const [name, options, code] of wrong) {
    it(`refuses ${name}`, () => expect(codeOf(() => chooseChannels(2, options))).toBe(code));
  }
});

describe('channels of a WAV file', () => {
  it('become volts and amperes, never mixed', async () => {
    const volts = tone(100);
    const amps = tone(100, 48_000, 3000);
    const { recording, channels } = await readAll(stereo(amps, volts), {
      channelMap: { voltage: 2, current: 1 },
      scale: { voltage: 100, current: -1000 },
    });
    expect(recording.kind).toBe('electrical');
    expect(recording.channels.map((channel) => channel.quantity)).toEqual(['voltage', 'current']);
    // Plain maths: sample times scale, exact in 64-bit floats.
    expect(channels[0]).toEqual(volts.map((value) => value * 100));
    expect(channels[1]).toEqual(amps.map((value) => value * -1000));
  });

  it('tells when the channel taken by default is silent and another is not', async () => {
    const silent = new Float64Array(1000);
    expect((await readAll(stereo(silent, tone(1000)))).noteCodes).toContain(
      'chosen-channel-silent',
    );
    // Turns down a watch that cries whenever the first channel is silent, or whenever any is.
    expect((await readAll(stereo(silent, silent))).noteCodes).toEqual(['channel-assumed']);
    expect((await readAll(stereo(tone(1000), silent))).noteCodes).toEqual(['channel-assumed']);
  });
});
