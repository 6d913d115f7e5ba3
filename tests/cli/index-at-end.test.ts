import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Result, resultSchema } from '../../src/analysis/result/index.js';
import { HAS_FFMPEG, type MediaFolder, mediaFolder } from '../recordings/media.js';
import { shippedRecording } from '../support/judge.js';
import { runCli } from '../support/run-cli.js';

const PICTURES = ['-f', 'lavfi', '-i', 'testsrc=s=64x48:r=25', '-shortest', '-c:v', 'mpeg4'];
const read = (text: string): Result => resultSchema.parse(JSON.parse(text));

/** Types of the boxes at the top of an ISO media file, in order (ISO/IEC 14496-12: 32-bit size, type). */
function topBoxes(bytes: Uint8Array): string[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  const types: string[] = [];
  for (let at = 0; at + 8 <= bytes.length; at += Math.max(8, view.getUint32(at)))
    types.push(String.fromCharCode(...bytes.subarray(at + 4, at + 8)));
  return types;
}

describe.skipIf(!HAS_FFMPEG)('a film whose index stands at its end (skipped: no ffmpeg)', () => {
  let media: MediaFolder;
  let film: string;
  beforeAll(async () => {
    const { channels, sampleRateHz } = await shippedRecording('short-circuit.wav');
    media = mediaFolder(channels[0]!, sampleRateHz);
    film = media.encode('film.mp4', ...PICTURES, '-c:a', 'aac', '-b:a', '128k');
  });
  afterAll(() => media.remove());

  // Rejects a reader that wants the index first, and one that reads a pipe only forwards.
  it('is read from a file, and the same from a pipe', async () => {
    const boxes = topBoxes(media.bytes('film.mp4'));
    expect(boxes.indexOf('moov')).toBeGreaterThan(boxes.indexOf('mdat'));
    const file = await runCli(['classify', film, '--json']);
    const pipe = await runCli(['classify', '-', '--json'], { stdin: readFileSync(film) });
    expect([file.status, pipe.status]).toEqual([0, 0]);
    const [fromFile, fromPipe] = [read(file.stdout), read(pipe.stdout)];
    expect([fromFile.status, fromFile.mode]).toEqual(['ok', 'short-circuit']);
    expect({ ...fromPipe, source: { ...fromPipe.source, path: film } }).toEqual(fromFile);
  });

  it('that a pipe breaks off before is one clear error, and no copy stays behind', async () => {
    const bytes = readFileSync(film);
    const folder = join(film, '..');
    const run = await runCli(['classify', '-', '--json'], {
      stdin: bytes.subarray(0, bytes.length / 2),
      env: { TMPDIR: folder },
    });
    expect(run.status).toBe(1);
    expect(read(run.stdout).error?.code).toBe('unfinished-recording');
    expect(readdirSync(folder).sort()).toEqual(['film.mp4', 'source.wav']);
  });
});
