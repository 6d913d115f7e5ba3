import { quantileOfSorted } from '../../../dsp/index.js';
import type { AverageShort, SpreadCurve } from './types.js';

const BEFORE_S = 0.002;
const AFTER_S = 0.01;
const MOST = 240;
const FEWEST = 5;

interface Cut {
  startSample: number;
  pieces: Float64Array[];
}

/**
 * Cuts shorts out of the traces and lays them over each other at their first sample. Of very many an
 * even choice is kept.
 */
export class ShortOverlay {
  readonly #rateHz: number;
  readonly #before: number;
  readonly #length: number;
  #cuts: Cut[] = [];
  #every = 1;
  #seen = 0;
  #waiting: number[] = [];
  #held: Float64Array[] = [];
  #heldFrom = 0;

  constructor(rateHz: number) {
    this.#rateHz = rateHz;
    this.#before = Math.round(BEFORE_S * rateHz);
    this.#length = this.#before + Math.round(AFTER_S * rateHz);
  }

  /** Takes a slot of samples and the first samples of the shorts that became known with it. */
  push(
    channels: readonly Float64Array[],
    startSample: number,
    shortStarts: readonly number[],
  ): void {
    this.#hold(channels, startSample);
    for (const start of shortStarts) {
      if (this.#seen++ % this.#every === 0) this.#waiting.push(start);
    }
    const end = startSample + channels[0]!.length;
    this.#waiting = this.#waiting.filter((start) => {
      const from = start - this.#before;
      if (from + this.#length > end) return true;
      if (from >= this.#heldFrom) this.#cut(start);
      return false;
    });
  }

  finish(
    names: readonly { name: 'voltage' | 'current'; unit: string }[],
    arcIntervals: readonly { startS: number; endS: number }[],
  ): AverageShort | null {
    const inArc = this.#cuts.filter(({ startSample }) =>
      arcIntervals.some(
        (one) => startSample / this.#rateHz >= one.startS && startSample / this.#rateHz < one.endS,
      ),
    );
    if (inArc.length < FEWEST) return null;
    return {
      count: inArc.length,
      stepS: 1 / this.#rateHz,
      startS: -this.#before / this.#rateHz,
      quantities: names.map((one, c) => ({ ...one, curves: spread(inArc, c, this.#length) })),
    };
  }

  /** Keeps the newest samples: this slot and enough before it for a short that began there. */
  #hold(channels: readonly Float64Array[], startSample: number): void {
    const keep = Math.ceil(0.2 * this.#rateHz) + this.#length;
    this.#held = channels.map((channel, c) => {
      const old = this.#held[c] ?? new Float64Array(0);
      const tail = old.subarray(Math.max(0, old.length - keep));
      const joined = new Float64Array(tail.length + channel.length);
      joined.set(tail);
      joined.set(channel, tail.length);
      return joined;
    });
    this.#heldFrom = startSample + channels[0]!.length - this.#held[0]!.length;
  }

  #cut(start: number): void {
    const from = start - this.#before - this.#heldFrom;
    const pieces = this.#held.map((channel) => channel.slice(from, from + this.#length));
    this.#cuts.push({ startSample: start, pieces });
    if (this.#cuts.length < MOST) return;
    this.#cuts = this.#cuts.filter((_, k) => k % 2 === 0);
    this.#every *= 2;
  }
}

function spread(cuts: readonly Cut[], channel: number, length: number): SpreadCurve {
  const curves = {
    middle: new Float64Array(length),
    low: new Float64Array(length),
    high: new Float64Array(length),
  };
  for (let n = 0; n < length; n++) {
    const values = Float64Array.from(cuts, (cut) => cut.pieces[channel]![n]!).sort();
    curves.middle[n] = quantileOfSorted(values, 0.5);
    curves.low[n] = quantileOfSorted(values, 0.1);
    curves.high[n] = quantileOfSorted(values, 0.9);
  }
  return curves;
}
