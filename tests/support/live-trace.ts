import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import {
  defaultSettings,
  extractorFor,
  type LiveFormat,
  LiveStream,
  UNTOLD_ARC_PRIOR,
} from '../../src/analysis/index.js';
import { concat } from '../../src/dsp/index.js';
import { parseModel } from '../../src/model/parse/index.js';
import { bufferSource, openRecording, type Recording } from '../../src/recording/index.js';
import { parseSetup } from '../../src/setup/index.js';

const root = join(import.meta.dirname, '../../fixtures');

/** Samples of a whole signal with its format. */
export interface Trace {
  format: LiveFormat;
  channels: Float64Array[];
}

/** A demonstration recording that comes with the package, as samples. */
export async function demoTrace(name: string): Promise<Trace> {
  const bytes = await readFile(join(root, 'recordings', name));
  const recording: Recording = await openRecording(bufferSource(new Uint8Array(bytes), name));
  const parts: Float64Array[][] = recording.channels.map(() => []);
  for await (const block of recording.blocks())
    for (const [c, samples] of block.channels.entries()) parts[c]!.push(samples.slice());
  return { format: recording, channels: parts.map(concat) };
}

/** Traces one after the other with `pauseS` of nothing between them. */
export function withPauses(traces: readonly Trace[], pauseS: number): Trace {
  const { format } = traces[0]!;
  const pause = new Float64Array(Math.round(pauseS * format.sampleRateHz));
  const channels = format.channels.map((_, c) =>
    concat(traces.flatMap((trace) => [trace.channels[c]!, pause])),
  );
  return { format, channels };
}

/** The shipped model for a feature set. */
export async function shippedModel(id: string): Promise<unknown> {
  return JSON.parse(await readFile(join(root, '../src/model/shipped', `${id}.json`), 'utf8'));
}

/** A live stream of a format with the shipped model and the settings of `watch`, unless another prior of an arc is told. */
export async function liveStream(
  format: LiveFormat,
  offsetS = 0,
  arcPrior = UNTOLD_ARC_PRIOR,
): Promise<LiveStream> {
  const extractor = extractorFor(format, true);
  const model = parseModel(await shippedModel(extractor.featureSet.id), extractor.featureSet);
  const base = {
    settings: { ...defaultSettings(), arcPrior },
    setup: parseSetup({}),
    path: 'test',
    host: 'node',
  };
  return new LiveStream({ extractor, format, model, offsetS, ...base });
}
