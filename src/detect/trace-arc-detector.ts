import { TraceArcEvidence } from './trace-evidence.js';
import { DEFAULT_GATE_SETTINGS, type TraceArcSettings } from './trace-settings.js';
import { planTicks, type TickPlan } from './trace-ticks.js';

/** How long a flat voltage can look alive: the lag and the span of the shorter comb. */
const TAKE_BACK_S = 0.075;

/** Burning ticks in a row that are a sign of life. */
const LIFE_TICKS = 4;

/** Ticks judged together when a start or a stop is placed. */
const GROUP = 8;

/** What a tick did to the arc-on decision. */
export type TraceArcStep = 'nothing' | 'started' | 'stopped';

/**
 * Arc-on from voltage and/or current, tick by tick, with two thresholds and hold times. It asks for
 * positive evidence: a plausible arc voltage that fluctuates beyond hum, ramps and white noise, and
 * current where it is measured. Flat open circuit, zeros, a dead short, hum, noise and ramps never start it.
 * Tick numbers count from 0 at the first sample.
 */
export class TraceArcDetector {
  readonly plan: TickPlan;
  /** First burning tick of the present or last arc interval. */
  startTick = 0;
  /** One past the last tick known to burn; only grows while burning. */
  safeTick = 0;
  burning = false;
  readonly #settings: TraceArcSettings;
  readonly #hasVoltage: boolean;
  readonly #hasCurrent: boolean;
  readonly #evidence: TraceArcEvidence;
  readonly #levels = new Float64Array(512);
  #tick = 0;
  #candidate = -1;
  #alive = 0;
  #streak = 0;
  #lastAlive = -1;
  #lastFlowing = -1e9;
  #lastNegative = -1e9;

  constructor(
    sampleRateHz: number,
    has: { voltage: boolean; current: boolean },
    settings: TraceArcSettings = DEFAULT_GATE_SETTINGS,
  ) {
    this.plan = planTicks(sampleRateHz);
    this.#settings = settings;
    this.#hasVoltage = has.voltage;
    this.#hasCurrent = has.current;
    this.#evidence = new TraceArcEvidence(this.plan, has, settings);
  }

  /** Oldest tick that a coming start could still reach back to. */
  get oldestTick(): number {
    return this.#candidate >= 0 ? this.#candidate : this.#tick;
  }

  /**
   * Takes one tick: mean voltage, mean square of the sample-to-sample difference halved (white noise
   * power), mean current.
   */
  push(meanV: number, whiteV2: number, meanA: number): TraceArcStep {
    const tick = this.#tick++;
    this.#levels[tick & 511] = this.#hasVoltage ? meanV : meanA;
    const alive = this.#isAlive(tick, meanV, whiteV2, Math.abs(meanA));
    if (this.burning) return this.#whileBurning(tick, alive);
    return this.#whileIdle(tick, alive);
  }

  /** At the end of the data: where a burning arc ends, and whether it was still burning at the edge. */
  finish(): { endTick: number; open: boolean } {
    const open = this.#tick - 1 - this.#lastAlive <= Math.round(0.02 / this.plan.seconds);
    if (open) return { endTick: this.#tick, open };
    return { endTick: Math.max(this.safeTick, this.#lastBurningTick() + 1), open };
  }

  #isAlive(tick: number, meanV: number, whiteV2: number, absA: number): boolean {
    const s = this.#settings;
    const fluctuates = this.#evidence.push(meanV, whiteV2, absA);
    if (this.#hasVoltage && meanV < s.negativeV) this.#lastNegative = tick;
    if (this.#hasCurrent) {
      if (absA >= (this.burning ? s.holdA : s.startA)) this.#lastFlowing = tick;
      // Controlled sources cut the current to a few amperes for milliseconds.
      if (tick - this.#lastFlowing > 0.01 / this.plan.seconds) return false;
    }
    if (!fluctuates) return false;
    if (!this.#hasVoltage) return true;
    if (tick - this.#lastNegative <= 0.025 / this.plan.seconds) return false;
    return meanV >= s.lowestV && meanV <= s.highestV;
  }

  #whileIdle(tick: number, alive: boolean): TraceArcStep {
    if (this.#candidate >= 0 && tick - this.#lastAlive > 0.06 / this.plan.seconds)
      this.#candidate = -1;
    if (!alive) return 'nothing';
    if (this.#candidate < 0) {
      this.#candidate = this.#reachBack(tick);
      this.#alive = 0;
    }
    this.#alive++;
    this.#lastAlive = tick;
    const hold = this.#settings.startHoldS / this.plan.seconds;
    if (tick + 1 - this.#candidate < hold || this.#alive < 0.3 * hold) return 'nothing';
    this.burning = true;
    this.startTick = this.#firstBurningTick();
    this.safeTick = this.startTick;
    return 'started';
  }

  /** A trace that opens in a burning arc has no history to show fluctuation yet: begin at its first tick. */
  #reachBack(tick: number): number {
    const s = this.#settings;
    if (tick * this.plan.seconds > 0.1) return tick;
    let low = 0;
    for (let t = tick - 1; t >= 0; t--) {
      const level = this.#levels[t & 511]!;
      const plausible = this.#hasVoltage
        ? level >= s.lowestV && level <= s.highestV
        : Math.abs(level) >= s.holdA;
      low = plausible ? 0 : low + 1;
      if (level > s.highestV && this.#hasVoltage) return t + 1;
      if (low * this.plan.seconds > 0.012) return t + low;
    }
    return 0;
  }

  #whileBurning(tick: number, alive: boolean): TraceArcStep {
    this.#streak = alive ? this.#streak + 1 : 0;
    // Noise passes for life now and then, but not for long.
    if (this.#streak >= LIFE_TICKS) {
      this.#lastAlive = tick;
      // Some ticks may still be taken back at the end, so what is safe lags behind.
      this.safeTick = Math.max(
        this.safeTick,
        tick + 1 - Math.ceil(TAKE_BACK_S / this.plan.seconds),
      );
      return 'nothing';
    }
    if (tick - this.#lastAlive < this.#settings.stopHoldS / this.plan.seconds) return 'nothing';
    this.burning = false;
    this.safeTick = Math.max(this.safeTick, this.#lastBurningTick() + 1);
    this.#candidate = -1;
    return 'stopped';
  }

  /**
   * Open circuit of a plausible height, or its slow discharge, looks alive until it fills the window of the
   * evidence. It is smoother than an arc: take back what is as smooth as the time after the last sign of life.
   */
  #lastBurningTick(): number {
    if (!this.#hasVoltage || this.#hasCurrent) return this.#lastAlive;
    const shortWindow = this.#tick - 1;
    const quiet = this.#roughness(this.#lastAlive + GROUP, shortWindow + 1);
    const oldest = Math.max(this.startTick, this.safeTick, shortWindow - 500);
    let t = this.#lastAlive + 1;
    while (t - GROUP >= oldest && this.#roughness(t - GROUP, t) <= 3 * quiet + 0.02) t -= GROUP;
    return t - 1;
  }

  /** The same at the start: an open circuit that was just switched on is not yet the arc that follows it. */
  #firstBurningTick(): number {
    if (!this.#hasVoltage || this.#hasCurrent || this.#candidate === 0) return this.#candidate;
    const rough = this.#roughness(Math.max(this.#candidate, this.#tick - 100), this.#tick);
    let t = this.#candidate;
    while (t + 2 * GROUP < this.#tick && this.#roughness(t + 1, t + 1 + GROUP) < 0.3 * rough) t++;
    return t;
  }

  /** Median size of the second difference of the tick level: deaf to ramps and to single leaps. */
  #roughness(from: number, to: number): number {
    const sizes: number[] = [];
    for (let t = Math.max(2, from); t < to; t++) {
      const [a, b, c] = [
        this.#levels[t & 511]!,
        this.#levels[(t - 1) & 511]!,
        this.#levels[(t - 2) & 511]!,
      ];
      sizes.push(Math.abs(a - 2 * b + c));
    }
    return sizes.length > 0 ? sizes.sort((x, y) => x - y)[sizes.length >> 1]! : 0;
  }
}
