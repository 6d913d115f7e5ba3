import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Result } from '../../src/analysis/result/index.js';
import { ffmpegDecoder } from '../../src/files/ffmpeg-decoder.js';
import { analyseBytes } from '../support/analyse-bytes.js';
import { expectByEar } from '../support/by-ear.js';
import { shippedRecording } from '../support/judge.js';
import { HAS_FFMPEG, type MediaFolder, mediaFolder } from './media.js';

/*
 * One run in every format that people send: the same mode, and rates within 1 % (this product's own
 * promise). Rejects a reader that resamples wrongly, shifts stretches, or loses short events in a codec,
 * and figures that hang on what the ear does not hear.
 */

const PICTURES = ['-f', 'lavfi', '-i', 'testsrc=s=64x48:r=25', '-shortest', '-c:v', 'mpeg4'];
const FORMATS: [file: string, ...options: string[]][] = [
  ['run.m4a', '-c:a', 'aac', '-b:a', '128k'],
  ['run.mp4', ...PICTURES, '-c:a', 'aac', '-b:a', '128k'],
  ['run.mp3', '-c:a', 'libmp3lame', '-b:a', '128k'],
  ['run.opus', '-c:a', 'libopus', '-b:a', '96k'],
  ['run.flac', '-c:a', 'flac'],
];
/** Runs with an event rate go through every format, the others through the two that take most away. */
const RUNS = [
  ['short-circuit', FORMATS],
  ['pulsed-spray', FORMATS],
  ['globular', FORMATS.filter(([file]) => /m4a|opus/.test(file))],
  ['spray', FORMATS.filter(([file]) => /m4a|opus/.test(file))],
] as const;

const rates = ({ features }: Result): [string, number | null][] =>
  Object.entries(features).filter(([name]) => name.endsWith('RateHz'));

describe.skipIf(!HAS_FFMPEG)('the same run (skipped: no ffmpeg to make the inputs)', () => {
  describe.each(RUNS)('%s', (run, formats) => {
    let media: MediaFolder;
    let wav: Result;
    beforeAll(async () => {
      const { channels, sampleRateHz } = await shippedRecording(`${run}.wav`);
      media = mediaFolder(channels[0]!, sampleRateHz);
      wav = await analyseBytes(media.bytes('source.wav'));
    });
    afterAll(() => media.remove());

    it('is named as WAV', () => {
      expectByEar(wav, run);
      // Without a rate there would be nothing to compare below.
      if (/short|pulsed/.test(run)) expect(wav.features['eventRateHz']).toBeGreaterThan(10);
    });

    it.each(formats)('is the same as %s', async (file, ...options) => {
      media.encode(file, ...options);
      // AAC as the command line decodes it: by the machine first.
      const other = await analyseBytes(media.bytes(file), {}, [ffmpegDecoder()]);
      expectByEar(other, run);
      // A rate stands under the name of its mode as well, where that is named.
      const named = other.mode === wav.mode;
      const compared = rates(wav).filter(([name]) => named || name === 'eventRateHz');
      for (const [name, rate] of compared) {
        const found = (other.features as Record<string, number | null>)[name];
        if (rate === null) expect([name, found]).toEqual([name, null]);
        else expect(Math.abs((found ?? 0) / rate - 1), name).toBeLessThan(0.01);
      }
    });
  });
});
