import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pcmFile } from './wav-bytes.js';

/** A name in a variable, since it need not be there. */
const AAC = '@audio/decode-aac';

/** True when the program can be started. */
export function hasProgram(name: string, flag: string): boolean {
  return spawnSync(name, [flag], { stdio: 'ignore' }).status === 0;
}

export const HAS_FFMPEG = hasProgram('ffmpeg', '-version');
/** True where the decoder for AAC was installed, which comes with nothing: `npm install --no-save @audio/decode-aac`. */
export const HAS_AAC = await import(/* @vite-ignore */ AAC).then(
  () => true,
  () => false,
);
export const HAS_SOX = hasProgram('sox', '--version');

/**
 * Four seconds of clicks 90 times a second and a rising tone at 44.1 kHz: sharp in time, so that a shift of one
 * sample shows, and made by formula, so that it is the same everywhere.
 */
export function clicksAndSweep(seconds = 4, rateHz = 44_100): Float64Array {
  let noise = 12_345;
  return Float64Array.from({ length: Math.round(seconds * rateHz) }, (_, i) => {
    const t = i / rateHz;
    noise = (Math.imul(noise, 1_103_515_245) + 12_345) >>> 0;
    const sinceClick = (t * 90) % 1;
    const click = Math.exp(-sinceClick * 40) * (noise / 4_294_967_296 - 0.5) * 0.8;
    return click + 0.25 * Math.sin(2 * Math.PI * (300 + 400 * t) * t);
  });
}

/** A folder for made media with the calls that fill it. */
export interface MediaFolder {
  path(name: string): string;
  bytes(name: string): Uint8Array;
  /** Encodes the source WAV with ffmpeg. */
  encode(name: string, ...options: string[]): string;
  /** All samples of the first sound channel as ffmpeg decodes them. */
  reference(name: string): Float64Array;
  remove(): void;
}

export function mediaFolder(source: Float64Array, rateHz = 44_100): MediaFolder {
  const folder = mkdtempSync(join(tmpdir(), 'arc-media-'));
  const path = (name: string): string => join(folder, name);
  writeFileSync(path('source.wav'), pcmFile(source, 's16', rateHz));
  return {
    path,
    bytes: (name) => new Uint8Array(readFileSync(path(name))),
    encode(name, ...options) {
      const input = ['-v', 'error', '-y', '-i', path('source.wav')];
      execFileSync('ffmpeg', [...input, '-bitexact', ...options, path(name)]);
      return path(name);
    },
    reference(name) {
      const pick = ['-map', '0:a:0', '-af', 'pan=mono|c0=c0', '-f', 'f64le', '-'];
      const raw = execFileSync('ffmpeg', ['-v', 'error', '-i', path(name), ...pick], {
        maxBuffer: 2 ** 28,
      });
      return new Float64Array(raw.buffer.slice(raw.byteOffset, raw.byteOffset + raw.length));
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** Signal-to-difference ratio in dB over the common part from `from` on; Infinity when equal. */
export function agreementDb(actual: Float64Array, expected: Float64Array, from = 0): number {
  const end = Math.min(actual.length, expected.length);
  let power = 0;
  let difference = 0;
  for (let i = from; i < end; i++) {
    power += expected[i]! ** 2;
    difference += (actual[i]! - expected[i]!) ** 2;
  }
  return 10 * Math.log10(power / difference);
}

/** Shift of `actual` against `expected` in samples, by the largest product over ±`reach`. */
export function lagSamples(actual: Float64Array, expected: Float64Array, reach = 2500): number {
  const end = Math.min(actual.length, expected.length) - reach;
  let best = 0;
  let largest = Number.NEGATIVE_INFINITY;
  for (let lag = -reach; lag <= reach; lag++) {
    let sum = 0;
    for (let i = reach; i < Math.min(end, reach + 6000); i++)
      sum += actual[i + lag]! * expected[i]!;
    if (sum > largest) {
      largest = sum;
      best = lag;
    }
  }
  return best;
}
