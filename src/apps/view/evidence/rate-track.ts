import { liveRateHz, type PipelineEvent } from '../../../analysis/index.js';
import { MODES } from '../../../core/index.js';
import type { FeatureSet } from '../../../features/index.js';
import { TimedSums } from './timed-sums.js';

/** Events a second over time, from the pipeline's windows, in memory that does not grow with the run. */
export class RateTrack {
  readonly #set: FeatureSet;
  /** Sum of rates and their number, by time. */
  readonly #sums = new TimedSums(2, { slotS: 0.25, most: 1024 });

  constructor(set: FeatureSet) {
    this.#set = set;
  }

  event(event: PipelineEvent): void {
    if (event.type !== 'window') return;
    const { probabilities } = event.judgement;
    const mode = MODES[probabilities.indexOf(Math.max(...probabilities))] ?? null;
    const hz = liveRateHz(event.window, this.#set, mode);
    if (hz === null) return;
    const slot = this.#sums.at((event.window.startS + event.window.endS) / 2);
    slot[0]! += hz;
    slot[1]! += 1;
  }

  /** Mean rate, Hz, of the windows whose middle lies in the slots that `[fromS, toS)` touches; null for none. */
  meanHz(fromS: number, toS: number): number | null {
    const { slotS, slots } = this.#sums;
    let sum = 0;
    let count = 0;
    for (const slot of slots.slice(Math.floor(fromS / slotS), Math.ceil(toS / slotS))) {
      sum += slot[0]!;
      count += slot[1]!;
    }
    return count > 0 ? sum / count : null;
  }
}
