import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ArcError } from '../../core/index.js';

/** Lossy round trips on offer; `opus-voice` is tuned for speech, as in calls. */
export const CODECS = ['aac', 'mp3', 'opus', 'opus-voice'] as const;

const ENCODERS: Record<(typeof CODECS)[number], readonly [string[], string]> = {
  aac: [['-c:a', 'aac'], 'm4a'],
  mp3: [['-c:a', 'libmp3lame'], 'mp3'],
  opus: [['-c:a', 'libopus', '-ar', '48000'], 'ogg'],
  'opus-voice': [['-c:a', 'libopus', '-ar', '48000', '-application', 'voip'], 'ogg'],
};

/**
 * Sound through a real lossy encoder and back: same rate and length, encoder delay taken out. `codec` is a
 * name of {@link CODECS} and kilobits per second, e.g. `aac-64`. Needs `ffmpeg` on the path.
 *
 * @throws ArcError `bad-codec` for another name, `codec-failed` when ffmpeg is absent or refuses.
 */
export function codecRoundTrip(samples: Float64Array, rateHz: number, codec: string): Float64Array {
  const [, name, kilobits] = /^([a-z0-9]+(?:-voice)?)-(\d{1,3})$/.exec(codec) ?? [];
  const encoder = ENCODERS[name as (typeof CODECS)[number]];
  if (encoder === undefined) throw badCodec(codec);
  const folder = mkdtempSync(join(tmpdir(), 'arc-transfer-codec-'));
  const file = join(folder, `sound.${encoder[1]}`);
  try {
    const raw = ['-f', 'f32le', '-ac', '1', '-ar', String(rateHz)];
    const input = Buffer.from(Float32Array.from(samples).buffer);
    ffmpeg([...raw, '-i', 'pipe:0', ...encoder[0], '-b:a', `${kilobits}k`, '-y', file], input);
    const back = ffmpeg(['-i', file, ...raw, 'pipe:1'], undefined);
    return sameLength(back, samples.length);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function ffmpeg(args: string[], input: Buffer | undefined): Buffer {
  const done = spawnSync('ffmpeg', ['-v', 'error', '-nostdin', ...args], {
    input: input ?? Buffer.alloc(0),
    maxBuffer: 2 ** 30,
  });
  if (done.error === undefined && done.status === 0) return done.stdout;
  const said = done.error?.message ?? done.stderr.toString().trim();
  throw new ArcError({
    code: 'codec-failed',
    what: `The lossy round trip did not work: ${said}.`,
    expected: 'ffmpeg with AAC, MP3 and Opus encoders on the path',
    todo: 'Install ffmpeg, or leave the codec out.',
  });
}

function sameLength(bytes: Buffer, length: number): Float64Array {
  const out = new Float64Array(length);
  const count = Math.min(length, Math.floor(bytes.length / 4));
  for (let i = 0; i < count; i++) out[i] = Math.max(-1, Math.min(1, bytes.readFloatLE(4 * i)));
  return out;
}

function badCodec(codec: string): ArcError {
  return new ArcError({
    code: 'bad-codec',
    what: `There is no codec "${codec}".`,
    expected: `${CODECS.join(', ')}, a dash and kilobits per second, e.g. aac-64`,
    todo: 'Name one of these.',
  });
}
