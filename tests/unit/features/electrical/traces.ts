import { createRandom } from '../../../../src/core/index.js';
import { createElectricalExtractor } from '../../../../src/features/electrical/index.js';
import type { ExtractorEvent } from '../../../../src/features/vector.js';

/** Samples of a function of time in seconds. */
export function trace(
  seconds: number,
  rateHz: number,
  of: (timeS: number) => number,
): Float64Array {
  return Float64Array.from({ length: Math.round(seconds * rateHz) }, (_, n) => of(n / rateHz));
}

/** Rectangular dips: `periodS` from start to start, each `shortS` long, plus Gaussian noise. */
export function dips(p: {
  seconds: number;
  rateHz: number;
  periodS: number;
  shortS: number;
  arcV?: number;
  shortV?: number;
  noiseV?: number;
  seed?: number;
}): Float64Array {
  const random = createRandom(p.seed ?? 1);
  const period = Math.round(p.periodS * p.rateHz);
  const short = Math.round(p.shortS * p.rateHz);
  return Float64Array.from({ length: Math.round(p.seconds * p.rateHz) }, (_, n) => {
    // The first short starts half a period in, so that no short touches the edge.
    const inShort = (n + Math.round(period / 2)) % period < short && n >= period / 2;
    const level = inShort ? (p.shortV ?? 4) : (p.arcV ?? 20);
    return level + (p.noiseV ?? 0) * random.normal();
  });
}

/** Everything a feature extractor says about a trace pushed in one go. */
export function runLane(rateHz: number, voltage: Float64Array | null, current?: Float64Array) {
  const extractor = createElectricalExtractor({
    sampleRateHz: rateHz,
    hasVoltage: voltage !== null,
    hasCurrent: current !== undefined,
  });
  const channels = [voltage, current].filter((channel) => channel != null);
  const events: ExtractorEvent[] = [...extractor.push(channels), ...extractor.flush()];
  const windows = events.flatMap((event) => (event.type === 'window' ? [event.window] : []));
  const column = (id: string) => {
    const at = extractor.featureSet.features.findIndex((feature) => feature.id === id);
    return windows.map((window) => window.values[at]!);
  };
  return { extractor, events, windows, column, summary: extractor.summary() };
}
