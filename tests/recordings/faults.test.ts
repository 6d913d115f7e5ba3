import { execFileSync } from 'node:child_process';
import { appendFileSync, chmodSync, mkdirSync, truncateSync, writeFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isArcError } from '../../src/core/index.js';
import { fileError, openFileSource } from '../../src/files/file-source.js';
import { bufferSource, openRecording } from '../../src/recording/index.js';
import {
  agreementDb,
  clicksAndSweep,
  HAS_AAC,
  HAS_FFMPEG,
  type MediaFolder,
  mediaFolder,
} from './media.js';
import { drain, type WholeRecording } from './read-all.js';
import { chunk, formatChunk, pcmFile, riff, tone } from './wav-bytes.js';

const SOURCE = clicksAndSweep(3);

async function readFile(path: string): Promise<WholeRecording> {
  const source = await openFileSource(path);
  try {
    return await drain(await openRecording(source));
  } finally {
    await source.close();
  }
}

async function codeOf(run: Promise<unknown>): Promise<string> {
  return run.then(
    () => 'no error',
    (error: unknown) => (isArcError(error) ? error.code : `not ours: ${error}`),
  );
}

function readBytes(bytes: Uint8Array): Promise<WholeRecording> {
  return openRecording(bufferSource(bytes, 'case.bin')).then(drain);
}

describe('faults of the file system', () => {
  let media: MediaFolder;
  beforeAll(() => {
    media = mediaFolder(SOURCE);
  });
  afterAll(() => media.remove());

  it('names a missing file, a directory and an empty file', async () => {
    expect(await codeOf(readFile(media.path('none.wav')))).toBe('file-not-found');
    mkdirSync(media.path('folder.wav'));
    expect(await codeOf(readFile(media.path('folder.wav')))).toBe('is-directory');
    writeFileSync(media.path('empty.wav'), '');
    expect(await codeOf(readFile(media.path('empty.wav')))).toBe('empty-file');
  });

  it.skipIf(process.getuid?.() === 0)('names a file without the right to read it', async () => {
    writeFileSync(media.path('shut.wav'), pcmFile());
    chmodSync(media.path('shut.wav'), 0);
    expect(await codeOf(readFile(media.path('shut.wav')))).toBe('no-permission');
  });

  it('turns what the system says into our words', () => {
    expect(fileError('a.wav', { code: 'EACCES' }).code).toBe('no-permission');
    expect(fileError('a.wav', { code: 'EIO' }).message).toContain('EIO');
  });

  it.skipIf(process.platform === 'win32')('does not wait for a named pipe', async () => {
    // Turns down a reader that opens first: nobody ever writes to this pipe.
    execFileSync('mkfifo', [media.path('pipe')]);
    expect(await codeOf(readFile(media.path('pipe')))).toBe('not-a-file');
  });

  it('goes by the content, not the name', async () => {
    writeFileSync(media.path('really-wav.mp3'), pcmFile());
    expect((await readFile(media.path('really-wav.mp3'))).recording.format).toBe('wav');
    writeFileSync(media.path('text.wav'), 'Dear all,\nplease find enclosed nothing.\n');
    expect(await codeOf(readFile(media.path('text.wav')))).toBe('not-a-table');
  });

  it('refuses 4 GB of nothing without reading it', async () => {
    writeFileSync(media.path('sparse.wav'), '');
    truncateSync(media.path('sparse.wav'), 4 * 1024 ** 3);
    const start = performance.now();
    await expect(readFile(media.path('sparse.wav'))).rejects.toThrow(/nothing but zero bytes/);
    expect(performance.now() - start).toBeLessThan(5000);
  });

  it('reads a file that grows up to where it was, and says so', async () => {
    const path = media.path('growing.wav');
    writeFileSync(
      path,
      riff([
        formatChunk({ tag: 1, bits: 16 }),
        chunk('data', new Uint8Array(200_000), { size: 0 }),
      ]),
    );
    const source = await openFileSource(path);
    const recording = await openRecording(source);
    appendFileSync(path, new Uint8Array(50_000));
    const { channels, noteCodes } = await drain(recording);
    await source.close();
    expect(channels[0]).toHaveLength(100_000);
    expect(noteCodes).toEqual(['wav-size-missing', 'file-growing']);
  });

  it('says when a file shrinks under its hands', async () => {
    const path = media.path('shrinking.wav');
    writeFileSync(path, pcmFile(tone(200_000)));
    const source = await openFileSource(path);
    const recording = await openRecording(source);
    truncateSync(path, 1000);
    expect(await codeOf(drain(recording))).toBe('file-shrank');
    await source.close();
  });
});

describe.skipIf(!HAS_FFMPEG)(
  'faults of compressed files (skipped: no ffmpeg to make the inputs)',
  () => {
    const readable = (files: string[]): string[] =>
      files.filter((file) => HAS_AAC || !/\.(m4a|aac)$/.test(file));
    let media: MediaFolder;
    beforeAll(() => {
      media = mediaFolder(SOURCE);
      const aac = ['-c:a', 'aac', '-aac_pns', '0'];
      media.encode('end.m4a', ...aac);
      media.encode('fast.m4a', ...aac, '-movflags', '+faststart');
      media.encode('a.aac', ...aac);
      media.encode('a.mp3', '-c:a', 'libmp3lame');
      media.encode('a.ogg', '-c:a', 'libvorbis');
      media.encode('a.opus', '-c:a', 'libopus');
      media.encode('a.webm', '-c:a', 'libopus');
      media.encode('a.flac', '-c:a', 'flac');
      media.encode('in-ogg.ogg', '-c:a', 'flac');
      media.encode(
        'mute.mp4',
        '-f',
        'lavfi',
        '-i',
        'testsrc=s=64x48:r=25:d=1',
        '-map',
        '1:v',
        '-c:v',
        'mpeg4',
      );
      const key = '00112233445566778899aabbccddeeff';
      media.encode(
        'locked.mp4',
        ...aac,
        '-encryption_scheme',
        'cenc-aes-ctr',
        '-encryption_key',
        key,
        '-encryption_kid',
        key,
      );
    });
    afterAll(() => media.remove());

    it.each([
      ['mute.mp4', 'no-sound-track'],
      ['locked.mp4', 'encrypted'],
      ['in-ogg.ogg', 'unknown-codec'],
    ])('refuses %s as %s', async (file, code) => {
      expect(await codeOf(readBytes(media.bytes(file)))).toBe(code);
    });

    it('says that a film without its index was cut off before it was finalised', async () => {
      const bytes = media.bytes('end.m4a');
      expect(await codeOf(readBytes(bytes.slice(0, bytes.length * 0.55)))).toBe(
        'unfinished-recording',
      );
    });

    // Turns down a reader that gives up, or that fills the rest with silence or noise.
    it.each(readable(['fast.m4a', 'a.aac', 'a.mp3', 'a.ogg', 'a.opus', 'a.webm', 'a.flac']))(
      'reads the first half of %s as it is in the whole',
      async (file) => {
        const bytes = media.bytes(file);
        const whole = await readBytes(bytes);
        const half = await readBytes(bytes.slice(0, Math.floor(bytes.length / 2)));
        const rate = whole.recording.sampleRateHz;
        const seconds = half.channels[0]!.length / rate;
        // Ogg pages are about a second long, and the one that was cut is lost.
        expect(seconds).toBeGreaterThan(file === 'a.ogg' ? 0.5 : 0.9);
        expect(seconds).toBeLessThan(2);
        // The last 0.15 s may hold the packet that was cut, which becomes silence.
        const sure = half.channels[0]!.slice(0, -0.15 * rate);
        expect(agreementDb(sure, whole.channels[0]!)).toBe(Number.POSITIVE_INFINITY);
      },
    );

    it.skipIf(!HAS_AAC)('keeps the time behind damaged packets, and says how many', async () => {
      const bytes = media.bytes('fast.m4a');
      const whole = await readBytes(bytes);
      // Past the index, which stands in front.
      for (let at = Math.floor(bytes.length * 0.5); at < bytes.length * 0.55; at++)
        bytes[at]! ^= 0x5a;
      const { channels, noteCodes } = await readBytes(bytes);
      expect(noteCodes).toContain('damaged-packets');
      expect(channels[0]!.length).toBe(whole.channels[0]!.length);
      const late = Math.floor(channels[0]!.length * 0.75);
      // Turns down one that drops the packet: everything behind would be early. Not exact, because AAC
      // carries state over; 40 dB is far above what a shift by one sample would leave.
      expect(agreementDb(channels[0]!, whole.channels[0]!, late)).toBeGreaterThan(40);
    });

    it.each(readable(['a.flac', 'a.aac']))(
      'says that %s is read only up to its damage',
      async (file) => {
        const bytes = media.bytes(file);
        for (let at = Math.floor(bytes.length * 0.5); at < bytes.length * 0.55; at++)
          bytes[at]! ^= 0x5a;
        const { channels, noteCodes } = await readBytes(bytes);
        if (channels[0]!.length < 2.8 * 44_100) expect(noteCodes).toContain('truncated');
        else expect(noteCodes).toContain('damaged-packets');
      },
    );

    it.each(readable(['a.webm', 'a.aac', 'a.mp3', 'a.ogg', 'a.flac', 'fast.m4a']))(
      'ends on %s whose second half is zeros, as a recorder leaves it that lost power',
      async (file) => {
        const bytes = media.bytes(file);
        bytes.fill(0, bytes.length / 2);
        const { recording, channels } = await readBytes(bytes);
        expect(channels[0]!.length / recording.sampleRateHz).toBeGreaterThan(0.9);
      },
    );
  },
);
