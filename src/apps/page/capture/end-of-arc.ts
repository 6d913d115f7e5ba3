import type { LiveState } from '../messages.js';

/** An arc of this length has been welded, not only scratched, s (own choice). */
const ARC_LEAST_S = 1;
/** So long after the arc is out nobody strikes again in the same run, s (own choice). */
export const OUT_FOR_S = 3;

/** Finds the moment at which a recording can stop by itself: an arc has burnt and is out for some seconds. */
export class EndOfArc {
  #burntS = 0;
  #outS = 0;
  #lastS = 0;

  /** True once the arc is out for good. */
  isOver({ arc, timeS }: Pick<LiveState, 'arc' | 'timeS'>): boolean {
    const stepS = timeS - this.#lastS;
    this.#lastS = timeS;
    if (arc) this.#burntS += stepS;
    this.#outS = arc ? 0 : this.#outS + stepS;
    return this.#burntS >= ARC_LEAST_S && this.#outS >= OUT_FOR_S;
  }
}
