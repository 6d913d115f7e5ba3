import { MODES, type Mode, type Segment } from '../../core/index.js';
import type { Belief } from './mode-filter.js';

/** A mode is named for a moment when it is likelier than all the others together. */
const NAMED = 0.5;

/**
 * Joins the beliefs of one arc interval to segments that tile it: each belief speaks for the time around the
 * middle of its window, the first and last also for the edges. The confidence of a segment is the mean
 * belief in its mode (for an unnamed one, in the likeliest).
 */
export class SegmentBuilder {
  readonly #startS: number;
  #segments: Segment[] = [];
  #weights: number[] = [];
  #lastMiddleS = 0;

  constructor(arcStartS: number) {
    this.#startS = arcStartS;
  }

  push(belief: Belief): void {
    const middleS = (belief.startS + belief.endS) / 2;
    const previous = this.#segments.at(-1);
    const boundaryS = previous
      ? Math.max(this.#startS, (this.#lastMiddleS + middleS) / 2)
      : this.#startS;
    this.#lastMiddleS = middleS;
    const { mode, confidence } = nameOf(belief.probabilities);
    if (previous && previous.mode === mode) {
      const weight = this.#weights.at(-1)!;
      previous.confidence = (previous.confidence * weight + confidence) / (weight + 1);
      this.#weights[this.#weights.length - 1] = weight + 1;
      return;
    }
    if (previous) previous.endS = boundaryS;
    this.#segments.push({ startS: boundaryS, endS: boundaryS, mode, confidence });
    this.#weights.push(1);
  }

  /** Closes the arc interval and returns its segments; without any belief the whole arc interval stays unnamed. */
  finish(arcEndS: number): Segment[] {
    const last = this.#segments.at(-1);
    if (!last) return [{ startS: this.#startS, endS: arcEndS, mode: null, confidence: 0 }];
    last.endS = arcEndS;
    for (const segment of this.#segments) segment.endS = Math.min(segment.endS, arcEndS);
    return this.#segments.filter((segment) => segment.endS > segment.startS);
  }
}

function nameOf(probabilities: Float64Array): { mode: Mode | null; confidence: number } {
  let best = 0;
  for (let k = 1; k < probabilities.length; k++)
    if (probabilities[k]! > probabilities[best]!) best = k;
  const confidence = probabilities[best]!;
  return { mode: confidence > NAMED ? MODES[best]! : null, confidence };
}
