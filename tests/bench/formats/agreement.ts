import { closeSync, openSync, readSync, statSync } from 'node:fs';
import { openFileSource } from '../../../src/files/file-source.js';
import { openRecording } from '../../../src/recording/index.js';
import { lagSamples } from '../../recordings/media.js';
import { CURRENT, VOLTAGE } from './make-logs.js';
import { readOptions } from './measure.js';

/** How a decoded sound stands to the reference's decode of the same file. */
export interface SoundAgreement {
  /** Power of the reference over power of the difference, dB; null when equal bit for bit. */
  snrDb: number | null;
  /** Samples by which ours comes later. */
  lagSamples: number;
}

const LAG_WINDOW = 30_000;

/** Compares samples `from` up to `until`, block by block, so that a long file needs no memory. */
export async function compareSound(
  path: string,
  referencePath: string,
  from: number,
  until = Number.POSITIVE_INFINITY,
): Promise<SoundAgreement> {
  const reference = referenceFile(referencePath);
  const head: number[] = [];
  const power = { reference: 0, difference: 0 };
  const source = await openFileSource(path);
  for await (const { channels, startSample } of (await openRecording(source)).blocks()) {
    const ours = channels[0]!;
    const theirs = reference.read(startSample, ours.length);
    for (let i = 0; i < ours.length; i++) {
      if (head.length < LAG_WINDOW) head.push(ours[i]!);
      const at = startSample + i;
      if (at < from || at >= until || i >= theirs.length) continue;
      power.reference += theirs[i]! ** 2;
      power.difference += (ours[i]! - theirs[i]!) ** 2;
    }
  }
  await source.close();
  const start = Float64Array.from(reference.read(0, LAG_WINDOW));
  const lag = lagSamples(Float64Array.from(head), start);
  reference.close();
  const snrDb = power.difference === 0 ? null : 10 * Math.log10(power.reference / power.difference);
  return { snrDb, lagSamples: lag };
}

function referenceFile(path: string) {
  const file = openSync(path, 'r');
  const samples = statSync(path).size / 4;
  return {
    read(at: number, length: number): Float32Array {
      const out = new Float32Array(Math.max(0, Math.min(length, samples - at)));
      readSync(file, new Uint8Array(out.buffer), 0, out.byteLength, 4 * at);
      return out;
    },
    close: () => closeSync(file),
  };
}

/** Largest relative difference of voltage and current from what was written; Infinity when rows are missing. */
export async function compareLog(path: string, rows: number): Promise<number> {
  const source = await openFileSource(path);
  const recording = await openRecording(source, readOptions(path));
  const short = path.endsWith('short.csv');
  let largest = 0;
  let samples = 0;
  for await (const { channels, startSample } of recording.blocks()) {
    for (const [c, formula] of [VOLTAGE, CURRENT].entries()) {
      for (const [i, value] of channels[c]!.entries()) {
        const exact = formula(startSample + i);
        const expected = short ? Number(exact.toFixed(4)) : exact;
        largest = Math.max(largest, Math.abs(value - expected) / expected);
      }
    }
    samples += channels[0]!.length;
  }
  await source.close();
  return samples === rows ? largest : Number.POSITIVE_INFINITY;
}
