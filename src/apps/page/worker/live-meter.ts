import {
  defaultSettings,
  LiveBeliefs,
  type LiveModes,
  type PipelineEvent,
} from '../../../analysis/index.js';
import type { FeatureExtractor } from '../../../features/index.js';
import type { LiveState } from '../messages.js';
import { LevelWatch } from './level-watch.js';

/** Level from which a 16-bit sample counts as standing at the rail. */
const RAIL = 32_700;

/** What is heard just now, from the samples and from what the pipeline says of them. */
export class LiveMeter {
  readonly #rateHz: number;
  #samples = 0;
  #since = 0;
  #peak = 0;
  #clipped = 0;
  #usableS = 0;
  #arc = false;
  #now: LiveModes | null = null;
  readonly #beliefs: LiveBeliefs;
  readonly #level: LevelWatch;

  constructor(rateHz: number, extractor: FeatureExtractor) {
    this.#rateHz = rateHz;
    this.#level = new LevelWatch(rateHz);
    this.#beliefs = new LiveBeliefs(extractor, defaultSettings());
  }

  samples(block: Int16Array): void {
    for (const value of block) {
      const level = Math.abs(value);
      if (level > this.#peak) this.#peak = level;
      if (level >= RAIL) this.#clipped += 1;
    }
    this.#level.samples(block);
    this.#samples += block.length;
    this.#since += block.length;
  }

  event(event: PipelineEvent): void {
    if (event.type === 'arc-start' || event.type === 'arc-stop') {
      this.#arc = event.type === 'arc-start';
      this.#now = null;
    }
    for (const belief of this.#beliefs.take(event))
      if (belief.type === 'now') this.#now = belief.modes;
      else if (belief.steady) this.#usableS += belief.hopS;
  }

  /** The state as it stands; peak and clipping then count anew. */
  read(): LiveState {
    const state: LiveState = {
      timeS: this.#samples / this.#rateHz,
      peakDb: this.#peak === 0 ? Number.NEGATIVE_INFINITY : 20 * Math.log10(this.#peak / 32768),
      clipped: this.#since === 0 ? 0 : this.#clipped / this.#since,
      arc: this.#arc,
      mode: this.#now?.confirmed?.mode ?? this.#now?.provisional.mode ?? null,
      settled: !!this.#now?.confirmed?.mode,
      usableS: this.#usableS,
      ...this.#level.read(this.#arc),
    };
    this.#peak = 0;
    this.#clipped = 0;
    this.#since = 0;
    return state;
  }
}
