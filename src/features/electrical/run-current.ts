import type { RunFigures } from '../extractor.js';
import { BlockSums } from './running.js';
import type { CurrentSlot, VoltageSlot } from './slot-analyser.js';

/** Current and power figures of the steady part of a run. */
export class RunCurrent {
  readonly #all = new BlockSums();
  #power = 0;
  #powerSamples = 0;

  add(current: CurrentSlot, voltage: VoltageSlot | null): void {
    this.#all.add(current.raw);
    if (!voltage) return;
    let sum = 0;
    for (let n = 0; n < current.raw.length; n++) sum += current.raw[n]! * voltage.raw[n]!;
    this.#power += sum;
    this.#powerSamples += current.raw.length;
  }

  figures(): RunFigures {
    return {
      meanCurrentA: this.#all.mean,
      currentSdA: this.#all.sd,
      /** Mean of the product, which is not the product of the means. */
      powerW: this.#power / this.#powerSamples,
    };
  }
}
