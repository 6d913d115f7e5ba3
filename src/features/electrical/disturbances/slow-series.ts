import { median } from '../../../dsp/index.js';
import { DISTURBANCE_LIMITS as LIMITS } from './settings.js';
import { blockTrend } from './slow-swing.js';

/** Half an hour of arc in slots of 50 ms. */
const MOST = 36_000;

/** A part of the run that is off, in slots of the series. */
export interface SlowPart {
  startS: number;
  endS: number;
}

/** Mean current and mean voltage of the arc phase, slot by slot of about 50 ms, of the first half hour of arc. */
export class SlowSeries {
  readonly #startS: number[] = [];
  readonly #volts: number[] = [];
  readonly #amperes: number[] = [];
  readonly #slotS: number;

  constructor(slotS: number) {
    this.#slotS = slotS;
  }

  /** NaN where a quantity is not there: no such channel, or the whole slot in a short. */
  push(startS: number, arcV: number, meanA: number): void {
    if (this.#startS.length === MOST) return;
    this.#startS.push(startS);
    this.#volts.push(arcV);
    this.#amperes.push(meanA);
  }

  get seconds(): number {
    return this.#startS.length * this.#slotS;
  }

  /** Median of the arc phase over the slots, V. */
  medianV(): number {
    return medianOf(this.#volts);
  }

  longArcs(): SlowPart[] {
    const limitV = this.medianV() + LIMITS.longArcV;
    return this.#parts((k) => this.#volts[k]! >= limitV, LIMITS.longArcS);
  }

  /** Parts in which the current averaged over 0.2 s lies low. */
  dips(): SlowPart[] {
    const width = this.#blockSlots();
    const limitA = LIMITS.dipShare * medianOf(this.#amperes);
    const low = new Uint8Array(this.#amperes.length);
    for (const { from } of this.#blocks(1))
      if (meanFrom(this.#amperes, from, width) < limitA)
        // A block that is low as a whole holds slots that are not: only low slots are marked.
        for (let k = from; k < from + width; k++) if (this.#amperes[k]! < limitA) low[k] = 1;
    return this.#parts((k) => low[k] === 1, LIMITS.blockS);
  }

  /** Slow swing of the current; see {@link blockTrend}. */
  swing(): { share: number; periodS: number } {
    const width = this.#blockSlots();
    const blocks = [...this.#blocks(width)].map(({ from }) => ({
      timeS: this.#startS[from]! + (width * this.#slotS) / 2,
      value: meanFrom(this.#amperes, from, width),
    }));
    return blockTrend(blocks, width * this.#slotS);
  }

  #blockSlots(): number {
    return Math.max(1, Math.round(LIMITS.blockS / this.#slotS));
  }

  /** Where blocks of slots that follow each other without a gap begin. */
  *#blocks(step: number): Generator<{ from: number }> {
    const width = this.#blockSlots();
    for (let from = 0; from + width <= this.#startS.length; ) {
      const gap = this.#gapWithin(from, width);
      if (gap > 0) {
        from = gap;
        continue;
      }
      yield { from };
      from += step;
    }
  }

  /** First slot after a gap within the block; 0 where there is none. */
  #gapWithin(from: number, width: number): number {
    for (let k = from + 1; k < from + width; k++) if (!this.#follows(k)) return k;
    return 0;
  }

  #follows(k: number): boolean {
    return this.#startS[k]! - this.#startS[k - 1]! < 1.5 * this.#slotS;
  }

  #parts(isOff: (k: number) => boolean, leastS: number): SlowPart[] {
    const parts: SlowPart[] = [];
    let from = -1;
    const close = (end: number): void => {
      if (from >= 0 && (end - from) * this.#slotS >= leastS - 1e-9)
        parts.push({ startS: this.#startS[from]!, endS: this.#startS[end - 1]! + this.#slotS });
      from = -1;
    };
    for (let k = 0; k < this.#startS.length; k++) {
      if (from >= 0 && !this.#follows(k)) close(k);
      if (!isOff(k)) close(k);
      else if (from < 0) from = k;
    }
    close(this.#startS.length);
    return parts;
  }
}

function meanFrom(values: readonly number[], from: number, width: number): number {
  let sum = 0;
  for (let k = from; k < from + width; k++) sum += values[k]!;
  return sum / width;
}

function medianOf(values: readonly number[]): number {
  return median(values.filter((one) => !Number.isNaN(one)));
}
