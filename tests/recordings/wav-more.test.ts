import { describe, expect, it } from 'vitest';
import { bufferSource, openRecording } from '../../src/recording/index.js';
import { largestError, readAll } from './read-all.js';
import {
  bytesOf,
  chunk,
  extensible,
  FRAMES,
  formatChunk,
  number,
  pcmFile,
  riff,
  store,
  tone,
} from './wav-bytes.js';

const HALF_STEP_16 = 0.5 / 32768 + 1e-12;
const TONE = tone();
const PCM16 = formatChunk({ tag: 1, bits: 16 });
const DATA16 = store([TONE], 's16');

async function codeOf(bytes: Uint8Array, rateHz?: number): Promise<string> {
  const options = rateHz === undefined ? {} : { sampleRateHz: rateHz };
  return readAll(bytes, options).then(
    () => 'no error',
    (error: { code?: string }) => String(error.code),
  );
}

describe('WAV containers', () => {
  it('reads big-endian RIFX of every width (turns down a reader that forgets to swap)', async () => {
    for (const [type, tag, bits] of [
      ['s16', 1, 16],
      ['s24', 1, 24],
      ['s32', 1, 32],
      ['f32', 3, 32],
      ['f64', 3, 64],
    ] as const) {
      const file = riff(
        [
          formatChunk({ tag, bits, bigEndian: true }),
          chunk('data', store([TONE], type, true), { bigEndian: true }),
        ],
        { id: 'RIFX', bigEndian: true },
      );
      const { channels } = await readAll(file);
      expect(largestError(channels[0]!, TONE), type).toBeLessThan(HALF_STEP_16);
    }
  });

  for (const id of ['RF64', 'BW64']) {
    it(`takes the length of ${id} from ds64 (turns down reading the LIST as sound)`, async () => {
      const ds64 = bytesOf(number(0, 8), number(DATA16.length, 8), number(FRAMES, 8), number(0, 4));
      const file = riff(
        [
          chunk('ds64', ds64),
          PCM16,
          chunk('data', DATA16, { size: 0xffffffff }),
          chunk('LIST', bytesOf('INFO', new Uint8Array(400).fill(99))),
        ],
        { id, size: 0xffffffff },
      );
      const { channels, noteCodes } = await readAll(file);
      expect(largestError(channels[0]!, TONE)).toBeLessThan(HALF_STEP_16);
      expect(noteCodes).toEqual([]);
    });
  }

  it('reads RF64 whose ds64 states 0 to the end, with a note', async () => {
    const ds64 = bytesOf(number(0, 8), number(0, 8), number(0, 8), number(0, 4));
    const file = riff([chunk('ds64', ds64), PCM16, chunk('data', DATA16, { size: 0xffffffff })], {
      id: 'RF64',
    });
    const { channels, noteCodes } = await readAll(file);
    expect(channels[0]).toHaveLength(FRAMES);
    expect(noteCodes).toEqual(['wav-size-missing']);
  });

  it('finds the format behind the sound', async () => {
    const { channels } = await readAll(riff([chunk('data', DATA16), PCM16]));
    expect(largestError(channels[0]!, TONE)).toBeLessThan(HALF_STEP_16);
  });

  it('accepts an odd chunk without padding, with a note', async () => {
    const file = riff([
      PCM16,
      chunk('LIST', bytesOf('INFOabc'), { pad: false }),
      chunk('data', DATA16),
    ]);
    const { channels, noteCodes } = await readAll(file);
    expect(largestError(channels[0]!, TONE)).toBeLessThan(HALF_STEP_16);
    expect(noteCodes).toEqual(['wav-unpadded-chunk']);
  });

  it('leaves trailing junk out of the sound', async () => {
    const { channels } = await readAll(bytesOf(pcmFile(), new Uint8Array(999).fill(77)));
    expect(channels[0]).toHaveLength(FRAMES);
  });

  it('mentions much sound behind the declared end (a stale header of an interrupted recorder)', async () => {
    const file = riff([PCM16, chunk('data', store([tone(200_000)], 's16'), { size: 1000 })]);
    const { channels, noteCodes } = await readAll(file);
    expect(channels[0]).toHaveLength(500);
    expect(noteCodes).toEqual(['bytes-after-sound']);
  });

  it('drops a partial last frame with a note', async () => {
    const file = riff([PCM16, chunk('data', bytesOf(DATA16, [1]))]);
    const { channels, noteCodes } = await readAll(file);
    expect(channels[0]).toHaveLength(FRAMES);
    expect(noteCodes).toEqual(['partial-frame']);
  });

  it('delivers blocks of 64 Ki frames whatever the length', async () => {
    const recording = await openRecording(bufferSource(pcmFile(tone(150_000))));
    const lengths: number[] = [];
    for await (const block of recording.blocks()) lengths.push(block.channels[0]!.length);
    expect(lengths).toEqual([65_536, 65_536, 150_000 - 131_072]);
    expect(recording.expectedSamples).toBe(150_000);
  });
});

describe('WAV sample storage', () => {
  it('reads 24 valid bits at the top of 32 (turns down scaling by the valid bits)', async () => {
    const file = riff([
      formatChunk({ tag: 0xfffe, bits: 32, extra: extensible(1, 24) }),
      chunk('data', store([TONE], 's32')),
    ]);
    expect(largestError((await readAll(file)).channels[0]!, TONE)).toBeLessThan(1e-9);
  });

  it('reads extensible float as float (turns down one that looks at the bits only)', async () => {
    const file = riff([
      formatChunk({ tag: 0xfffe, bits: 32, extra: extensible(3, 32) }),
      chunk('data', store([TONE], 'f32')),
    ]);
    expect(largestError((await readAll(file)).channels[0]!, TONE)).toBeLessThan(2 ** -25);
  });

  it('reads channel 5 of 8', async () => {
    const all = Array.from({ length: 8 }, (_, c) => tone(1000, 48_000, 500 * (c + 1)));
    const file = riff([
      formatChunk({ tag: 1, bits: 16, channels: 8 }),
      chunk('data', store(all, 's16')),
    ]);
    const { channels } = await readAll(file, { channelMap: { sound: 5 } });
    expect(largestError(channels[0]!, all[4]!)).toBeLessThan(HALF_STEP_16);
  });

  // ITU-T G.711: A-law 0xD5 is +8 of 16-bit scale, 0x55 is -8, 0xAA is the largest (32,256);
  // µ-law 0xFF is 0, 0x80 the largest (32,124), 0x00 its negative. From memory of the code tables.
  it.each([
    [6, [0xd5, 0x55, 0xaa, 0x2a], [8, -8, 32_256, -32_256]],
    [7, [0xff, 0x80, 0x00, 0x7f], [0, 32_124, -32_124, 0]],
  ])('decodes G.711 tag %i', async (tag, codes, values) => {
    const file = riff([formatChunk({ tag, bits: 8 }), chunk('data', Uint8Array.from(codes))]);
    const { channels, recording } = await readAll(file);
    expect(Array.from(channels[0]!, (value) => value * 32_768)).toEqual(values);
    expect(recording.codec?.lossy).toBe(true);
  });

  it('decodes an IMA ADPCM block as worked out by hand, less the padding that fact names', async () => {
    // Step table 7, 8, 9, … and moves -1/2/4/6/8: from 100, code 7 at step 7 adds 0+7+3+1 and moves to
    // step 16; code 8 takes 2 away and moves to 14; code 4 adds 1+14 and moves to 17; code 0 adds 2.
    const block = bytesOf(number(100, 2), [0, 0], [0x87, 0x04, 0, 0]);
    const file = riff([
      formatChunk({
        tag: 0x11,
        bits: 4,
        blockBytes: 8,
        extra: bytesOf(number(2, 2), number(9, 2)),
      }),
      chunk('fact', bytesOf(number(5, 4))),
      chunk('data', block),
    ]);
    const { channels, recording } = await readAll(file);
    const expected = [100, 111, 109, 124, 126];
    expect(Array.from(channels[0]!, (value) => value * 32_768)).toEqual(expected);
    expect(recording.codec).toEqual({ name: 'ima-adpcm', lossy: true, frameSamples: 9 });
  });
});

describe('WAV faults', () => {
  const format = (parts: Partial<Parameters<typeof formatChunk>[0]>) =>
    riff([formatChunk({ tag: 1, bits: 16, ...parts }), chunk('data', DATA16)]);
  it.each([
    ['0 channels', format({ channels: 0, blockBytes: 2 }), 'bad-channel-count'],
    ['60,000 channels', format({ channels: 60_000, blockBytes: 2 }), 'bad-channel-count'],
    ['4 GHz', format({ rateHz: 4_000_000_000 }), 'bad-sample-rate'],
    ['0 bits', format({ bits: 0, blockBytes: 0 }), 'bad-sample-size'],
    ['77 bits', format({ bits: 77, blockBytes: 10 }), 'bad-sample-size'],
    ['float of 16 bits', format({ tag: 3 }), 'bad-sample-size'],
    ['an unknown tag', format({ tag: 0x1234 }), 'wav-unknown-codec'],
    [
      'a cut format',
      riff([chunk('fmt ', new Uint8Array(8)), chunk('data', DATA16)]),
      'wav-format-cut',
    ],
    ['no format', riff([chunk('data', DATA16)]), 'wav-no-format'],
    ['no data', riff([PCM16]), 'wav-no-data'],
    ['half a sample', riff([PCM16, chunk('data', Uint8Array.of(1))]), 'no-samples'],
    [
      '20,000 empty chunks',
      riff([bytesOf(...Array<Uint8Array>(20_000).fill(chunk('JUNK', new Uint8Array(0)))), PCM16]),
      'wav-too-many-chunks',
    ],
  ])('refuses %s', async (_, bytes, code) => expect(await codeOf(bytes)).toBe(code));

  it('walks past a cue chunk that claims 4 billion entries', async () => {
    const cue = chunk('cue ', bytesOf(number(0xffffffff, 4)));
    const { channels } = await readAll(riff([PCM16, cue, chunk('data', DATA16)]));
    expect(channels[0]).toHaveLength(FRAMES);
  });

  it('reports a frame size that can not be, and reads on', async () => {
    const { channels, noteCodes } = await readAll(format({ blockBytes: 7 }));
    expect(largestError(channels[0]!, TONE)).toBeLessThan(HALF_STEP_16);
    expect(noteCodes).toEqual(['wav-frame-size']);
  });

  it('uses a stated rate only where the file has none', async () => {
    const zero = format({ rateHz: 0 });
    expect((await readAll(zero, { sampleRateHz: 20_000 })).recording.sampleRateHz).toBe(20_000);
    expect(await codeOf(pcmFile(), 44_100)).toBe('contradicting-sample-rate');
    expect(await codeOf(pcmFile(), 48_000)).toBe('no error');
  });
});
