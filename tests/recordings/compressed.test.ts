import { execFileSync } from 'node:child_process';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ffmpegDecoder } from '../../src/files/ffmpeg-decoder.js';
import { openFileSource } from '../../src/files/file-source.js';
import { type HostDecoder, openRecording, type ReadOptions } from '../../src/recording/index.js';
import {
  agreementDb,
  clicksAndSweep,
  HAS_AAC,
  HAS_FFMPEG,
  HAS_SOX,
  lagSamples,
  type MediaFolder,
  mediaFolder,
} from './media.js';
import { drain, largestError, type WholeRecording } from './read-all.js';

const SOURCE = clicksAndSweep();
const AAC = ['-c:a', 'aac', '-aac_pns', '0', '-b:a', '128k'];
const PICTURES = ['-f', 'lavfi', '-i', 'testsrc=s=64x48:r=25:d=4', '-c:v', 'mpeg4'];

interface Case {
  file: string;
  format: string;
  options: string[];
  codec: string;
  /** Least agreement with ffmpeg's own decode, in dB. */
  agreeDb: number;
  /** Samples by which the file may be longer than the recording: padding it does not declare. */
  extra?: number;
  /** The container does not state the encoder's delay, so only ffmpeg's timing can be matched. */
  delayUnknown?: boolean;
}

/**
 * Agreement: two sound decoders of one lossy stream differ by rounding (AAC, MP3, Vorbis: beyond 110 dB);
 * libopus and ffmpeg's own Opus decoder differ by more (70 dB, measured with both); lossless is exact.
 * Noise substitution is off (`-aac_pns 0`): the standard lets decoders differ there.
 */
const CASES: Case[] = [
  { file: 'end.m4a', format: 'm4a', codec: 'aac', options: AAC, agreeDb: 120 },
  {
    file: 'fast.m4a',
    format: 'm4a',
    codec: 'aac',
    options: [...AAC, '-movflags', '+faststart'],
    agreeDb: 120,
  },
  { file: 'film.mp4', format: 'mp4', codec: 'aac', options: [...PICTURES, ...AAC], agreeDb: 120 },
  { file: 'film.mov', format: 'mov', codec: 'aac', options: [...PICTURES, ...AAC], agreeDb: 120 },
  {
    file: 'parts.mp4',
    format: 'mp4',
    codec: 'aac',
    options: [...AAC, '-movflags', 'frag_keyframe+empty_moov'],
    agreeDb: 120,
    delayUnknown: true,
  },
  { file: 'bare.aac', format: 'aac', codec: 'aac', options: AAC, agreeDb: 120, delayUnknown: true },
  {
    file: 'fixed.mp3',
    format: 'mp3',
    codec: 'mp3',
    options: ['-c:a', 'libmp3lame', '-b:a', '128k'],
    agreeDb: 110,
  },
  {
    file: 'varying.mp3',
    format: 'mp3',
    codec: 'mp3',
    options: ['-c:a', 'libmp3lame', '-q:a', '3'],
    agreeDb: 110,
  },
  {
    file: 'untagged.mp3',
    format: 'mp3',
    codec: 'mp3',
    options: ['-c:a', 'libmp3lame', '-write_xing', '0'],
    agreeDb: 110,
    delayUnknown: true,
  },
  {
    file: 'vorbis.ogg',
    format: 'ogg',
    codec: 'vorbis',
    options: ['-c:a', 'libvorbis'],
    agreeDb: 120,
  },
  {
    file: 'vorbis.webm',
    format: 'webm',
    codec: 'vorbis',
    options: ['-c:a', 'libvorbis'],
    agreeDb: 120,
    extra: 1024,
  },
  { file: 'opus.ogg', format: 'ogg', codec: 'opus', options: ['-c:a', 'libopus'], agreeDb: 70 },
  {
    file: 'opus.webm',
    format: 'webm',
    codec: 'opus',
    options: ['-c:a', 'libopus'],
    agreeDb: 70,
    extra: 960,
  },
  { file: 'opus.mp4', format: 'mp4', codec: 'opus', options: ['-c:a', 'libopus'], agreeDb: 70 },
  {
    file: 'plain.flac',
    format: 'flac',
    codec: 'flac',
    options: ['-c:a', 'flac'],
    agreeDb: Number.POSITIVE_INFINITY,
  },
  {
    file: 'deep.flac',
    format: 'flac',
    codec: 'flac',
    options: ['-c:a', 'flac', '-sample_fmt', 's32'],
    agreeDb: Number.POSITIVE_INFINITY,
  },
  {
    file: 'apple.m4a',
    format: 'm4a',
    codec: 'alac',
    options: ['-c:a', 'alac'],
    agreeDb: Number.POSITIVE_INFINITY,
  },
  {
    file: 'plain.aiff',
    format: 'aiff',
    codec: 'pcm-s16',
    options: [],
    agreeDb: Number.POSITIVE_INFINITY,
  },
  {
    file: 'float.aifc',
    format: 'aiff',
    codec: 'pcm-f32',
    options: ['-c:a', 'pcm_f32be', '-f', 'aiff'],
    agreeDb: Number.POSITIVE_INFINITY,
  },
  {
    file: 'little.caf',
    format: 'caf',
    codec: 'pcm-s24',
    options: ['-c:a', 'pcm_s24le'],
    agreeDb: Number.POSITIVE_INFINITY,
  },
  {
    file: 'alaw.caf',
    format: 'caf',
    codec: 'a-law',
    options: ['-c:a', 'pcm_alaw'],
    agreeDb: Number.POSITIVE_INFINITY,
  },
  {
    file: 'plain.mov',
    format: 'mov',
    codec: 'pcm-s16be',
    options: ['-c:a', 'pcm_s16be'],
    agreeDb: Number.POSITIVE_INFINITY,
  },
  {
    file: 'plain.mkv',
    format: 'mkv',
    codec: 'pcm-s16',
    options: ['-c:a', 'pcm_s16le'],
    agreeDb: Number.POSITIVE_INFINITY,
  },
];

async function readFile(
  path: string,
  options: ReadOptions = {},
  decoders: HostDecoder[] = [],
): Promise<WholeRecording> {
  const source = await openFileSource(path);
  try {
    return await drain(await openRecording(source, options, { decoders }));
  } finally {
    await source.close();
  }
}

describe.skipIf(!HAS_FFMPEG)('compressed sound (skipped: no ffmpeg to make the inputs)', () => {
  let media: MediaFolder;
  beforeAll(() => {
    media = mediaFolder(SOURCE);
  });
  afterAll(() => media.remove());

  const needsPackage = (codec: string): boolean => !HAS_AAC && /^(aac|alac)$/.test(codec);
  for (const wanted of CASES) {
    // Turns down a reader that keeps the encoder's delay, resamples, or goes by the file's name.
    it.skipIf(needsPackage(wanted.codec))(
      `reads ${wanted.file} as ffmpeg does, aligned to the sample`,
      async () => {
        media.encode(wanted.file, ...wanted.options);
        const { recording, channels, noteCodes } = await readFile(media.path(wanted.file));
        expect(recording.format).toBe(wanted.format);
        expect(recording.codec?.name).toBe(wanted.codec);
        const samples = channels[0]!;
        // The first 2,048 samples may hold the fade-in of a delay that nobody states.
        const from = wanted.delayUnknown ? 2048 : 0;
        expect(agreementDb(samples, media.reference(wanted.file), from)).toBeGreaterThanOrEqual(
          wanted.agreeDb,
        );
        expect(noteCodes.includes('encoder-delay-unknown')).toBe(wanted.delayUnknown ?? false);
        if (wanted.delayUnknown || wanted.codec === 'opus') return;
        expect(samples.length - SOURCE.length).toBeGreaterThanOrEqual(0);
        expect(samples.length - SOURCE.length).toBeLessThanOrEqual(wanted.extra ?? 0);
        expect(lagSamples(samples, SOURCE)).toBe(0);
      },
    );
  }

  it('keeps Opus at 48 kHz and the length of the recording', async () => {
    const { recording, channels } = await readFile(media.path('opus.ogg'));
    expect(recording.sampleRateHz).toBe(48_000);
    expect(channels[0]!.length).toBe(4 * 48_000);
  });

  it('decodes AAC by the host first, exactly as ffmpeg, and says so', async () => {
    media.encode('film.mp4', ...PICTURES, ...AAC);
    const { channels, noteCodes } = await readFile(media.path('film.mp4'), {}, [ffmpegDecoder()]);
    expect(noteCodes).toContain('host-decoder');
    // The same decoder on both sides: only our cutting and alignment are tested here.
    expect(largestError(channels[0]!, media.reference('film.mp4').slice(0, SOURCE.length))).toBe(0);
  });

  it.skipIf(HAS_AAC)(
    'says what to do where neither the host nor the package decodes AAC',
    async () => {
      const nowhere = [ffmpegDecoder('no-such-program')];
      await expect(readFile(media.path('film.mp4'), {}, nowhere)).rejects.toMatchObject({
        code: 'no-decoder',
        todo: expect.stringMatching(/ffmpeg.*npm install @audio\/decode-aac/),
      });
    },
  );

  it.skipIf(!HAS_AAC)('falls back to the package where the host has none', async () => {
    const nowhere = [ffmpegDecoder('no-such-program')];
    const { channels, noteCodes } = await readFile(media.path('film.mp4'), {}, nowhere);
    expect(noteCodes).not.toContain('host-decoder');
    expect(channels[0]!.length).toBe(SOURCE.length);
  });

  it.skipIf(!HAS_AAC)('takes one channel of a stereo film and says which', async () => {
    const pan = ['-af', 'pan=stereo|c0=0*c0|c1=c0'];
    media.encode('right.m4a', ...pan, ...AAC);
    const first = await readFile(media.path('right.m4a'));
    expect(first.noteCodes).toEqual(
      expect.arrayContaining(['channel-assumed', 'chosen-channel-silent', 'lossy-codec']),
    );
    const second = await readFile(media.path('right.m4a'), { channelMap: { sound: 2 } });
    expect(lagSamples(second.channels[0]!, SOURCE)).toBe(0);
  });

  it('reads a voltage that was recorded to FLAC', async () => {
    const { recording, channels } = await readFile(media.path('plain.flac'), {
      channelMap: { voltage: 1 },
      scale: { voltage: 50 },
    });
    expect(recording.kind).toBe('electrical');
    const expected = media.reference('plain.flac').map((value) => value * 50);
    expect(largestError(channels[0]!, expected)).toBe(0);
  });

  it('decodes IMA ADPCM within the rounding in which decoders differ', async () => {
    media.encode('ima.wav', '-c:a', 'adpcm_ima_wav', '-ac', '2');
    const { channels } = await readFile(media.path('ima.wav'));
    // ffmpeg forms the step product in one rounding, the recommendation in four shifts.
    expect(agreementDb(channels[0]!, media.reference('ima.wav'))).toBeGreaterThan(45);
    expect(lagSamples(channels[0]!, SOURCE)).toBe(0);
  });

  it.skipIf(!HAS_SOX)('decodes AMR exactly as opencore-amr in another program does', async () => {
    execFileSync('sox', [
      media.path('source.wav'),
      '-r',
      '8000',
      '-t',
      'amr-nb',
      media.path('n.amr'),
    ]);
    execFileSync('ffmpeg', [
      '-v',
      'error',
      '-y',
      '-i',
      media.path('n.amr'),
      '-c',
      'copy',
      media.path('n.3gp'),
    ]);
    const raw = execFileSync('sox', ['-t', 'amr-nb', media.path('n.amr'), '-t', 's16', '-']);
    const expected = Float64Array.from(
      new Int16Array(raw.buffer.slice(raw.byteOffset, raw.byteOffset + raw.length)),
      (value) => value / 32_768,
    );
    for (const file of ['n.amr', 'n.3gp']) {
      const { channels, recording } = await readFile(media.path(file));
      expect(recording.sampleRateHz).toBe(8000);
      expect(largestError(channels[0]!, expected), file).toBeLessThan(2e-5);
    }
  });
});
