import { MODES, type Mode } from '../../core/index.js';
import { ModeFilter } from '../../judge/timeline/index.js';

/** A mode with its probability; `mode` is null where none is likelier than all the others together. */
export interface LiveBelief {
  mode: Mode | null;
  probability: number;
  /** In the order of {@link MODES}. */
  probabilities: Float64Array;
}

/** What is believed of a burning arc at this moment. */
export interface LiveModes {
  /** Follows a change fast and may be taken back. */
  provisional: LiveBelief;
  /** Follows once the evidence has held; null before the first that did. */
  confirmed: LiveBelief | null;
}

/** How two beliefs weigh what comes in, a quick one and a steady one. */
interface Pace {
  /** How much each vector of probabilities counts: below 1, as one repeats much of the one before. */
  quickWeight: number;
  steadyWeight: number;
  /** Time for which the quick belief expects a mode to last at least, s. */
  quickDwellS: number;
}

/** For whole windows: two clear ones settle the steady belief. */
const BY_WINDOWS: Pace = { quickWeight: 1, steadyWeight: 0.5, quickDwellS: 1 };
/**
 * For the newest half seconds of sound, eight a second: each repeats most of the one before, and a change is
 * named from them sooner than from windows (`npm run bench -- watch`).
 */
export const BY_NEWEST: Pace = { quickWeight: 0.7, steadyWeight: 0.35, quickDwellS: 2 };

/** Probability from which a mode counts as confirmed. */
const CONFIRMED = 0.85;

/**
 * The mode while the arc still burns. Both beliefs look back only; the segments of the finished weld are
 * made by the timeline, which may also look ahead, and are the same as from a file.
 */
export class LiveMode {
  readonly #quick: ModeFilter;
  readonly #steady: ModeFilter;
  #confirmed: LiveBelief | null = null;

  constructor(hopS: number, meanDwellS: number, pace: Pace = BY_WINDOWS) {
    const common = { hopS, lookAhead: 1 };
    this.#quick = new ModeFilter({
      ...common,
      weight: pace.quickWeight,
      meanDwellS: pace.quickDwellS,
    });
    this.#steady = new ModeFilter({ ...common, weight: pace.steadyWeight, meanDwellS });
  }

  push(startS: number, endS: number, probabilities: Float64Array): LiveModes {
    this.#quick.push(startS, endS, probabilities);
    this.#steady.push(startS, endS, probabilities);
    const belief = liveBelief(this.#steady.provisional!);
    if (belief.probability >= CONFIRMED || belief.mode === this.#confirmed?.mode)
      this.#confirmed = belief;
    return { provisional: liveBelief(this.#quick.provisional!), confirmed: this.#confirmed };
  }
}

/** The likeliest mode of a vector of probabilities. */
export function liveBelief(probabilities: Float64Array): LiveBelief {
  let best = 0;
  for (let k = 1; k < probabilities.length; k++)
    if (probabilities[k]! > probabilities[best]!) best = k;
  const probability = probabilities[best]!;
  return { mode: probability > 0.5 ? MODES[best]! : null, probability, probabilities };
}
