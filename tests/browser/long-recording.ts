import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createRandom } from '../../src/core/index.js';
import { blobSource, openRecording, writeWav } from '../../src/recording/index.js';

/** Steady arc in every one of the recordings, s: past the ignition, before the arc ends. */
const STEADY = [1.2, 4.2] as const;
const OVERLAP_S = 0.05;
const TIMES = 40;
/** The room before and after a whole run, s; before its arc every recording is quiet for so long. */
const BEFORE_S = 15;
const AFTER_S = 60;
const QUIET_S = 0.1;

/**
 * A demonstration recording whose steady part goes on for two minutes, so that a microphone that plays it
 * never begins again while a test listens. The joints overlap at constant power, so that none is a click.
 * At the rate of the file, which is the rate of the browser's make-believe device: nothing is resampled.
 */
export async function longRecording(name: string, folder: string): Promise<string> {
  const { samples, rateHz } = await read(name);
  const [from, to] = STEADY.map((s) => Math.round(s * rateHz)) as [number, number];
  const steady = goOn(samples.subarray(from, to), Math.round(OVERLAP_S * rateHz));
  const parts = [samples.subarray(0, from), steady, samples.subarray(to)];
  return write(join(folder, `${name}-long.wav`), parts, rateHz);
}

/**
 * A whole run: a room, the demonstration recording from ignition to end, the room again. Sound that neither
 * begins nor ends may be rain or a fire to the judgement, so a test that wants a mode must let it hear both;
 * the room before is long enough for a busy machine to begin to record in it.
 */
export async function wholeRun(name: string, folder: string): Promise<string> {
  const { samples, rateHz } = await read(name);
  const parts = [room(samples, rateHz, BEFORE_S), samples, room(samples, rateHz, AFTER_S)];
  return write(join(folder, `${name}-run.wav`), parts, rateHz);
}

/** Noise as loud as the first moments of the recording, before its arc; the same each time. */
function room(samples: Float64Array, rateHz: number, seconds: number): Float64Array {
  const quiet = samples.subarray(0, Math.round(QUIET_S * rateHz));
  const rms = Math.sqrt(quiet.reduce((sum, x) => sum + x * x, 0) / quiet.length);
  const random = createRandom('the room of a browser test');
  return Float64Array.from({ length: Math.round(seconds * rateHz) }, () => rms * random.normal());
}

async function write(file: string, parts: Float64Array[], rateHz: number): Promise<string> {
  const whole = new Float64Array(parts.reduce((sum, one) => sum + one.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  writeFileSync(file, await writeWav([whole], rateHz));
  return file;
}

async function read(name: string): Promise<{ samples: Float64Array; rateHz: number }> {
  const source = blobSource(new Blob([readFileSync(`fixtures/recordings/${name}.wav`)]), name);
  const recording = await openRecording(source);
  const samples: number[] = [];
  for await (const { channels } of recording.blocks())
    for (const value of channels[0] ?? []) samples.push(value);
  return { samples: Float64Array.from(samples), rateHz: recording.sampleRateHz };
}

function goOn(part: Float64Array, overlap: number): Float64Array {
  const step = part.length - overlap;
  const long = new Float64Array(step * TIMES + overlap);
  for (let k = 0; k < TIMES; k++)
    part.forEach((value, at) => {
      const fadesIn = k > 0 ? Math.min(1, (at + 0.5) / overlap) : 1;
      const fadesOut = k < TIMES - 1 ? Math.min(1, (part.length - at - 0.5) / overlap) : 1;
      const i = k * step + at;
      long[i] = (long[i] ?? 0) + value * Math.sqrt(fadesIn * fadesOut);
    });
  return long;
}
