import type { Dice } from './dice.js';
import type { Draft } from './setup.js';
import { SlowCurve } from './slow.js';

/** A bridge between wire and bath. */
export interface Short {
  startS: number;
  endS: number;
  /** Current at its end over the mean current. */
  peakRatio: number;
}

/** A drop that leaves without touching. */
export interface Drop {
  timeS: number;
  /** Diameter over wire diameter. */
  size: number;
}

/** One current pulse: the times are those where its rise and its fall begin. */
export interface Pulse {
  startS: number;
  fallS: number;
}

/** All that happens in one arc, in order of time. */
export interface Plan {
  durationS: number;
  shorts: Short[];
  drops: Drop[];
  pulses: Pulse[];
  /** Dip transfer whose current the source shapes: low before the break, lifted after it. */
  controlledDip: boolean;
  /** Load and hand: shared by trace and sound, standard deviation about 1. */
  wander: SlowCurve;
  /** Diameter law of the drops, mm; null where all metal crosses by bridges. */
  dropMm: number | null;
}

const ball = (mm: number): number => (Math.PI / 6) * mm ** 3;

/** An arc in which nothing has happened yet but the ignition. */
export function emptyPlan(dice: Dice, durationS: number): Plan {
  const plan: Plan = {
    durationS,
    shorts: [],
    drops: [],
    pulses: [],
    controlledDip: false,
    // A hand sways at a few tenths to a few times a second (own choice).
    wander: new SlowCurve(dice, durationS, 1, 0.2, 5),
    dropMm: null,
  };
  // The wire touches, glows and lets go: 1.5 to 12 ms (own choice); at times it stutters.
  let t = 0;
  const stutters = dice.chance(0.4) ? dice.whole(1, 4) : 0;
  for (let k = 0; k <= stutters; k++) {
    const endS = t + dice.ratio(0.0015, k === 0 ? 0.012 : 0.008);
    plan.shorts.push({ startS: t, endS, peakRatio: dice.between(1.3, 2.6) });
    t = endS + dice.ratio(0.006, 0.05);
  }
  return plan;
}

/** Time from which the arc burns as set. */
export function settledS(plan: Plan): number {
  return (plan.shorts[plan.shorts.length - 1]?.endS ?? 0) + 0.004;
}

/** Dip transfer: bridges of 2 to 6 ms, or of about 1 ms and very even, or shaped by the source. */
export function planDip(dice: Dice, draft: Draft, plan: Plan): void {
  const wireMm = draft.setup.wireDiameterMm;
  // One bridge carries a ball of 0.75 to 1.7 wire diameters (own choice); the volume melted gives
  // the rate,
  // kept in 22-200 /s (MIG handbook: 20-200 /s).
  const carried = ball(wireMm * dice.ratio(0.75, 1.7));
  const wanted = draft.meltMm3PerS / carried;
  const rate = wanted > 195 ? dice.ratio(100, 195) : Math.max(22, wanted);
  plan.controlledDip = rate < 150 && dice.chance(0.2);
  const even = !plan.controlledDip && rate > 85 && dice.chance(0.5);
  // Shorts: about 1 ms at 180 /s, very even (R. D. Smith); else 2-6 ms (from memory of Norrish's
  // oscillograms).
  const longest = 0.42 / rate;
  const shortS = Math.min(
    longest,
    even ? dice.ratio(0.0008, 0.0018) : dice.ratio(0.002, draft.inside ? 0.006 : 0.009),
  );
  const shortCv = even ? dice.between(0.06, 0.15) : dice.between(0.08, 0.4);
  const arcCv = plan.controlledDip
    ? dice.between(0.03, 0.12)
    : even
      ? dice.between(0.05, 0.16)
      : dice.ratio(0.08, draft.inside ? 0.6 : 0.9);
  const peak = even ? dice.between(1.35, 2) : dice.between(1.5, 2.5);
  const incipient = plan.controlledDip || even || dice.chance(0.4) ? 0 : dice.between(0, 0.22);
  const sway = dice.ratio(0.008, 0.12);
  let t = settledS(plan);
  for (;;) {
    const touches = dice.chance(incipient);
    const slow = Math.exp(sway * plan.wander.at(t));
    const arcS = dice.wait((1 / rate - shortS) * slow * (touches ? 0.5 : 1), arcCv);
    const startS = t + Math.max(0.0012, arcS);
    const heldS = touches ? dice.ratio(0.0003, 0.0012) : dice.wait(shortS, shortCv);
    const endS = startS + Math.max(0.0003, heldS);
    if (endS > plan.durationS - 0.004) break;
    const reached = touches ? 1.05 : peak * dice.around(1, 0.1) * (heldS / shortS) ** 0.3;
    plan.shorts.push({ startS, endS, peakRatio: Math.min(3, reached) });
    t = endS;
  }
}

/** Large drops: erratic and touching in CO2, slow and free in argon-rich gas. */
export function planGlobular(dice: Dice, draft: Draft, plan: Plan): void {
  const wireMm = draft.setup.wireDiameterMm;
  const co2 = draft.setup.gas === 'CO2' || draft.setup.gas === 'Ar+25CO2';
  // Larger than the wire, up to two or three times it (MIG handbook; API RP 577); the melt gives
  // the rate.
  const slowest = co2 ? 4 : 1;
  const widest = Math.cbrt(((6 / Math.PI) * draft.meltMm3PerS) / slowest) / wireMm;
  const size = Math.min(widest, co2 ? dice.ratio(1.2, 2.2) : dice.ratio(1.4, 2.8));
  const rate = Math.min(60, draft.meltMm3PerS / ball(size * wireMm));
  // CO2: coefficient of variation half and more (common practice); argon-rich far steadier (own
  // choice).
  const cv = co2 ? dice.between(0.45, 0.85) : dice.between(0.15, 0.45);
  const low = draft.inside ? 0 : 0.15;
  const touching = co2
    ? dice.between(0.12 + low, 0.5)
    : dice.chance(0.5)
      ? dice.between(0, 0.1 + low)
      : 0;
  const brushing = co2 ? dice.ratio(0.3, 8) : dice.ratio(0.05, 0.6);
  plan.dropMm = size * wireMm;
  let t = settledS(plan);
  let brushS = t + dice.wait(1 / brushing, 1);
  for (;;) {
    const waitS = Math.max(0.004, dice.wait(1 / rate, cv));
    const grown = Math.cbrt(((6 / Math.PI) * draft.meltMm3PerS * waitS) / wireMm ** 3);
    const nextS = t + waitS;
    if (nextS > plan.durationS - 0.015) break;
    if (brushS > t + 0.003 && brushS < nextS - 0.003) {
      const endS = brushS + dice.ratio(0.0003, 0.0015);
      plan.shorts.push({ startS: brushS, endS, peakRatio: dice.between(1, 1.15) });
    }
    while (brushS < nextS) brushS += dice.wait(1 / brushing, 1);
    t = nextS;
    if (dice.chance(touching)) {
      const endS = nextS + Math.min(0.01, dice.around(0.0035, 0.4));
      plan.shorts.push({ startS: nextS, endS, peakRatio: dice.between(1.2, 1.9) });
      t = endS;
    } else {
      plan.drops.push({ timeS: nextS, size: Math.min(3, grown) });
    }
  }
}

/** Small drops in line with the wire: 100 to 300 a second projected, more when streaming. */
export function planSpray(dice: Dice, draft: Draft, plan: Plan): void {
  const wireMm = draft.setup.wireDiameterMm;
  const streaming = wireMm >= 1 && dice.chance(0.2);
  // Under 0.035 in the mean drop did not fall under the wire's diameter (Soderstrom and Mendez
  // 2008).
  const size = streaming
    ? dice.ratio(0.5, 0.68)
    : wireMm < 0.95
      ? dice.ratio(1, 1.2)
      : dice.ratio(0.8, 1.1);
  const rate = Math.min(1100, draft.meltMm3PerS / ball(size * wireMm));
  const cv = streaming ? dice.between(0.15, 0.4) : dice.ratio(0.05, 0.3);
  // Too few volts let the bath touch now and then.
  const brushing = !draft.inside && dice.chance(0.6) ? dice.ratio(1, 9) : dice.ratio(0.01, 0.3);
  plan.dropMm = size * wireMm;
  const sway = dice.ratio(0.006, 0.08);
  let t = settledS(plan);
  let brushS = t + dice.wait(1 / brushing, 1);
  for (;;) {
    const slow = Math.exp(sway * plan.wander.at(t));
    const waitS = Math.max(0.0003, dice.wait(slow / rate, cv));
    t += waitS;
    if (t > plan.durationS - 0.004) break;
    if (t > brushS) {
      const endS = t + dice.ratio(0.0004, 0.0025);
      plan.shorts.push({ startS: t, endS, peakRatio: dice.between(1, 1.3) });
      brushS = endS + dice.wait(1 / brushing, 1);
      t = endS;
    } else {
      plan.drops.push({ timeS: t, size: size * Math.cbrt((waitS * rate) / slow) });
    }
  }
}
