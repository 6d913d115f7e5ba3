import type { ShortThresholds } from './thresholds.js';

/** One short circuit. Samples count from the first sample given to the detector. */
export interface Short {
  /** First sample below the lower threshold. */
  startSample: number;
  /** First sample back above the upper threshold. */
  endSample: number;
  /** Mean voltage and current between them. Current figures are NaN without a current channel. */
  meanV: number;
  meanA: number;
  /** Current at the first and at the last sample of the short. */
  startA: number;
  breakA: number;
  /** Least current in between: below the start only where a source cuts it at contact. */
  leastA: number;
}

/** Shorts that ended within a block, and the parts of the block that lie in a short. */
export interface ShortScan {
  shorts: Short[];
  /** Pairs of first and one-past-last index within the block. */
  ranges: number[];
}

/** Fewest samples of a short: 0.15 ms, and two where one could be a spike of the sensor. */
export function fewestShortSamples(sampleRateHz: number): number {
  return Math.max(Math.ceil(0.00015 * sampleRateHz - 1e-9), sampleRateHz >= 5000 ? 2 : 1);
}

/** Finds shorts by two thresholds, with state carried from block to block. */
export class ShortDetector {
  readonly #fewest: number;
  readonly #confirm: number;
  #position = 0;
  #inside = false;
  #above = 0;
  #start = 0;
  #startA = Number.NaN;
  #lastA = Number.NaN;
  #sumV = 0;
  #sumA = 0;
  #leastA = Number.NaN;

  constructor(sampleRateHz: number) {
    this.#fewest = fewestShortSamples(sampleRateHz);
    this.#confirm = sampleRateHz >= 5000 ? 2 : 1;
  }

  scan(voltage: Float64Array, current: Float64Array | null, limits: ShortThresholds): ShortScan {
    const scan: ShortScan = { shorts: [], ranges: [] };
    const { lowV, highV } = limits;
    let open = this.#inside ? 0 : -1;
    let n = 0;
    while (n < voltage.length) {
      if (!this.#inside) {
        while (n < voltage.length && !(voltage[n]! < lowV)) n++;
        if (n === voltage.length) break;
        open = n;
        this.#enter(n, current);
      }
      n = this.#walk(n, voltage, current, highV);
      if (this.#inside) break;
      const end = n - this.#confirm;
      scan.ranges.push(open, Math.max(open, end));
      this.#leave(end, scan);
      open = -1;
    }
    if (open >= 0) scan.ranges.push(open, voltage.length);
    this.#position += voltage.length;
    return scan;
  }

  #enter(n: number, current: Float64Array | null): void {
    this.#inside = true;
    this.#above = 0;
    this.#start = this.#position + n;
    this.#startA = current ? current[n]! : Number.NaN;
    this.#lastA = this.#startA;
    this.#leastA = this.#startA;
    this.#sumV = 0;
    this.#sumA = 0;
  }

  /** Goes on inside a short until it has ended for `confirm` samples or the block is over. */
  #walk(from: number, voltage: Float64Array, current: Float64Array | null, highV: number): number {
    let n = from;
    for (; n < voltage.length; n++) {
      if (voltage[n]! > highV) {
        if (++this.#above >= this.#confirm) {
          this.#inside = false;
          return n + 1;
        }
        continue;
      }
      this.#above = 0;
      this.#sumV += voltage[n]!;
      if (current) {
        this.#lastA = current[n]!;
        this.#sumA += this.#lastA;
        if (this.#lastA < this.#leastA) this.#leastA = this.#lastA;
      }
    }
    return n;
  }

  #leave(end: number, scan: ShortScan): void {
    const endSample = this.#position + end;
    const samples = endSample - this.#start;
    if (samples < this.#fewest) return;
    scan.shorts.push({
      startSample: this.#start,
      endSample,
      meanV: this.#sumV / samples,
      meanA: Number.isNaN(this.#startA) ? Number.NaN : this.#sumA / samples,
      startA: this.#startA,
      breakA: this.#lastA,
      leastA: this.#leastA,
    });
  }
}
