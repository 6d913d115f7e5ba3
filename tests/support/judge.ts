import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { defaultSettings, extractorFor, Pipeline } from '../../src/analysis/index.js';
import { concat } from '../../src/dsp/index.js';
import { parseModel } from '../../src/model/parse/index.js';
import { bufferSource, openRecording } from '../../src/recording/index.js';

const ROOT = join(import.meta.dirname, '../..');

/** What channels hold, as a recording would say it. */
export type Kind = 'sound' | 'voltage' | 'voltage-current';

export const CHANNELS = {
  sound: [{ name: 'channel 1', quantity: 'sound', unit: 'full-scale' }],
  voltage: [{ name: 'voltage', quantity: 'voltage', unit: 'V' }],
  'voltage-current': [
    { name: 'voltage', quantity: 'voltage', unit: 'V' },
    { name: 'current', quantity: 'current', unit: 'A' },
  ],
} as const;

/** A pipeline with the shipped model, before any sample. */
export function shippedPipeline(kind: Kind, sampleRateHz: number): Pipeline {
  const extractor = extractorFor({
    kind: kind === 'sound' ? 'sound' : 'electrical',
    sampleRateHz,
    channels: [...CHANNELS[kind]],
  });
  const file = join(ROOT, 'src/model/shipped', `${extractor.featureSet.id}.json`);
  const model = parseModel(JSON.parse(readFileSync(file, 'utf8')), extractor.featureSet);
  return new Pipeline(extractor, sampleRateHz, model, defaultSettings());
}

/** Channels through the whole pipeline. */
export function judge(kind: Kind, sampleRateHz: number, channels: readonly Float64Array[]) {
  const pipeline = shippedPipeline(kind, sampleRateHz);
  pipeline.push(channels);
  pipeline.flush();
  return { pipeline, verdict: pipeline.verdict() };
}

/** Samples of a shipped recording. */
export async function shippedRecording(name: string) {
  const bytes = new Uint8Array(readFileSync(join(ROOT, 'fixtures/recordings', name)));
  const recording = await openRecording(bufferSource(bytes, name));
  const parts: Float64Array[][] = recording.channels.map(() => []);
  for await (const block of recording.blocks())
    for (const [i, channel] of block.channels.entries()) parts[i]!.push(channel.slice());
  return { sampleRateHz: recording.sampleRateHz, channels: parts.map(concat) };
}
