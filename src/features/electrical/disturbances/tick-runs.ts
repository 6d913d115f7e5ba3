import { DISTURBANCE_LIMITS as LIMITS } from './settings.js';

/** A stretch of ticks in one state, in ticks; `meanV` is NaN without a voltage. */
export interface TickRun {
  startTick: number;
  endTick: number;
  meanV: number;
}

/** Most stretches kept of a kind: more than any weld has, and a bound for what is no weld. */
const MOST = 20_000;

/**
 * Long stretches without current, and long stretches with the wire touching, from the mean voltage and current of
 * ticks of about a millisecond. Whether an arc burned before and after is for the caller to say.
 */
export class TickRuns {
  readonly dead: TickRun[] = [];
  readonly touching: TickRun[] = [];
  readonly #has: { voltage: boolean; current: boolean };
  readonly #deadTicks: number;
  readonly #touchTicks: number;
  #tick: number;
  #state: 'dead' | 'touching' | null = null;
  #since = 0;
  #sumV = 0;

  constructor(
    { tickS, fromTick }: { tickS: number; fromTick: number },
    has: { voltage: boolean; current: boolean },
  ) {
    this.#tick = fromTick;
    this.#has = has;
    this.#deadTicks = Math.ceil(LIMITS.arcOutS / tickS - 1e-9);
    this.#touchTicks = Math.floor(LIMITS.longShortS / tickS + 1e-9) + 1;
  }

  push(meanV: number, meanA: number): void {
    const state = this.#stateOf(meanV, Math.abs(meanA));
    if (state !== this.#state) {
      this.#close();
      this.#state = state;
      this.#since = this.#tick;
      this.#sumV = 0;
    }
    this.#sumV += meanV;
    this.#tick++;
  }

  /** At the end of the data: a stretch that is still open has no end and is left out. */
  #close(): void {
    if (this.#state === null) return;
    const ticks = this.#tick - this.#since;
    const [list, fewest] =
      this.#state === 'dead' ? [this.dead, this.#deadTicks] : [this.touching, this.#touchTicks];
    if (ticks < fewest || list.length === MOST) return;
    const meanV = this.#has.voltage ? this.#sumV / ticks : Number.NaN;
    list.push({ startTick: this.#since, endTick: this.#tick, meanV });
  }

  #stateOf(meanV: number, absA: number): 'dead' | 'touching' | null {
    const { voltage, current } = this.#has;
    if (current && absA < LIMITS.deadA) return 'dead';
    if (!voltage) return null;
    if (!current && meanV > LIMITS.openCircuitV) return 'dead';
    return meanV < LIMITS.touchV && (current || meanV > LIMITS.sourceOnV) ? 'touching' : null;
  }
}
