import type { Mode } from '../../core/index.js';
import { defaultSettings, LiveMode, type PipelineEvent } from '../../run/index.js';
import type { LiveState } from '../messages.js';

/** Level from which a 16-bit sample counts as standing at the rail. */
const RAIL = 32_700;

/** What is heard just now, from the samples and from what the pipeline says of them. */
export class LiveMeter {
  readonly #rateHz: number;
  readonly #settings = defaultSettings();
  #samples = 0;
  #since = 0;
  #peak = 0;
  #clipped = 0;
  #usableS = 0;
  #steadyFromS = 0;
  #arc = false;
  #filter: LiveMode | null = null;
  #lastStartS = Number.NaN;
  #mode: Mode | null = null;
  #settled = false;

  constructor(rateHz: number) {
    this.#rateHz = rateHz;
  }

  samples(block: Int16Array): void {
    for (const value of block) {
      const level = Math.abs(value);
      if (level > this.#peak) this.#peak = level;
      if (level >= RAIL) this.#clipped += 1;
    }
    this.#samples += block.length;
    this.#since += block.length;
  }

  event(event: PipelineEvent): void {
    if (event.type === 'arc-start') {
      this.#arc = true;
      this.#filter = null;
      this.#mode = null;
      this.#settled = false;
      this.#steadyFromS = event.timeS + (event.open ? 0 : this.#settings.ignitionMaskS);
    } else if (event.type === 'arc-stop') this.#arc = false;
    else if (event.type === 'window') this.#window(event);
  }

  #window({ window, judgement }: PipelineEvent & { type: 'window' }): void {
    const hopS = window.startS - this.#lastStartS;
    this.#lastStartS = window.startS;
    if (!this.#arc || !(hopS > 0)) return;
    const { startS, endS } = window;
    this.#filter ??= new LiveMode(hopS, this.#settings.meanDwellS);
    const { provisional, confirmed } = this.#filter.push(startS, endS, judgement.probabilities);
    this.#mode = confirmed?.mode ?? provisional.mode;
    this.#settled = confirmed !== null && confirmed.mode !== null;
    if (window.startS >= this.#steadyFromS) this.#usableS += hopS;
  }

  /** The state as it stands; peak and clipping then count anew. */
  read(): LiveState {
    const state: LiveState = {
      timeS: this.#samples / this.#rateHz,
      peakDb: this.#peak === 0 ? Number.NEGATIVE_INFINITY : 20 * Math.log10(this.#peak / 32768),
      clipped: this.#since === 0 ? 0 : this.#clipped / this.#since,
      arc: this.#arc,
      mode: this.#arc ? this.#mode : null,
      settled: this.#arc && this.#settled,
      usableS: this.#usableS,
    };
    this.#peak = 0;
    this.#clipped = 0;
    this.#since = 0;
    return state;
  }
}
