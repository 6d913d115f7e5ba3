import type { Random } from '../../../core/index.js';
import type { ArcScenario, ArcSpec, BridgingSpec } from '../scenario.js';
import { roughNormal } from './motion.js';

/**
 * Voltage across the arc: its length and current, its unrest, and how it comes back after a short. The rise at
 * low current and the decay of the overshoot are own choice.
 */
export class ArcColumn {
  /** Time since the last ignition, counted to 2 ms. */
  sinceIgnitionS = 1;
  private readonly spec: ArcSpec;
  private readonly burst: BridgingSpec;
  private fastV = 0;
  private slowV = 0;
  private strayOhm = 0;
  private startV = 4;
  private readonly fastShare: number;
  private readonly fastScale: number;

  constructor(
    scenario: ArcScenario,
    private readonly stepS: number,
  ) {
    const spec = scenario.arc;
    this.spec = spec;
    this.burst = scenario.bridging;
    this.fastShare = 1 - Math.exp(-2 * Math.PI * spec.noiseHz * stepS);
    this.fastScale = spec.noiseV / Math.sqrt(this.fastShare * (2 - this.fastShare));
  }

  /** What the wandering root adds to the voltage at this moment, V. */
  get unrestV(): number {
    return this.fastV + this.slowV;
  }

  /** Fast wander of the root; once every electrical step. */
  flicker(random: Random): void {
    this.fastV += this.fastShare * (roughNormal(random) * this.fastScale - this.fastV);
  }

  /** Slow wander of the root and of the path to it. */
  drift(dt: number, random: Random): void {
    const rate = 2 * Math.PI * this.spec.slowHz * dt;
    this.slowV += -rate * this.slowV + this.spec.slowV * Math.sqrt(2 * rate) * roughNormal(random);
    if (this.spec.strayOhm === 0) return;
    const stray = 2 * Math.PI * this.spec.strayHz * dt;
    this.strayOhm +=
      -stray * this.strayOhm + this.spec.strayOhm * Math.sqrt(2 * stray) * roughNormal(random);
  }

  /** The arc strikes anew; the voltage starts from what the bridge had. */
  ignite(fromV: number): void {
    this.startV = fromV;
    this.sinceIgnitionS = 0;
  }

  /** Resistance in the path of the current beside what the wire has, ohm; never below 0. */
  strayPathOhm(): number {
    return Math.max(0, 1.5 * this.spec.strayOhm + this.strayOhm);
  }

  /** Voltage at this current and length; `extraV` for what the necking drop adds. */
  volts(currentA: number, lengthMm: number, extraV: number): number {
    const { fallV, ohm, fieldVPerMm } = this.spec;
    const steady =
      fallV +
      ohm * currentA +
      fieldVPerMm * Math.max(0, lengthMm) +
      20 / (currentA + 10) +
      this.fastV +
      this.slowV +
      extraV;
    if (this.sinceIgnitionS >= 2e-3) return steady;
    this.sinceIgnitionS += this.stepS;
    const overshoot = this.burst.overshootV * Math.exp(-this.sinceIgnitionS / 2.5e-4);
    const rise = 1 - Math.exp(-this.sinceIgnitionS / this.burst.riseS);
    return this.startV + (steady + overshoot - this.startV) * rise;
  }
}
