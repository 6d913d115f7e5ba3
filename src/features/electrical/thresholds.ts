import { LevelHistogram } from './level-histogram.js';

/** The two thresholds of a short and the levels that they were derived from, in volts of the trace. */
export interface ShortThresholds {
  /** A short begins below this. */
  lowV: number;
  /** And ends above this. */
  highV: number;
  /** Arc level: lower fifth of the arc phase, so that a pulsed arc is judged from its base. */
  arcV: number;
  /** Level during shorts; a prior share of the arc level until shorts were seen. */
  shortV: number;
}

/** Where between short level and arc level the thresholds lie. */
export interface ThresholdSettings {
  lowShare: number;
  highShare: number;
}

export const DEFAULT_THRESHOLD_SETTINGS: ThresholdSettings = { lowShare: 0.35, highShare: 0.6 };

/** Share of the arc level taken for the short level before any short was seen: 4 V in 20 V (common practice, no source). */
const PRIOR_SHORT_SHARE = 0.2;
/** What a block of some 50 ms leaves of the memory: about half a second in all. */
const KEEP = 0.9;
/** Share of a block between the thresholds that only a new arc level explains. */
const MOVED_SHARE = 0.5;

/**
 * Follows arc level and short level of a trace through a fading histogram, block by block, and derives
 * the thresholds from them: no fixed volts, so a constant offset moves them along.
 */
export class ThresholdTracker {
  readonly histogram = new LevelHistogram(-20, 0.25, 360);
  readonly #settings: ThresholdSettings;
  readonly #priorMass: number;
  #current: ShortThresholds | null = null;

  constructor(sampleRateHz: number, settings: ThresholdSettings = DEFAULT_THRESHOLD_SETTINGS) {
    this.#settings = settings;
    this.#priorMass = 0.0005 * sampleRateHz;
  }

  /** Takes a block of voltage; answers the thresholds to judge that same block with. */
  update(voltage: Float64Array): ShortThresholds {
    const histogram = this.histogram;
    let known = this.#current;
    if (known && shareBetween(voltage, known.lowV, known.highV) > MOVED_SHARE) {
      // Neither arc nor short dwells between the thresholds: the arc level itself has moved.
      histogram.fade(0);
      known = null;
    }
    histogram.fade(KEEP);
    histogram.add(voltage);
    if (known) {
      const arcMass = histogram.total - histogram.below((known.lowV + known.highV) / 2).mass;
      // The levels moved as a whole (other settings): start over from what is there.
      if (arcMass < 0.1 * histogram.total) known = null;
    }
    const cut = known ? (known.lowV + known.highV) / 2 : 0.45 * histogram.quantile(0.9);
    const arcV = histogram.quantile(0.2, cut);
    const priorV = PRIOR_SHORT_SHARE * arcV;
    const lowV = known ? known.lowV : priorV + this.#settings.lowShare * (arcV - priorV);
    const shorts = histogram.below(lowV);
    const seen = shorts.mass > 0 ? shorts.mass * shorts.mean : 0;
    const shortV = (this.#priorMass * priorV + seen) / (this.#priorMass + shorts.mass);
    this.#current = this.#between(shortV, arcV);
    return this.#current;
  }

  #between(shortV: number, arcV: number): ShortThresholds {
    const span = arcV - shortV;
    return {
      lowV: shortV + this.#settings.lowShare * span,
      highV: shortV + this.#settings.highShare * span,
      arcV,
      shortV,
    };
  }
}

function shareBetween(values: Float64Array, low: number, high: number): number {
  let count = 0;
  for (let n = 0; n < values.length; n++) if (values[n]! >= low && values[n]! <= high) count++;
  return count / values.length;
}
