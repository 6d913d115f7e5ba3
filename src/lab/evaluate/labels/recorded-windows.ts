import { defaultSettings, extractorFor, Pipeline } from '../../../analysis/index.js';
import type { ArcInterval } from '../../../core/index.js';
import type { FeatureSet, FeatureWindow } from '../../../features/index.js';
import { parseModel } from '../../../model/parse/index.js';
import type { Recording } from '../../../recording/index.js';

/** A recording reduced to what fitting needs. */
export interface RecordedWindows {
  featureSet: FeatureSet;
  windows: FeatureWindow[];
  /** Arc intervals in which an arc seems to burn, in the eyes of the shipped model. */
  arcs: ArcInterval[];
}

/** The windows of a recording, and where the shipped model sees an arc. */
export async function recordedWindows(
  recording: Recording,
  loadModel: (featureSet: string) => Promise<unknown>,
): Promise<RecordedWindows> {
  const extractor = extractorFor(recording);
  const model = parseModel(await loadModel(extractor.featureSet.id), extractor.featureSet);
  const pipeline = new Pipeline(extractor, recording.sampleRateHz, model, defaultSettings());
  const found: RecordedWindows = { featureSet: extractor.featureSet, windows: [], arcs: [] };
  const take = (events: ReturnType<Pipeline['push']>): void => {
    for (const event of events) {
      if (event.type === 'window') found.windows.push(event.window);
      if (event.type === 'arc-interval') found.arcs.push(event.outcome.arcInterval);
    }
  };
  for await (const block of recording.blocks()) take(pipeline.push(block.channels));
  take(pipeline.flush());
  return found;
}
