import type { Mode } from '../../core/index.js';
import type { FeatureExtractor } from '../../features/index.js';
import type { PipelineEvent } from '../pipeline.js';
import type { Settings } from '../settings.js';
import { BY_NEWEST, type LiveBelief, LiveMode, type LiveModes } from './live-mode.js';
import { liveRateHz } from './live-rate.js';

/** What is believed of a burning arc. Times are s from the first sample of the pipeline. */
export type BeliefEvent =
  /**
   * What is believed at `timeS`, the end of what was heard; a few times a second. `rateHz` is the rate of events
   * (shorts, drops or pulses); null where none is clear in the mode that is named.
   */
  | { type: 'now'; timeS: number; modes: LiveModes; rateHz: number | null }
  /**
   * A whole window that ends at `timeS`, `hopS` after the one before: by it a departure is judged. It follows
   * the `now` of the same time; its `belief` is slower and surer. `steady` is false within the start of the arc.
   */
  | {
      type: 'window';
      timeS: number;
      hopS: number;
      belief: LiveBelief;
      steady: boolean;
      rateHz: number | null;
    };

/**
 * Arc score (log-odds) below which a half second counts as without an arc: 3 in 100 of drawn arcs, 58 in 100 of what
 * follows them (own measurement on 240). At -2 a change is named 0.1 s sooner, but only 27 in 100 of the latter fall out.
 */
const OUT_SCORE = -1;

/** Follows the mode of each arc from what the pipeline says; by newest half seconds where the feature extractor gives them. */
export class LiveBeliefs {
  readonly #extractor: Pick<FeatureExtractor, 'hopS' | 'shortWindowHopS' | 'featureSet'>;
  readonly #settings: Settings;
  /** By windows, and by newest half seconds; null while no arc burns. */
  #byWindows: LiveMode | null = null;
  #byShortWindow: LiveMode | null = null;
  /** What the last whole window was taken for, and its rate of events. */
  #lastWindow: { mode: Mode | null; rateHz: number | null } | null = null;
  #steadyFromS = 0;

  constructor(
    extractor: Pick<FeatureExtractor, 'hopS' | 'shortWindowHopS' | 'featureSet'>,
    settings: Settings,
  ) {
    this.#extractor = extractor;
    this.#settings = settings;
  }

  take(event: PipelineEvent): BeliefEvent[] {
    if (event.type === 'window') return this.#window(event);
    if (event.type === 'short-window') return this.#shortWindow(event);
    if (event.type === 'arc-start') this.#start(event.timeS, event.open);
    else if (event.type === 'arc-stop') this.#byWindows = this.#byShortWindow = null;
    return [];
  }

  #start(timeS: number, open: boolean): void {
    const { hopS, shortWindowHopS } = this.#extractor;
    const { meanDwellS, ignitionMaskS } = this.#settings;
    this.#byWindows = new LiveMode(hopS, meanDwellS);
    this.#byShortWindow =
      shortWindowHopS === null ? null : new LiveMode(shortWindowHopS, meanDwellS, BY_NEWEST);
    this.#lastWindow = null;
    this.#steadyFromS = timeS + (open ? 0 : ignitionMaskS);
  }

  #window({ window, judgement }: PipelineEvent & { type: 'window' }): BeliefEvent[] {
    if (!this.#byWindows) return [];
    const { hopS, shortWindowHopS, featureSet } = this.#extractor;
    const { startS, endS } = window;
    const modes = this.#byWindows.push(startS, endS, judgement.probabilities);
    const belief = modes.provisional;
    const rateHz = liveRateHz(window, featureSet, belief.mode);
    this.#lastWindow = { mode: belief.mode, rateHz };
    const steady = startS >= this.#steadyFromS - 1e-9;
    const now: BeliefEvent[] = shortWindowHopS ? [] : [{ type: 'now', timeS: endS, modes, rateHz }];
    return [...now, { type: 'window', timeS: endS, hopS, belief, steady, rateHz }];
  }

  #shortWindow({
    endS,
    startS,
    ...heard
  }: PipelineEvent & { type: 'short-window' }): BeliefEvent[] {
    // The end of an arc is noticed late; what sounds like none until then says nothing of the mode.
    if (!this.#byShortWindow || heard.arcScore < OUT_SCORE) return [];
    const modes = this.#byShortWindow.push(startS, endS, heard.probabilities);
    // A window still holds what was before: its rate is that of the mode it is taken for.
    const same = this.#lastWindow?.mode === modes.provisional.mode;
    return [{ type: 'now', timeS: endS, modes, rateHz: same ? this.#lastWindow!.rateHz : null }];
  }
}
