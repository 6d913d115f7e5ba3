/** Power sources: constant voltage with slope and choke, pulses of current, and dip with current levels. */

/** What the source reads from the arc at one step. */
export interface Load {
  timeS: number;
  currentA: number;
  /** Voltage at the terminals. */
  voltageV: number;
  shorted: boolean;
  /** Time since the bridge formed or broke, s. */
  sinceS: number;
  /** Thickness of the bridge from 1 to 0. */
  neck: number;
}

export interface ConstantVoltage {
  kind: 'constant-voltage';
  openV: number;
  slopeOhm: number;
  inductanceUpH: number;
  inductanceDownH: number;
  rippleHz: number;
  rippleShare: number;
}

export interface Pulses {
  kind: 'pulses';
  baseA: number;
  peakA: number;
  riseS: number;
  peakS: number;
  fallS: number;
  periodS: number;
  /** Volts the source holds by turning the period or the base current. */
  meanV: number;
  hold: 'period' | 'base' | 'none';
  rippleHz: number;
  rippleShare: number;
}

export interface Levels {
  kind: 'levels';
  baseA: number;
  boostA: number;
  boostS: number;
  /** Third level after the boost: share of the way from base to boost, and its length. */
  tailShare: number;
  tailS: number;
  wetS: number;
  wetA: number;
  pinchAPerS: number;
  pinchA: number;
  /** Current is cut when the bridge gets thinner than this; 0: never. */
  cutNeck: number;
  rippleHz: number;
  rippleShare: number;
}

export type SourcePlan = ConstantVoltage | Pulses | Levels;

/** Runs one plan: gives the current after a step and marks where pulses begin. */
export class Source {
  private readonly plan: SourcePlan;
  private pulseAt = 0;
  private periodS = 0;
  private baseA = 0;
  private sumV = 0;
  private count = 0;
  private lastV = 0;
  private pinch = 0;
  /** Start times of pulses. */
  readonly pulsesS: number[] = [];

  constructor(plan: SourcePlan) {
    this.plan = plan;
    if (plan.kind === 'pulses') {
      this.periodS = plan.periodS;
      this.baseA = plan.baseA;
      this.lastV = plan.meanV;
      this.pulseAt = 0.012; // own choice: the first pulse comes once the arc stands
    }
  }

  step(load: Load, dt: number): number {
    const p = this.plan;
    const ripple = 1 + p.rippleShare * Math.sin(2 * Math.PI * p.rippleHz * load.timeS);
    const i = load.currentA;
    if (p.kind === 'constant-voltage') {
      const drive = p.openV * ripple - p.slopeOhm * i - load.voltageV;
      const h = drive > 0 ? p.inductanceUpH : p.inductanceDownH;
      return Math.min(600, Math.max(4, i + (dt / h) * drive));
    }
    const want = (p.kind === 'pulses' ? this.pulseA(p, load) : this.levelA(p, load, dt)) * ripple;
    // Own choice: an inverter follows its command within about 60 us and 1 500 A/ms.
    const step = Math.max(-1.5e6 * dt, Math.min(1.5e6 * dt, (want - i) * Math.min(1, dt / 6e-5)));
    return Math.min(620, Math.max(4, i + step));
  }

  private pulseA(p: Pulses, load: Load): number {
    this.sumV += load.voltageV;
    this.count++;
    let t = load.timeS - this.pulseAt;
    if (t >= this.periodS) {
      this.turn(p);
      this.pulseAt += this.periodS;
      t = load.timeS - this.pulseAt;
      this.pulsesS.push(this.pulseAt);
    } else if (t >= 0 && this.pulsesS.length === 0) this.pulsesS.push(this.pulseAt);
    let a = this.baseA;
    if (t >= 0) {
      const top = p.peakA - this.baseA;
      if (t < p.riseS) a += (top * t) / p.riseS;
      else if (t < p.riseS + p.peakS) a += top;
      else if (t < p.riseS + p.peakS + p.fallS) {
        const u = (t - p.riseS - p.peakS) / p.fallS;
        a += top * (1 - u) * (1 - u * 0.3);
      }
    }
    // A touch is cleared by more current after a millisecond (own choice).
    if (load.shorted && load.sinceS > 1e-3) a = Math.max(a, 150 + 1.2e5 * (load.sinceS - 1e-3));
    return Math.min(a, 560);
  }

  /** Once a pulse: turns the period or the base current so that the mean voltage holds. */
  private turn(p: Pulses): void {
    const mean = this.count > 0 ? this.sumV / this.count : p.meanV;
    this.sumV = 0;
    this.count = 0;
    this.lastV += 0.3 * (mean - this.lastV);
    const error = Math.max(-4, Math.min(4, p.meanV - this.lastV));
    if (p.hold === 'period') this.periodS = p.periodS / (1 + 0.06 * error);
    else if (p.hold === 'base') this.baseA = Math.max(15, p.baseA * (1 + 0.13 * error));
  }

  private levelA(p: Levels, load: Load, dt: number): number {
    if (load.shorted) {
      if (load.sinceS < p.wetS) {
        this.pinch = p.wetA;
        return p.wetA;
      }
      if (load.neck < p.cutNeck) return p.wetA;
      this.pinch = Math.min(p.pinchA, this.pinch + p.pinchAPerS * dt);
      return this.pinch;
    }
    if (load.sinceS < p.boostS) return p.boostA;
    if (load.sinceS < p.boostS + p.tailS) return p.baseA + p.tailShare * (p.boostA - p.baseA);
    return p.baseA;
  }
}
