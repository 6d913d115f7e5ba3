import type { ArcInterval, Segment } from '../../core/index.js';
import type { FeatureExtractor } from '../../features/index.js';
import { decide, type JudgedIntervals, RunEvidence, type Verdict } from '../../judge/index.js';
import { type Classifier, classifierFor, type Model } from '../../model/index.js';
import type { Setup } from '../../setup/index.js';
import { buildResult } from '../analyse.js';
import { type IntervalEvent, Pipeline, type PipelineEvent } from '../pipeline.js';
import type { Result } from '../result/index.js';
import type { Settings } from '../settings.js';
import { type BeliefEvent, LiveBeliefs } from './live-beliefs.js';
import type { LiveFormat } from './live-format.js';

/** What an endless signal says of itself. Times are s from the first sample of the stream. */
export type LiveEvent =
  | { type: 'arc-start' | 'arc-stop'; timeS: number; open: boolean }
  | BeliefEvent
  /** A finished weld with its own result document. */
  | { type: 'weld'; arcInterval: ArcInterval; segments: Segment[]; result: Result }
  /** What had been taken for an arc turned out to be none. */
  | { type: 'not-a-weld'; arcInterval: ArcInterval };

export interface LiveOptions {
  /** As {@link extractorFor} makes it with `live`. */
  extractor: FeatureExtractor;
  format: LiveFormat;
  model: Model;
  settings: Settings;
  setup: Setup;
  /** How the source is called in results. */
  path: string;
  host: string;
  /** Time of the first sample within the stream, s: not 0 after a gap. */
  offsetS: number;
}

/**
 * A signal without an end, through the same pipeline as a file: an arc at a time becomes a result of its own
 * and is then forgotten, so that memory does not grow. For any split of the samples the segments are those
 * of the whole as one file.
 */
export class LiveStream {
  readonly #options: LiveOptions;
  readonly #pipeline: Pipeline;
  readonly #classifier: Classifier;
  readonly #beliefs: LiveBeliefs;

  constructor(options: LiveOptions) {
    const { extractor, format, model, settings } = options;
    this.#options = options;
    this.#classifier = classifierFor(model);
    this.#beliefs = new LiveBeliefs(extractor, settings);
    this.#pipeline = new Pipeline(extractor, format.sampleRateHz, model, settings, false);
  }

  /** Stream time up to which samples have come, s. */
  get timeS(): number {
    return this.#options.offsetS + this.#pipeline.durationS;
  }

  push(channels: readonly Float64Array[]): LiveEvent[] {
    return this.#pipeline.push(channels).flatMap((event) => this.#take(event));
  }

  /** The signal ends here; an arc that still burns becomes a weld with an open end. */
  flush(): LiveEvent[] {
    return this.#pipeline.flush().flatMap((event) => this.#take(event));
  }

  #take(event: PipelineEvent): LiveEvent[] {
    const { offsetS } = this.#options;
    if (event.type === 'arc-interval') return [this.#finished(event)];
    const beliefs = this.#beliefs
      .take(event)
      .map((one): LiveEvent => ({ ...one, timeS: offsetS + one.timeS }));
    if (event.type === 'window' || event.type === 'short-window') return beliefs;
    const { type, timeS, open } = event;
    return [{ type, timeS: offsetS + timeS, open }, ...beliefs];
  }

  #finished(event: IntervalEvent): LiveEvent {
    const arcInterval = shift(event.outcome.arcInterval, this.#options.offsetS);
    if (!event.kept) return { type: 'not-a-weld', arcInterval };
    const result = this.#result(event);
    return { type: 'weld', arcInterval, segments: result.segments, result };
  }

  #result({ outcome, accepted, score, summary }: IntervalEvent): Result {
    const { format, model, settings, offsetS, extractor } = this.#options;
    const { arcInterval, segments, evidence } = outcome;
    const one = { arcIntervals: [arcInterval], segments, evidence, bestScore: score };
    const none = noArcIntervals(model.featureSet.features.length);
    const [good, doubtful] = accepted ? [one, none] : [none, one];
    const verdict = decide(good, doubtful, this.#classifier, extractor.featureSet, settings);
    const view = {
      verdict: () => shifted(verdict, offsetS),
      summary: () => summary ?? this.#pipeline.summary(),
      accepted: good,
      durationS: this.timeS,
    };
    const blocks = async function* () {};
    return buildResult({ ...format, blocks }, view, model, { ...this.#options, sha256: null });
  }
}

function noArcIntervals(features: number): JudgedIntervals {
  return {
    arcIntervals: [],
    segments: [],
    evidence: new RunEvidence(features),
    bestScore: Number.NEGATIVE_INFINITY,
  };
}

function shift<T extends { startS: number; endS: number }>(one: T, byS: number): T {
  return { ...one, startS: one.startS + byS, endS: one.endS + byS };
}

function shifted(verdict: Verdict, byS: number): Verdict {
  return {
    ...verdict,
    arcStretches: verdict.arcStretches.map((one) => shift(one, byS)),
    segments: verdict.segments.map((one) => shift(one, byS)),
  };
}
