import { Classifier, type Model } from '../classify/index.js';
import type { ArcStretch, Mode, Segment } from '../core/index.js';
import type { Lane } from '../features/index.js';
import type { Setup } from '../procedure/index.js';
import type { Result } from '../result/index.js';
import { decide, type JudgedStretches, RunEvidence, type Verdict } from '../verdict/index.js';
import { buildResult } from './analyse.js';
import type { LiveFormat } from './live-format.js';
import { BY_NEWEST, type LiveBelief, LiveMode, type LiveModes } from './live-mode.js';
import { liveRateHz } from './live-rate.js';
import { Pipeline, type PipelineEvent, type StretchEvent } from './pipeline.js';
import type { Settings } from './settings.js';

/** What an endless signal says of itself. Times are s from the first sample of the stream. */
export type LiveEvent =
  | { type: 'arc-start' | 'arc-stop'; timeS: number; open: boolean }
  /**
   * What is believed at `timeS`, the end of what was heard; a few times a second while an arc burns. `rateHz` is
   * the rate of events (shorts, drops or pulses); null where none is clear in the mode that is named.
   */
  | { type: 'now'; timeS: number; modes: LiveModes; rateHz: number | null }
  /**
   * A whole window of a burning arc that ends at `timeS`, `hopS` after the one before: by it a departure is
   * judged. It follows the `now` of the same time; its `belief` is slower and surer. `steady` is false within
   * the start of the arc.
   */
  | {
      type: 'window';
      timeS: number;
      hopS: number;
      belief: LiveBelief;
      steady: boolean;
      rateHz: number | null;
    }
  /** A finished weld with its own result document. */
  | { type: 'weld'; stretch: ArcStretch; segments: Segment[]; result: Result }
  /** What had been taken for an arc turned out to be none. */
  | { type: 'not-a-weld'; stretch: ArcStretch };

export interface LiveOptions {
  /** As {@link laneFor} makes it with `live`. */
  lane: Lane;
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

/** Arc score (log-odds) below which a half second counts as without an arc: one in 200 of drawn arcs (own measurement). */
const OUT_SCORE = -1;

/**
 * A signal without an end, through the same pipeline as a file: an arc at a time becomes a result of its own
 * and is then forgotten, so that memory does not grow. For any split of the samples the segments are those
 * of the whole as one file.
 */
export class LiveStream {
  readonly #options: LiveOptions;
  readonly #pipeline: Pipeline;
  readonly #classifier: Classifier;
  /** By windows, and where the lane gives them by newest half seconds; null while no arc burns. */
  #byWindows: LiveMode | null = null;
  #byNewest: LiveMode | null = null;
  /** What the last whole window was taken for, and its rate of events. */
  #lastWindow: { mode: Mode | null; rateHz: number | null } | null = null;
  #steadyFromS = 0;

  constructor(options: LiveOptions) {
    const { lane, format, model, settings } = options;
    this.#options = options;
    this.#classifier = new Classifier(model);
    this.#pipeline = new Pipeline(lane, format.sampleRateHz, model, settings, false);
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
    const { offsetS, settings } = this.#options;
    if (event.type === 'stretch') return [this.#finished(event)];
    if (event.type === 'window') return this.#window(event);
    if (event.type === 'newest') return this.#newest(event);
    const { timeS, open, type } = event;
    if (type === 'arc-start') {
      const { hopS, newestHopS } = this.#options.lane;
      this.#byWindows = new LiveMode(hopS, settings.meanDwellS);
      this.#byNewest =
        newestHopS === null ? null : new LiveMode(newestHopS, settings.meanDwellS, BY_NEWEST);
      this.#steadyFromS = timeS + (open ? 0 : settings.ignitionMaskS);
    } else this.#byWindows = this.#byNewest = null;
    this.#lastWindow = null;
    return [{ type, timeS: offsetS + timeS, open }];
  }

  #window({ window, judgement }: PipelineEvent & { type: 'window' }): LiveEvent[] {
    if (!this.#byWindows) return [];
    const { offsetS, lane } = this.#options;
    const { startS, endS } = window;
    const modes = this.#byWindows.push(startS, endS, judgement.probabilities);
    const belief = modes.provisional;
    const timeS = offsetS + endS;
    const rateHz = liveRateHz(window, lane.featureSet, belief.mode);
    this.#lastWindow = { mode: belief.mode, rateHz };
    const steady = startS >= this.#steadyFromS - 1e-9;
    const events: LiveEvent[] = lane.newestHopS ? [] : [{ type: 'now', timeS, modes, rateHz }];
    return [...events, { type: 'window', timeS, hopS: lane.hopS, belief, steady, rateHz }];
  }

  #newest(event: PipelineEvent & { type: 'newest' }): LiveEvent[] {
    const { startS, endS, arcScore, probabilities } = event;
    // The end of an arc is noticed late; what sounds like none until then says nothing of the mode.
    if (!this.#byNewest || arcScore < OUT_SCORE) return [];
    const modes = this.#byNewest.push(startS, endS, probabilities);
    const timeS = this.#options.offsetS + endS;
    // A window still holds what was before: its rate is that of the mode it is taken for.
    const same = this.#lastWindow?.mode === modes.provisional.mode;
    return [{ type: 'now', timeS, modes, rateHz: same ? this.#lastWindow!.rateHz : null }];
  }

  #finished(event: StretchEvent): LiveEvent {
    const stretch = shift(event.outcome.stretch, this.#options.offsetS);
    if (!event.kept) return { type: 'not-a-weld', stretch };
    const result = this.#result(event);
    return { type: 'weld', stretch, segments: result.segments, result };
  }

  #result({ outcome, accepted, score, summary }: StretchEvent): Result {
    const { format, model, settings, offsetS, lane } = this.#options;
    const { stretch, segments, evidence } = outcome;
    const one = { stretches: [stretch], segments, evidence, bestScore: score };
    const none = noStretches(model.featureSet.features.length);
    const [good, doubtful] = accepted ? [one, none] : [none, one];
    const verdict = decide(good, doubtful, this.#classifier, lane.featureSet, settings);
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

function noStretches(features: number): JudgedStretches {
  return {
    stretches: [],
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
