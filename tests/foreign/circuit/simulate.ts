/** Runs the circuit, the wire, the drop, the bridge and the pool in steps of one sample. */
import { Bridge } from './bridge.js';
import { PendantDrop } from './drop.js';
import type { ArcPlan } from './plan.js';
import { Random } from './random.js';
import { Source } from './source.js';

/** Steps a second, and sample rate of trace and dry sound. */
export const RATE_HZ = 48000;

export interface ShortCircuit {
  startS: number;
  endS: number;
  volumeM3: number;
  incipient: boolean;
}

export interface Run {
  durationS: number;
  /** Volts at the terminals, amperes, watts in the gap. */
  voltageV: Float32Array;
  currentA: Float32Array;
  gapW: Float32Array;
  /** Stretch of the drop over its radius, and height of the pool in mm. */
  stretch: Float32Array;
  poolMm: Float32Array;
  shorts: ShortCircuit[];
  drops: { timeS: number; volumeM3: number; gapM: number }[];
  pulsesS: number[];
}

/** A slow random value with mean 0, standard deviation 1 and a corner frequency. */
class Wander {
  private value: number;
  private readonly keep: number;
  private readonly push: number;

  constructor(
    private readonly r: Random,
    cornerHz: number,
    stepHz: number,
  ) {
    this.keep = Math.exp((-2 * Math.PI * cornerHz) / stepHz);
    this.push = Math.sqrt(1 - this.keep * this.keep);
    this.value = r.gauss();
  }

  next(): number {
    this.value = this.keep * this.value + this.push * this.r.noise();
    return this.value;
  }
}

/** Burns one arc. The same plan and seed give the same run. */
export function simulate(plan: ArcPlan, seed: number, durationS: number): Run {
  const r = new Random(seed, 'run');
  const n = Math.round(durationS * RATE_HZ);
  const dt = 1 / RATE_HZ;
  const voltageV = new Float32Array(n);
  const currentA = new Float32Array(n);
  const gapW = new Float32Array(n);
  const stretch = new Float32Array(n);
  const poolMm = new Float32Array(n);
  const shorts: ShortCircuit[] = [];
  const drops: Run['drops'] = [];
  const source = new Source(plan.source);
  const drop = new PendantDrop(plan.drop);
  const slowHz = RATE_HZ / 48;
  const hand = new Wander(r, plan.handHz, slowHz);
  const slip = new Wander(r, 1.5, slowHz); // own choice: liner drag changes within a second
  const root = new Wander(r, 1 / (2 * Math.PI * plan.rootTimeS), slowHz);
  const fuzz = new Wander(r, plan.fuzzHz, RATE_HZ);
  const flutter = new Wander(r, 60, slowHz * 8);
  const area = Math.PI * plan.wireRadiusM ** 2 * plan.swell;
  const poolW = 2 * Math.PI * plan.poolHz;
  // Acceleration, held for 1 ms, that gives an oscillator the wanted standard deviation (plain arithmetic).
  const shake = plan.poolNoiseM * Math.sqrt((4 * plan.poolDamping * poolW ** 3) / 1e-3);
  const kick = plan.poolKickM * poolW;
  const newDrop = (): void => {
    drop.tensionFactor = r.logNormal(1, 0.05);
    drop.swing = r.logNormal(1, 0.03 + 0.13 * plan.drop.repulsion);
    // A pushed-back drop peels at 1.5 to 2.2 wire diameters (published: up to 2, 1 to 3 in a second source).
    drop.peelM = plan.wireRadiusM * Math.max(1.2, r.logNormal(1.5, 0.17));
  };
  newDrop();
  let bridge: Bridge | null = null;
  let stick = plan.tipToPoolM - 0.0025 - plan.wireRadiusM;
  let i = 5;
  let gapV = plan.fallV;
  let changedS = -1;
  let poolY = 0;
  let poolV = 0;
  let handM = 0;
  let feed = plan.feedMS;
  let flutterV = 0;
  let poolNoise = 0;
  const endS = durationS - 0.025; // own choice: the source shuts and the arc dies within some ms

  for (let k = 0; k < n; k++) {
    const t = k * dt;
    if (k % 6 === 0) {
      flutterV = plan.flutterV * flutter.next();
      if (k % 48 === 0) {
        handM = plan.handM * hand.next();
        feed = plan.feedMS * (1 + plan.feedShare * slip.next());
        drop.root = root.next();
        poolNoise = shake * r.noise();
      }
    }
    poolV += dt * (-poolW * poolW * poolY - 2 * plan.poolDamping * poolW * poolV + poolNoise);
    poolY += dt * poolV;
    const gap = plan.tipToPoolM + handM - poolY;
    const resist = plan.meltOhm * stick * i * i;
    let target: number;
    if (bridge !== null) {
      stick += dt * (feed - resist);
      target = 0.8 + i * bridge.ohm;
      if (bridge.step(i, dt) && t < endS) {
        const stay = bridge.incipient ? 0.9 : plan.stayBridge * r.range(0.7, 1.3);
        const last = shorts[shorts.length - 1] as ShortCircuit;
        last.endS = t;
        last.volumeM3 = drop.leave(Math.min(0.95, stay));
        if (!bridge.incipient) {
          newDrop();
          drop.blast = 1;
        }
        // The break throws pool and wire apart by at least a hair (own choice).
        stick = Math.min(stick, gap - drop.reachM - (bridge.incipient ? 0.00015 : 0.0003));
        poolV -= kick * Math.min(2, i / 200) * (bridge.incipient ? 0.3 : 1);
        bridge = null;
        changedS = t;
      }
    } else {
      const length = gap - stick - drop.reachM;
      const melt = plan.meltArc * i + resist;
      stick = Math.max(0.002, stick + dt * (feed - melt));
      drop.volumeM3 += dt * area * melt;
      target = plan.fallV + plan.arcOhm * i + plan.fieldVPerM * Math.max(0, length);
      target += plan.overshootV * Math.exp(-(t - changedS) / 3e-4);
      target += plan.fuzzV * fuzz.next() + flutterV;
      if (drop.step(i, dt)) {
        const volumeM3 = drop.leave(plan.stayDrop * r.range(0.7, 1.3));
        drops.push({ timeS: t, volumeM3, gapM: Math.max(0.0005, length) });
        newDrop();
      } else if (length <= 0) {
        const incipient = r.chance(plan.incipientShare);
        bridge = new Bridge(
          plan.bridge,
          Math.max(0.5 * plan.wireRadiusM, Math.min(1.6 * plan.wireRadiusM, drop.radiusM)),
          r.logNormal(1, 0.16),
          incipient,
          r.range(0.12, 0.3),
        );
        shorts.push({ startS: t, endS: durationS, volumeM3: 0, incipient });
        poolV += 0.4 * kick;
        drop.speedMS = 0;
        changedS = t;
      }
    }
    gapV += (target - gapV) * (1 - Math.exp(-dt / plan.riseS));
    const volts = gapV + i * (plan.wireOhmPerM * stick + plan.leadOhm);
    voltageV[k] = volts;
    currentA[k] = i;
    gapW[k] = gapV * i;
    stretch[k] = bridge === null ? drop.stretchM / drop.radiusM : 0;
    poolMm[k] = poolY * 1e3;
    if (t < endS) {
      i = source.step(
        {
          timeS: t,
          currentA: i,
          voltageV: volts,
          shorted: bridge !== null,
          sinceS: t - changedS,
          neck: bridge === null ? 1 : bridge.neck,
        },
        dt,
      );
    } else {
      i *= Math.exp(-dt / 0.004);
      if (i < 3) gapV *= 0.98;
    }
  }
  const pulsesS = source.pulsesS.filter((t) => t < endS);
  return { durationS, voltageV, currentA, gapW, stretch, poolMm, shorts, drops, pulsesS };
}
