import { blockMeans, type SlotPlan } from './decimation.js';

/** Time after re-ignition that still belongs to the short: the arc column settles (common practice, no source). */
const SETTLING_S = 0.0015;

/** The slow trace of the arc phase: shorts cut out and bridged by the level before them. */
export interface ArcPhaseSlot {
  voltage: Float64Array;
  /** 1 where the value was bridged. */
  bridged: Uint8Array;
}

/** Makes the arc-phase trace slot by slot, with the bridge level and the settling time carried on. */
export class ArcPhase {
  readonly #plan: SlotPlan;
  readonly #settling: number;
  #level = Number.NaN;
  #settlingLeft = 0;

  constructor(plan: SlotPlan) {
    this.#plan = plan;
    this.#settling = Math.ceil(SETTLING_S * plan.sampleRateHz);
  }

  /** `ranges`: pairs of first and one-past-last sample in a short. */
  push(voltage: Float64Array, ranges: readonly number[]): ArcPhaseSlot {
    const { factor } = this.#plan;
    const slow = blockMeans(voltage, factor);
    const bridged = new Uint8Array(slow.length);
    const mark = (from: number, to: number) => {
      const first = Math.max(0, Math.floor(from / factor) - (from > 0 ? 1 : 0));
      bridged.fill(1, first, Math.max(first, Math.ceil(to / factor)));
    };
    if (this.#settlingLeft > 0) mark(0, this.#settlingLeft);
    this.#settlingLeft = Math.max(0, this.#settlingLeft - voltage.length);
    for (let r = 0; r < ranges.length; r += 2) {
      const end = ranges[r + 1]! + (ranges[r + 1]! < voltage.length ? this.#settling : 0);
      mark(ranges[r]!, end);
      this.#settlingLeft = Math.max(this.#settlingLeft, end - voltage.length);
    }
    this.#bridge(slow, bridged);
    return { voltage: slow, bridged };
  }

  #bridge(slow: Float64Array, bridged: Uint8Array): void {
    if (Number.isNaN(this.#level)) this.#level = firstKept(slow, bridged);
    for (let k = 0; k < slow.length; k++) {
      if (bridged[k] === 1) slow[k] = this.#level;
      else this.#level += 0.2 * (slow[k]! - this.#level);
    }
  }
}

function firstKept(slow: Float64Array, bridged: Uint8Array): number {
  for (let k = 0; k < slow.length; k++) if (bridged[k] === 0) return slow[k]!;
  return Number.NaN;
}
