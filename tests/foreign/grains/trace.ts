import type { Dice } from './dice.js';
import type { Plan } from './plan.js';
import type { PulseShape } from './pulsing.js';
import type { Draft } from './setup.js';

/** Rate of the trace before any logger: 50 points to a bridge of 1 ms. */
export const TRACE_HZ = 50000;

/**
 * Voltage and current of one arc at `TRACE_HZ`, and where the bridges stand (1 in the arc, 0 in a
 * bridge).
 */
export interface Trace {
  voltageV: Float32Array;
  currentA: Float32Array;
  burning: Uint8Array;
}

/** Level from 0 to 1 along an edge, straight or bent. */
function edge(part: number, bend: number): number {
  const p = Math.min(1, Math.max(0, part));
  return (1 - bend) * p + (bend * (1 - Math.exp(-3 * p))) / (1 - Math.exp(-3));
}

/** Adds the pulse wave to a current that lies at its base level. */
function addPulses(currentA: Float32Array, plan: Plan, shape: PulseShape): void {
  const step = shape.peakA - shape.baseA;
  const tailS = shape.shoulder > 0 ? 0.0012 : 0;
  for (const pulse of plan.pulses) {
    const from = Math.ceil(pulse.startS * TRACE_HZ);
    const to = Math.floor((pulse.fallS + shape.fallS + tailS) * TRACE_HZ);
    for (let k = from; k <= to && k < currentA.length; k++) {
      const t = k / TRACE_HZ;
      const up = edge((t - pulse.startS) / shape.riseS, shape.bend);
      const down = edge((t - pulse.fallS) / shape.fallS, shape.bend);
      const rest =
        tailS > 0 ? shape.shoulder * (1 - edge((t - pulse.fallS - shape.fallS) / tailS, 0)) : 0;
      currentA[k] = (currentA[k] as number) + step * Math.max(0, up - down * (1 - rest));
    }
  }
}

/**
 * Natural bridges: the current climbs in the short and dies away after it, on top of what the arc
 * draws.
 */
function addShortRamps(dice: Dice, currentA: Float32Array, plan: Plan, meanA: number): void {
  // Slope bends either way; decay of 1.2 to 5 ms (oscillograms of 100-300 µH sources, from memory).
  const bow = dice.between(0.7, 1.3);
  const decayS = dice.ratio(0.0012, 0.005);
  let extra = 0;
  let freeFromS = 0;
  for (let s = 0; s < plan.shorts.length; s++) {
    const { startS, endS, peakRatio } = plan.shorts[s] as Plan['shorts'][number];
    const left = extra * Math.exp(-(startS - freeFromS) / decayS);
    const from = Math.ceil(startS * TRACE_HZ);
    const to = Math.min(currentA.length - 1, Math.floor(endS * TRACE_HZ));
    const base = currentA[from] ?? meanA;
    const height = Math.max(left, Math.min(peakRatio * meanA, 480) - base);
    for (let k = from; k <= to; k++) {
      const part = (k / TRACE_HZ - startS) / (endS - startS);
      currentA[k] = (currentA[k] as number) + left + (height - left) * part ** bow;
    }
    extra = height;
    freeFromS = endS;
    const next = plan.shorts[s + 1]?.startS ?? plan.durationS;
    const last = Math.min(next, endS + 8 * decayS) * TRACE_HZ;
    for (let k = to + 1; k < last && k < currentA.length; k++) {
      const fall = Math.exp(-(k / TRACE_HZ - endS) / decayS);
      currentA[k] = (currentA[k] as number) + extra * fall;
    }
  }
}

/**
 * Controlled dip: low until the bridge stands, a ramp that is cut before the break, then a lift of
 * the arc.
 */
function addControlledDip(dice: Dice, currentA: Float32Array, plan: Plan, meanA: number): void {
  const lowA = dice.between(35, 70);
  const pinchA = meanA * dice.between(1.6, 2.3);
  const liftA = dice.chance(0.75) ? meanA * dice.between(1.7, 2.6) : 0;
  const liftS = dice.between(0.0008, 0.0022);
  const cutS = dice.between(0.0001, 0.0004);
  const tailS = dice.between(0.001, 0.003);
  let p = 0;
  for (let k = 0; k < currentA.length; k++) {
    const t = k / TRACE_HZ;
    while (p + 1 < plan.shorts.length && (plan.shorts[p + 1] as { startS: number }).startS <= t)
      p++;
    const { startS, endS } = plan.shorts[p] as Plan['shorts'][number];
    const base = 0.5 * meanA;
    if (t < endS) {
      const part = (t - startS) / (endS - startS);
      const climb = lowA + (pinchA - lowA) * Math.max(0, (part - 0.15) / 0.85);
      currentA[k] = t > endS - cutS ? lowA : climb;
    } else {
      const since = t - endS - 0.0002;
      const high = Math.max(liftA, base);
      if (since < 0) currentA[k] = lowA;
      else if (since < liftS) currentA[k] = lowA + (high - lowA) * edge(since / 0.0003, 0.4);
      else currentA[k] = base + (high - base) * Math.exp(-(since - liftS) / tailS);
    }
  }
}

/**
 * Growth of the hanging drop as a sawtooth: 0 after it has left, 1 just before it leaves, by its
 * size.
 */
function dropSaw(plan: Plan, length: number): Float32Array {
  const saw = new Float32Array(length);
  let d = 0;
  let lastS = 0;
  for (let k = 0; k < length; k++) {
    const t = k / TRACE_HZ;
    while (d < plan.drops.length && (plan.drops[d] as { timeS: number }).timeS <= t) {
      lastS = (plan.drops[d] as { timeS: number }).timeS;
      d++;
    }
    const drop = plan.drops[d];
    if (!drop) break;
    saw[k] = Math.min(1, (t - lastS) / Math.max(1e-4, drop.timeS - lastS)) - 0.5;
  }
  return saw;
}

/** Draws voltage and current of a planned arc by joining shapes seen in oscillograms. */
export function drawTrace(dice: Dice, draft: Draft, plan: Plan, shape: PulseShape | null): Trace {
  const length = Math.round(plan.durationS * TRACE_HZ);
  const currentA = new Float32Array(length);
  const voltageV = new Float32Array(length);
  const burning = new Uint8Array(length).fill(1);
  for (const { startS, endS } of plan.shorts) {
    burning.fill(0, Math.ceil(startS * TRACE_HZ), Math.ceil(endS * TRACE_HZ));
  }

  // Current: level and wander, then the shapes, then scaled to the mean that was drawn.
  const dip = draft.mode === 'short-circuit';
  const swayA = dice.between(0.01, 0.05);
  const level = shape ? shape.baseA : dip ? draft.meanA * dice.between(0.55, 0.75) : draft.meanA;
  for (let k = 0; k < length; k++) currentA[k] = level * (1 + swayA * plan.wander.at(k / TRACE_HZ));
  if (plan.controlledDip) addControlledDip(dice, currentA, plan, draft.meanA);
  else {
    if (shape) addPulses(currentA, plan, shape);
    addShortRamps(dice, currentA, plan, draft.meanA);
  }
  let sum = 0;
  for (let k = 0; k < length; k++) sum += currentA[k] as number;
  const gain = (draft.meanA * length) / sum;
  // Peaks bend over above 400 A where a bridge makes them (250-450 A for 0.9-1.2 mm, from memory of
  // Norrish).
  const knee = shape ? Number.POSITIVE_INFINITY : Math.max(400, 1.2 * draft.meanA);
  for (let k = 0; k < length; k++) {
    const i = (currentA[k] as number) * gain;
    currentA[k] = i > knee ? knee + 0.35 * (i - knee) : i;
  }

  // Voltage: in a bridge 1-2 V and 8-20 mΩ (2-6 V at the terminals, common practice); in the arc a
  // slope of
  // 10-30 mΩ, an overshoot at re-ignition up to about 30 V, and the sawtooth of the drops, 0.2-1 V
  // and more
  // for large drops (common practice).
  const bridgeV = dice.between(0.8, 2);
  const bridgeOhm = dice.between(0.008, 0.02);
  const slopeOhm = shape ? dice.between(0.018, 0.036) : dice.between(0.01, 0.03);
  const large = draft.mode === 'globular';
  const sawV = large ? dice.ratio(0.8, 3.5) : dice.ratio(0.2, 1);
  const sawA = (draft.mode === 'pulsed-spray' ? 0.2 : 1) * dice.between(2, 8) * (large ? 2 : 1);
  const fuzzV = dice.ratio(0.12, 0.6);
  const fuzzS = dice.ratio(0.00004, 0.0006);
  const swayV = dice.ratio(0.15, 0.8);
  const overV = dice.between(2, 8);
  const overS = dice.ratio(0.0003, 0.002);
  const ripple = {
    v: dice.chance(0.4) ? dice.ratio(0.05, 0.5) : 0,
    hz: dice.pick([100, 300, 120, 360]),
  };
  const neckS = 0.0004;
  const saw = plan.drops.length > 0 ? dropSaw(plan, length) : null;
  const keep = Math.exp(-1 / (TRACE_HZ * fuzzS));
  const drive = Math.sqrt(1 - keep * keep) * fuzzV;
  // The arc root roams: 0.5-2.5 V with large drops, less with small ones (own choice), within 2-12
  // ms.
  const rootKeep = Math.exp(-1 / (TRACE_HZ * dice.ratio(0.002, 0.012)));
  const rootV = large ? dice.ratio(0.4, 2) : dice.ratio(0.08, 0.5);
  const rootDrive = Math.sqrt(1 - rootKeep * rootKeep) * rootV;
  // As a drop leaves the voltage leaps and falls back (Praveen and others 2009), here within 0.2-1
  // ms.
  const kickV = sawV * dice.between(0.1, 0.9);
  const kickKeep = Math.exp(-1 / (TRACE_HZ * dice.ratio(0.0002, 0.001)));
  let kick = 0;
  let lastHang = 0;
  // The choke lets the current follow a leaving drop within 0.2-1 ms.
  const chokeFollow = 1 - Math.exp(-1 / (TRACE_HZ * dice.ratio(0.0002, 0.001)));
  let choked = 0;
  let root = 0;
  let fuzz = 0;
  let over = 0;
  let s = -1;
  const overKeep = Math.exp(-1 / (TRACE_HZ * overS));
  let arcSum = 0;
  let arcCount = 0;
  let bridgeSum = 0;
  for (let k = 0; k < length; k++) {
    const t = k / TRACE_HZ;
    fuzz = keep * fuzz + drive * dice.noise();
    if (burning[k] === 0) {
      while (s + 1 < plan.shorts.length && (plan.shorts[s + 1] as { startS: number }).startS <= t)
        s++;
      const short = plan.shorts[Math.max(0, s)] as Plan['shorts'][number];
      const neck = Math.max(0, 1 - (short.endS - t) / neckS);
      const v = bridgeV + bridgeOhm * (currentA[k] as number) + 2 * neck * neck + 0.1 * fuzz;
      voltageV[k] = v;
      bridgeSum += v;
      over = overV * Math.min(1.2, (short.endS - short.startS) / 0.002);
      continue;
    }
    over *= overKeep;
    const hang = saw ? (saw[k] as number) : 0;
    if (hang < lastHang - 0.3) kick = kickV;
    kick *= kickKeep;
    lastHang = hang;
    choked += chokeFollow * (hang - choked);
    root = rootKeep * root + rootDrive * dice.noise();
    currentA[k] = (currentA[k] as number) + sawA * choked - 1.5 * root;
    const hum = ripple.v * Math.sin(2 * Math.PI * ripple.hz * t);
    const slope = slopeOhm * ((currentA[k] as number) - draft.meanA);
    const v =
      slope + over - sawV * hang + hum + fuzz + root + kick + swayV * plan.wander.at(t + 0.11);
    voltageV[k] = v;
    arcSum += v;
    arcCount++;
  }
  // One shift of all arc voltage brings the mean where it was drawn; edges take 20-80 µs.
  const shift = (draft.meanV * length - bridgeSum - arcSum) / Math.max(1, arcCount);
  const follow = 1 - Math.exp(-1 / (TRACE_HZ * dice.ratio(0.00002, 0.00008)));
  let v = draft.meanV;
  for (let k = 0; k < length; k++) {
    const goal = (voltageV[k] as number) + (burning[k] === 1 ? shift : 0);
    v += follow * (goal - v);
    voltageV[k] = Math.min(46, Math.max(0.3, v));
  }
  return { voltageV, currentA, burning };
}
