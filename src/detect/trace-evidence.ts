import type { TraceArcSettings } from './trace-settings.js';
import { CombVariance, type TickPlan } from './trace-ticks.js';

/** From this many samples a tick, noise and steepness can be judged within it. */
const FINE_TICK = 4;

/** Fluctuation that an arc shows and hum, ramps, offsets and sensor noise do not. */
export class TraceArcEvidence {
  readonly #voltage: readonly CombVariance[];
  readonly #current: readonly CombVariance[];
  readonly #settings: TraceArcSettings;
  readonly #plan: TickPlan;
  readonly #leapTicks: number;
  readonly #whiteDecay: number;
  #white = 0;
  #tickWhite = 0;
  #previousV = Number.NaN;
  #struck = false;
  #sinceLeap = 1e9;

  constructor(
    plan: TickPlan,
    has: { voltage: boolean; current: boolean },
    settings: TraceArcSettings,
  ) {
    const span = Math.max(4, Math.round(0.05 / plan.seconds));
    const combs = () => [new CombVariance(plan.lag50, span), new CombVariance(plan.lag60, span)];
    this.#voltage = has.voltage ? combs() : [];
    this.#current = has.current ? combs() : [];
    this.#settings = settings;
    this.#plan = plan;
    this.#leapTicks = 0.03 / plan.seconds;
    this.#whiteDecay = Math.exp(-plan.seconds / 0.05);
  }

  /** Whether the ticks up to this one fluctuate as an arc does. */
  push(meanV: number, whiteV2: number, absA: number): boolean {
    const s = this.#settings;
    const step = Math.abs(meanV - this.#previousV);
    const tickV2 = Number.isNaN(step) ? 0 : (step * step) / 2;
    this.#tickWhite = tickV2 + this.#whiteDecay * (this.#tickWhite - tickV2);
    this.#sinceLeap = this.#isLeap(step, whiteV2) ? 0 : this.#sinceLeap + 1;
    // Contact and arc pull an open circuit down at a stroke; it comes back only when the arc is out.
    if (meanV > s.highestV) this.#struck = false;
    else if (this.#previousV - meanV > s.strikeV && this.#previousV > s.highestV)
      this.#struck = true;
    this.#previousV = meanV;
    this.#white = whiteV2 + this.#whiteDecay * (this.#white - whiteV2);
    const currentV2 = least(this.#current, absA);
    const voltageV2 = least(this.#voltage, meanV);
    const leapt = this.#sinceLeap <= this.#leapTicks;
    if (leapt && (this.#plan.samples >= FINE_TICK || voltageV2 > 1)) return true;
    if (this.#current.length > 0) {
      const least2 = Math.max(0.3, 0.004 * absA) ** 2;
      if (currentV2 > least2) return true;
      return voltageV2 > s.fluctuationWithCurrentV ** 2;
    }
    if (!(voltageV2 > s.fluctuationV ** 2)) return false;
    if (this.#plan.samples < FINE_TICK) return voltageV2 > s.whiteNoiseFactor * this.#tickWhite;
    const slope = Math.abs(this.#voltage[0]!.drift) / 0.02;
    if (this.#struck && slope < s.struckSlopeVPerS && this.#white > s.struckNoiseV ** 2)
      return true;
    return voltageV2 > (s.whiteNoiseFactor * this.#white) / this.#plan.samples;
  }

  /** A leap stands out of the noise and is steep: rectified hum is high but smooth within a tick. */
  #isLeap(step: number, whiteV2: number): boolean {
    const { samples, seconds } = this.#plan;
    const least = this.#settings.leapV * Math.min(1, seconds / 0.001);
    if (!(step >= least && step > 5 * Math.sqrt((2 * this.#white) / samples))) return false;
    return samples < FINE_TICK || whiteV2 >= (1.5 * step * step) / (samples * samples);
  }
}

/** The smaller of both combs: only what is neither 50 Hz nor 60 Hz hum counts. */
function least(combs: readonly CombVariance[], value: number): number {
  let smallest = Number.NaN;
  for (const comb of combs) {
    const variance = comb.push(value);
    if (!(variance >= smallest)) smallest = variance;
  }
  return smallest;
}
