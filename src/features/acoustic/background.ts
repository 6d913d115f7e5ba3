import { MODULATION_BINS } from './modulation.js';

/** A hop counts as raised when it is this much louder (power ratio, 2 dB) than what went before. */
const RAISED = 1.58;
/** Windows of background needed before its lines are believed. */
const LEAST_WINDOWS = 3;
/** Mean prominence from which a bin of the background is a line. */
const LINE = 4;
const REACH = 2;

/**
 * Remembers which modulation lines stood in the sound before it became louder: they belong to the shop
 * (fans, compressors, grinders), so that the search for the arc's own line leaves them out.
 */
export class Background {
  readonly #sum = new Float64Array(MODULATION_BINS);
  #windows = 0;
  #level = 0;
  #hops = 0;
  #raisedHops = 0;
  #mask: Uint8Array | undefined;

  /** Bins to leave out while the sound is louder than its background; undefined otherwise. */
  get mask(): Uint8Array | undefined {
    return this.#raisedHops > 0 ? this.#mask : undefined;
  }

  /** Tells the mean square of the newest hop; call before the window is analysed. */
  hop(level: number): void {
    const raised = this.#hops >= 2 && level > RAISED * this.#level;
    if (raised) {
      if (this.#raisedHops === 0) this.#mask = this.#lines();
      this.#raisedHops++;
      return;
    }
    this.#raisedHops = 0;
    this.#hops++;
    this.#level += (level - this.#level) / Math.min(this.#hops, 40);
  }

  /** Adds the prominences of a window that lies wholly in the background. */
  window(prominence: Float64Array): void {
    if (this.#raisedHops > 0) return;
    this.#windows++;
    const weight = 1 / Math.min(this.#windows, 40);
    for (let k = 0; k < MODULATION_BINS; k++)
      this.#sum[k] = this.#sum[k]! + (prominence[k]! - this.#sum[k]!) * weight;
  }

  #lines(): Uint8Array | undefined {
    if (this.#windows < LEAST_WINDOWS) return undefined;
    const mask = new Uint8Array(MODULATION_BINS);
    for (let k = REACH; k < MODULATION_BINS - REACH; k++)
      if (this.#sum[k]! > LINE) mask.fill(1, k - REACH, k + REACH + 1);
    return mask;
  }
}
