import type { ExtractorSummary, FeatureExtractor, RunFigures } from '../extractor.js';
import type { ExtractorEvent, FeatureSet } from '../vector.js';

/** Figures that means over 3 to 20 ms still show; what is counted or lasts a moment is not there. */
const SHOWN = [
  'steadyTimeS',
  'meanVoltageV',
  'meanCurrentA',
  'powerW',
  'slowSwingShare',
  'slowSwingPeriodS',
] as const;

const OF_HELD_SAMPLES: readonly string[] = [
  'sample-rate-low',
  'voltage-clipped',
  'current-clipped',
];

/**
 * Feature extractor for the logs of slow loggers, 50 to 400 samples a second: each sample is held `times` times, so
 * that arc intervals, means and power come out as of a faster log. No short, drop or pulse is in such a log: their figures
 * are left out, and nothing is said of what disturbed the arc. Times are seconds, as ever.
 */
export class HeldSamples implements FeatureExtractor {
  readonly featureSet: FeatureSet;
  readonly windowS: number;
  readonly hopS: number;
  readonly shortWindowHopS: number | null;
  readonly #inner: FeatureExtractor;
  readonly #times: number;

  constructor(inner: FeatureExtractor, times: number) {
    this.#inner = inner;
    this.#times = times;
    this.featureSet = inner.featureSet;
    this.windowS = inner.windowS;
    this.hopS = inner.hopS;
    this.shortWindowHopS = inner.shortWindowHopS;
  }

  push(channels: readonly Float64Array[]): ExtractorEvent[] {
    return this.#inner.push(channels.map((channel) => held(channel, this.#times)));
  }

  flush(): ExtractorEvent[] {
    return this.#inner.flush();
  }

  summary(): ExtractorSummary {
    return shown(this.#inner.summary());
  }

  takeSummary(): ExtractorSummary | undefined {
    const summary = this.#inner.takeSummary?.();
    return summary && shown(summary);
  }
}

function held(values: Float64Array, times: number): Float64Array {
  const out = new Float64Array(values.length * times);
  for (let i = 0; i < values.length; i++) out.fill(values[i]!, i * times, (i + 1) * times);
  return out;
}

function shown(summary: ExtractorSummary): ExtractorSummary {
  const figures: RunFigures = Object.fromEntries(
    Object.keys(summary.figures).map((name) => [name, null]),
  );
  for (const name of SHOWN)
    if (name in summary.figures) figures[name] = summary.figures[name] ?? null;
  const { notes } = summary;
  // Held samples rest at their value, and their rate is not that of the log: both would be said of the log.
  const quality = summary.quality.filter(({ code }) => !OF_HELD_SAMPLES.includes(code));
  // What a source does to its current in a period is not to be seen.
  return { figures, quality, notes, sourceProgramme: 'unknown' };
}
