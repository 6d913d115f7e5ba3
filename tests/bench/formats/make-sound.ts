import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createRandom } from '../../../src/core/index.js';
import {
  drawAcoustics,
  drawScenario,
  simulateArc,
  simulateSound,
} from '../../../src/lab/simulate/index.js';
import { writeWav } from '../../../src/recording/index.js';
import { clicksAndSweep } from '../../recordings/media.js';
import type { SoundCase } from './cases.js';

const RATE_HZ = 44_100;
const DRAWN_S = 20;

/** A simulated short-circuiting arc at 44.1 kHz, said again and again, as a 16-bit WAV. */
export async function writeSoundSource(path: string, seconds: number): Promise<void> {
  const random = createRandom('formats');
  const scenario = drawScenario(random, {
    family: 'necking',
    mode: 'short-circuit',
    arcS: DRAWN_S,
  });
  const acoustics = drawAcoustics(random, { family: 'monopole', rateHz: RATE_HZ });
  const sound = simulateSound(simulateArc(scenario), acoustics);
  const peak = sound.reduce((most, value) => Math.max(most, Math.abs(value)), 1e-9);
  const long = Float64Array.from(
    { length: seconds * RATE_HZ },
    (_, i) => (0.7 * sound[i % sound.length]!) / peak,
  );
  writeFileSync(path, await writeWav([long], RATE_HZ));
}

const ffmpeg = (...args: string[]): unknown =>
  execFileSync('ffmpeg', ['-v', 'error', '-nostdin', '-y', ...args]);

/**
 * For AMR, whose encoder takes an even hiss for a pause and sends none of it: the decoder then makes up
 * noise of its own, which no two agree on.
 */
export async function writeSpeechlikeSource(path: string, seconds: number): Promise<void> {
  const piece = clicksAndSweep(4, RATE_HZ);
  const long = Float64Array.from({ length: seconds * RATE_HZ }, (_, i) => piece[i % piece.length]!);
  writeFileSync(path, await writeWav([long], RATE_HZ));
}

/** Encodes the source into the case's file. */
export function encode(folder: string, one: SoundCase): string {
  const source = join(folder, 'source.wav');
  const path = join(folder, one.file);
  if (one.program === 'ffmpeg') {
    ffmpeg('-i', source, '-bitexact', ...one.encoder, path);
    return path;
  }
  const amr = join(folder, 'made.amr');
  execFileSync('sox', [join(folder, 'speechlike.wav'), '-r', '8000', '-t', 'amr-nb', amr]);
  if (one.file.endsWith('.amr')) ffmpeg('-i', amr, '-c', 'copy', path);
  else ffmpeg('-i', amr, ...one.encoder, path);
  return path;
}

/** Writes what the reference program decodes, first channel, as little-endian float32; gives its path. */
export function decodeReference(folder: string, one: SoundCase): string {
  const path = join(folder, 'reference.f32');
  if (one.program === 'sox') {
    const made = join(folder, 'made.amr');
    execFileSync('sox', ['-t', 'amr-nb', made, '-t', 'f32', '-L', path]);
    return path;
  }
  const pick = ['-map', '0:a:0', '-af', 'pan=mono|c0=c0', '-f', 'f32le'];
  ffmpeg('-i', join(folder, one.file), ...pick, path);
  return path;
}
