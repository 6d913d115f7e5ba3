import type { EventKind } from '../world.js';
import type { Machine } from './gear.js';
import type { Plan } from './plan.js';
import { Dice } from './random.js';
import { drawSource } from './source.js';

/** What was seen of the metal: when, and how much of it crossed, mm3. */
export interface Seen {
  kind: EventKind;
  atS: number;
  volumeMm3: number;
  /** Current at that time, A. */
  currentA: number;
}

export interface Crossing {
  rateHz: number;
  voltageV: Float32Array;
  currentA: Float32Array;
  /** Sideways run of the arc's root under a restless bead, mm. */
  swayMm: Float32Array;
  seen: Seen[];
}

const STEP_S = 25e-6;
const EVERY = 2;

/** Diameter, in wires, of the drop that the tip holds on average at a current. */
function heldDrop(plan: Plan, currentA: number): number {
  const { combo } = plan;
  // CO2 pushes the drop up: 1.5 to 2.2 wires (published "greater than the wire", up to 2-3).
  if (combo.sprayFromA === null) return Math.max(1.5, 2.35 - currentA / (400 * combo.wireMm));
  const x = currentA / combo.sprayFromA;
  const large = Math.max(1.55, 2.5 - 0.95 * x);
  // Thin wires do not get below their own diameter (published, below 0.9 mm); slopes own choice.
  const small = Math.max(0.72, (combo.wireMm < 0.95 ? 1.04 : 0.98) - 0.22 * (x - 1));
  return small + (large - small) / (1 + Math.exp((x - 1) / 0.035));
}

/**
 * The tip as an oscillator of two ways out: the hanging bead grows, and either touches the pool (a
 * bridge
 * that the surface tension drains and the current pinches) or is let go (a neck that gives way).
 */
export function crossMetal(
  plan: Plan,
  machine: Machine,
  durationS: number,
  seed: number,
): Crossing {
  const dice = new Dice(seed, 'metal');
  const source = drawSource(plan, machine);
  const { metal, combo, habit } = plan;
  const section = (Math.PI / 4) * combo.wireMm ** 2;
  const ball = (Math.PI / 6) * combo.wireMm ** 3;
  const repelled = combo.sprayFromA === null;
  const pinchA = combo.sprayFromA ?? 230 * combo.wireMm;
  // I2t of a neck, from memory about 500 A2s at most; own choice
  const neckI2s = 0.0055 * pinchA * pinchA;
  // capillary times a bridge lasts; own choice
  const drain = dice.between(1.2, 2.4) * (repelled ? 1.6 : 1);
  const spare = dice.between(0.12, 0.28); // share of a bead that stays; own choice
  const unsteady = dice.between(0.15, 1); // how alike one crossing is to the next; own choice
  const fleeting = 0.13 * unsteady; // touches that cross nothing; own choice
  const unrest = 0.2 + 0.0015 * combo.co2; // of the arc root, mm for a bead of 1 mm; own choice
  const stepsS = Math.round(durationS / STEP_S);
  const voltageV = new Float32Array(Math.floor(stepsS / EVERY));
  const currentA = new Float32Array(voltageV.length);
  const swayMm = new Float32Array(voltageV.length);
  const seen: Seen[] = [];
  const see = (kind: EventKind, step: number, volumeMm3: number) =>
    seen.push({ kind, atS: step * STEP_S, volumeMm3, currentA: source.currentA });

  let gap = 0.2;
  let bead = 0.15 * ball;
  let bridged = true;
  let neck = 0.6;
  let drainS = 1e-3;
  let passes = false;
  let loosening = 0;
  let poolMm = 0;
  let poolSpeed = 0;
  let overshootV = 0;
  let flickerV = 0;
  let rootMm = 0;
  let lagA = 0;
  let held = 1.5;
  let feel = 1;
  const poolW = 2 * Math.PI * habit.poolHz;
  // The arc's force stirs the pool by up to 0.2 mm (one sigma) at 250 A: own choice.
  const stir = ((0.2 * unsteady) / 250) * Math.sqrt(0.7 * poolW ** 3 * EVERY * STEP_S);
  const handPhase = dice.between(0, 6);
  const flickerKeep = Math.exp((-EVERY * STEP_S) / 2e-4);
  const rootKeep = Math.exp((-EVERY * STEP_S) / 7e-3);
  const flickerPush = 0.3 * Math.sqrt(1 - flickerKeep ** 2); // 0.3-0.5 V in spray: common practice
  const rootPush = Math.sqrt(1 - rootKeep ** 2);
  const offStep = stepsS - Math.round(0.03 / STEP_S);
  let out = false;
  let endStep = stepsS;

  for (let step = 0; step < stepsS; step++) {
    const timeS = step * STEP_S;
    const on = step < offStep;
    const i = source.currentA;
    lagA += (STEP_S / 3e-4) * (i - lagA);
    // Pool surface: a damped swing, pushed by every crossing.
    poolSpeed -= STEP_S * (poolW * poolW * poolMm + 0.35 * poolW * poolSpeed);
    poolMm += STEP_S * poolSpeed;
    const hand = habit.handMm * Math.sin(2 * Math.PI * habit.handHz * timeS + handPhase);
    const long = Math.cbrt((6 * bead) / Math.PI);
    if (step % EVERY === 0) held = heldDrop(plan, lagA);
    const room = gap - 0.92 * long - poolMm;
    const freeStick = Math.max(4, plan.stickOutMm - gap + hand);
    const feed = plan.feedMmPerS * (on ? Math.min(1, 0.6 + timeS / 0.2) : 0);
    const ohmic = (metal.meltByOhm * freeStick * i * i) / section;
    let v: number;
    if (bridged) {
      v = 0.8 + i * (0.007 + 0.003 / (Math.max(0, neck) + 0.2)) + metal.ohmPerMm * freeStick * i;
      gap += STEP_S * (ohmic / section - feed);
      bead += STEP_S * ohmic * metal.swell;
      neck -= (STEP_S / drainS) * (0.6 + (i / (1.15 * pinchA)) ** 2);
      if (neck <= 0 && i > 25) {
        bridged = false;
        const crossed = passes ? (1 - spare) * bead : 0;
        bead -= crossed;
        see('reignition', step, crossed);
        overshootV = dice.between(2, 6); // up to 30 V at the re-ignition: common practice
        poolSpeed -= 85 * dice.spread(0.35 * unsteady) + 0.25 * i; // own choice
        gap = Math.max(gap, 0.92 * Math.cbrt((6 * bead) / Math.PI) + poolMm + 0.25);
        loosening = 0;
      }
    } else {
      if (step % EVERY === 0) {
        flickerV = flickerKeep * flickerV + flickerPush * dice.gauss();
        const reach = unrest * long ** 1.5 * Math.max(0.15, 1.25 * (long / combo.wireMm) - 0.8);
        rootMm = rootKeep * rootMm + rootPush * reach * dice.gauss();
        poolSpeed += stir * i * dice.gauss();
      }
      overshootV *= 1 - STEP_S / 3e-4;
      // The arc climbs round a small bead and hangs below a large one.
      const covered = Math.min(0.8, 0.25 + 0.25 * held);
      const column = Math.max(0.1, gap + hand - covered * long - poolMm + rootMm);
      const necking = loosening > 0.5 ? 0.5 * (loosening - 0.5) : 0;
      v =
        plan.fallV +
        0.012 * i +
        plan.gradientVPerMm * column +
        metal.ohmPerMm * freeStick * i +
        overshootV +
        (1 + (repelled ? 0.8 : 0)) * flickerV +
        necking;
      if (out) v = 0;
      const melted = metal.meltByArc * i + ohmic;
      gap += STEP_S * (melted / section - feed);
      bead += STEP_S * melted * metal.swell;
      const over = bead / (ball * (held * feel) ** 3) - 1;
      const capillaryS = Math.sqrt((metal.density * long ** 3) / (8 * metal.tension));
      // A neck is pinched off only where the arc has room to climb round the bead.
      const free = Math.max(0, Math.min(1, (room + 0.1) / (0.9 * combo.wireMm)));
      if (loosening > 0.6) loosening += STEP_S * (0.8 / capillaryS + (i * i) / neckI2s);
      else if (over > -0.12) {
        loosening += STEP_S * free * (over + 0.2) * ((4 * i * i) / neckI2s + 0.8 / capillaryS);
      } else loosening *= 1 - STEP_S / 2e-3;
      if (loosening >= 1 && !out) {
        const dropped = (1 - 0.7 * spare) * bead;
        bead -= dropped;
        see('drop', step, dropped);
        poolSpeed += (4 * dropped) / ball; // own choice
        loosening = 0;
        feel = dice.spread((0.03 + 0.05 * held) * unsteady); // own choice
      }
      if (room + Math.min(0, rootMm) <= 0 && !out) {
        bridged = true;
        passes = !dice.chance(fleeting) && bead > 0.25 * ball;
        neck = passes ? 1 : dice.between(0.12, 0.3);
        drainS = drain * capillaryS * dice.spread(0.2 * unsteady);
        see('short', step, 0);
      }
      if (!on && i < 8 && !out) {
        out = true;
        endStep = step;
      }
    }
    if (gap > plan.stickOutMm - 3) gap = plan.stickOutMm - 3;
    if (step % EVERY === 0) {
      const at = step / EVERY;
      if (at < voltageV.length) {
        voltageV[at] = v;
        currentA[at] = i;
        swayMm[at] = bridged ? 0 : rootMm;
      }
    }
    source.step(STEP_S, v, bridged, on);
    if (out) source.currentA = 0;
    if (source.pulseBegins) see('pulse', step, 0);
  }
  const end = Math.min(voltageV.length, Math.ceil(endStep / EVERY) + 1);
  return {
    rateHz: Math.round(1 / (STEP_S * EVERY)),
    voltageV: voltageV.slice(0, end),
    currentA: currentA.slice(0, end),
    swayMm: swayMm.slice(0, end),
    seen,
  };
}
