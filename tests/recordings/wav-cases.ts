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

/** A WAV file and the one thing that must come of it. */
export interface WavCase {
  name: string;
  /** Which wrong reader the case turns down. */
  rejects: string;
  bytes: Uint8Array;
  /** Samples of the first channel and how far off they may be (half a quantisation step). */
  expected?: { samples: Float64Array; within: number };
  errorCode?: string;
  notes?: string[];
  rateHz?: number;
}

const PCM16 = formatChunk({ tag: 1, bits: 16 });
const DATA16 = store([tone()], 's16');
const TONE = tone();
const HALF_STEP_16 = 0.5 / 32768;
const GOOD16 = { samples: TONE, within: HALF_STEP_16 };

function loud(): Float64Array {
  return tone(FRAMES, 48_000, 1000, 2.5);
}

function withNaN(): Float64Array {
  const samples = tone();
  samples[1200] = Number.NaN;
  return samples;
}

function nanReplaced(): Float64Array {
  const samples = tone();
  samples[1200] = 0;
  return samples;
}

/** The 22 files that a survey of WAV readers found to part good ones from bad ones. */
export function wavCases(): WavCase[] {
  return [...storageCases(), ...chunkCases(), ...faultCases()];
}

function storageCases(): WavCase[] {
  const plain = (type: 'u8' | 's16' | 's24' | 's32' | 'f32' | 'f64', tag: number, bits: number) =>
    riff([formatChunk({ tag, bits }), chunk('data', store([TONE], type))]);
  return [
    {
      name: 'PCM 8 bit',
      rejects: 'reads unsigned bytes as signed',
      bytes: plain('u8', 1, 8),
      expected: { samples: TONE, within: 0.5 / 128 },
    },
    {
      name: 'PCM 16 bit',
      rejects: 'scales by 32767 instead of 32768',
      bytes: plain('s16', 1, 16),
      expected: GOOD16,
    },
    {
      name: 'PCM 24 bit',
      rejects: 'reads 24 bits as 16, or loses the sign',
      bytes: plain('s24', 1, 24),
      expected: { samples: TONE, within: 0.5 / 8388608 },
    },
    {
      name: 'PCM 32 bit',
      rejects: 'takes 32-bit integers for floats',
      bytes: plain('s32', 1, 32),
      expected: { samples: TONE, within: 0.5 / 2147483648 },
    },
    {
      name: 'float 32',
      rejects: 'takes floats for 32-bit integers',
      bytes: plain('f32', 3, 32),
      expected: { samples: TONE, within: 2 ** -25 },
    },
    {
      name: 'float above full scale',
      rejects: 'clips at 1',
      bytes: riff([formatChunk({ tag: 3, bits: 32 }), chunk('data', store([loud()], 'f32'))]),
      expected: { samples: loud(), within: 2 ** -23 },
      notes: ['above-full-scale'],
    },
    {
      name: 'stereo',
      rejects: 'mixes the channels, or reads them as one',
      bytes: riff([
        formatChunk({ tag: 1, bits: 16, channels: 2 }),
        chunk('data', store([TONE, tone(FRAMES, 48_000, 3000)], 's16')),
      ]),
      expected: GOOD16,
      notes: ['channel-assumed'],
    },
    {
      name: '192 kHz',
      rejects: 'assumes the rate, or resamples',
      bytes: pcmFile(tone(FRAMES, 192_000), 's16', 192_000),
      expected: { samples: tone(FRAMES, 192_000), within: HALF_STEP_16 },
      rateHz: 192_000,
    },
    {
      name: '24 bit extensible',
      rejects: 'does not know the extensible tag',
      bytes: riff([
        formatChunk({ tag: 0xfffe, bits: 24, extra: extensible(1, 24) }),
        chunk('data', store([TONE], 's24')),
      ]),
      expected: { samples: TONE, within: 0.5 / 8388608 },
    },
    {
      name: 'float 64',
      rejects: 'knows floats of 32 bits only',
      bytes: plain('f64', 3, 64),
      expected: { samples: TONE, within: 0 },
    },
  ];
}

function chunkCases(): WavCase[] {
  return [
    {
      name: '4 kB JUNK first',
      rejects: 'expects the sound at byte 44',
      bytes: riff([chunk('JUNK', new Uint8Array(4096)), PCM16, chunk('data', DATA16)]),
      expected: GOOD16,
    },
    {
      name: 'odd-length LIST before data',
      rejects: 'forgets the padding byte',
      bytes: riff([PCM16, chunk('LIST', bytesOf('INFOabc')), chunk('data', DATA16)]),
      expected: GOOD16,
    },
    {
      name: 'sizes 0xFFFFFFFF',
      rejects: 'believes 4 GiB and delivers or allocates it',
      bytes: riff([PCM16, chunk('data', DATA16, { size: 0xffffffff })], { size: 0xffffffff }),
      expected: GOOD16,
      notes: ['wav-size-missing'],
    },
    {
      name: 'sizes 0',
      rejects: 'believes 0 and delivers nothing',
      bytes: riff([PCM16, chunk('data', DATA16, { size: 0 })], { size: 0 }),
      expected: GOOD16,
      notes: ['wav-size-missing'],
    },
    {
      name: 'garbage inside a LIST after good audio',
      rejects: 'loses good sound for a bad tail',
      bytes: riff([
        PCM16,
        chunk('data', DATA16),
        chunk('LIST', bytesOf('INFO', number(0xdeadbeef, 4), 'junk'), { size: 0x7fffffff }),
      ]),
      expected: GOOD16,
    },
  ];
}

function faultCases(): WavCase[] {
  const whole = pcmFile();
  return [
    {
      name: 'cut in half',
      rejects: 'fills the missing half with NaN or zeros, or cuts silently',
      bytes: whole.slice(0, 44 + DATA16.length / 2),
      expected: { samples: TONE.slice(0, FRAMES / 2), within: HALF_STEP_16 },
      notes: ['truncated'],
    },
    {
      name: 'no samples',
      rejects: 'returns an empty recording without a word',
      bytes: riff([PCM16, chunk('data', new Uint8Array(0))]),
      errorCode: 'no-samples',
    },
    {
      name: 'sample rate 0',
      rejects: 'divides by it',
      bytes: riff([formatChunk({ tag: 1, bits: 16, rateHz: 0 }), chunk('data', DATA16)]),
      errorCode: 'bad-sample-rate',
    },
    {
      name: 'one NaN sample',
      rejects: 'passes it on, and every later mean is NaN',
      bytes: riff([formatChunk({ tag: 3, bits: 32 }), chunk('data', store([withNaN()], 'f32'))]),
      expected: { samples: nanReplaced(), within: 2 ** -25 },
      notes: ['not-finite'],
    },
    {
      name: 'ADPCM tag',
      rejects: 'reads compressed bytes as PCM',
      bytes: riff([
        formatChunk({ tag: 2, bits: 4, blockBytes: 256, extra: bytesOf(number(0, 2)) }),
        chunk('data', DATA16),
      ]),
      errorCode: 'wav-unknown-codec',
    },
    {
      name: 'not audio',
      rejects: 'trusts the name of the file',
      bytes: bytesOf('Minutes of the meeting of Tuesday: the booth is to be swept.\n'),
      errorCode: 'not-a-table',
    },
    {
      name: 'zero bytes',
      rejects: 'fails with an unrelated message',
      bytes: new Uint8Array(0),
      errorCode: 'empty-file',
    },
  ];
}
