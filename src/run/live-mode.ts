import type { WindowJudgement } from '../classify/index.js';
import { MODES, type Mode } from '../core/index.js';
import { ModeFilter } from '../timeline/index.js';

/** A mode with its probability; `mode` is null where none is likelier than all the others together. */
export interface LiveBelief {
  mode: Mode | null;
  probability: number;
  /** In the order of {@link MODES}. */
  probabilities: Float64Array;
}

/** What is believed at the newest window of a burning arc. */
export interface LiveModes {
  /** Follows a change fast and may be taken back. */
  provisional: LiveBelief;
  /** Follows once the evidence has held; null before the first that did. */
  confirmed: LiveBelief | null;
}

/** How reluctant the provisional mode is: time a mode is expected to last at least, s. */
const QUICK_DWELL_S = 1;
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

  constructor(hopS: number, windowS: number, meanDwellS: number) {
    const common = { hopS, lookAhead: 1 };
    this.#quick = new ModeFilter({ ...common, weight: 1, meanDwellS: QUICK_DWELL_S });
    // Windows that overlap repeat each other; half is news, so that two clear ones settle it.
    const weight = Math.max(0.5, hopS / windowS);
    this.#steady = new ModeFilter({ ...common, weight, meanDwellS });
  }

  push({ startS, endS, probabilities }: WindowJudgement): LiveModes {
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
