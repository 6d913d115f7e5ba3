import type { LiveBelief, LiveEvent } from '../../analysis/index.js';
import type { WatchEvent } from './events.js';

type ModeEvent = Omit<WatchEvent & { event: 'mode' }, 'weld'>;

const EVENTS = 10;
const QUICK_S = 0.5;

/** Tells the mode when it changes, not at every moment. */
export class ModeChangeNotifier {
  #provisional: LiveBelief['mode'] | undefined;
  #confirmed: LiveBelief['mode'] | undefined;

  /** For a new arc. */
  reset(): void {
    this.#provisional = this.#confirmed = undefined;
  }

  changes({ timeS, modes, rateHz }: LiveEvent & { type: 'now' }): ModeEvent[] {
    const needS = rateHz ? EVENTS / rateHz : 0;
    const common = {
      event: 'mode' as const,
      timeS,
      eventRateHz: rateHz,
      slowS: needS > QUICK_S ? needS : null,
    };
    const say = (stage: 'provisional' | 'confirmed', { mode, probability }: LiveBelief) => ({
      ...common,
      stage,
      mode,
      confidence: probability,
    });
    const said: ModeEvent[] = [];
    if (modes.provisional.mode !== this.#provisional) {
      this.#provisional = modes.provisional.mode;
      said.push(say('provisional', modes.provisional));
    }
    if (modes.confirmed && modes.confirmed.mode !== this.#confirmed) {
      this.#confirmed = modes.confirmed.mode;
      said.push(say('confirmed', modes.confirmed));
    }
    return said;
  }
}
