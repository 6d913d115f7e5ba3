import type { EventKind } from '../world.js';
import type { Dice } from './dice.js';
import { drawFamily, type Family } from './family.js';
import { mix, rms, scale } from './filters.js';
import { addGrain, addKnock } from './grain.js';
import { addSteady, drawJet } from './jet.js';
import type { Plan } from './plan.js';
import type { PulseShape } from './pulsing.js';
import { SlowCurve } from './slow.js';

/** Rate of the dry sound. */
export const SOUND_HZ = 48000;

/** The dry sound in parts that add up. */
export interface DrySound {
  events: Record<EventKind, Float32Array>;
  hiss: Float32Array;
}

function addShorts(out: DrySound, plan: Plan, family: Family, jet: Float32Array, dice: Dice): void {
  const { short, reignition } = out.events;
  for (const { startS, endS, peakRatio } of plan.shorts) {
    const strength =
      family.crackGain * dice.around(1, family.gainSpread) * (0.35 + 0.35 * peakRatio);
    // Contact: the power falls, the pressure with it (ISOPE 1995, abstract).
    addKnock(short, SOUND_HZ, startS, 2 * family.knockS, -strength * family.contactGain);
    addGrain(short, SOUND_HZ, startS, family, 0.3 * strength * family.contactGain, 0.6, 0, dice);
    const fadeS = 0.0002;
    const from = Math.ceil(startS * SOUND_HZ);
    const to = Math.min(short.length, Math.floor((endS + 3 * fadeS) * SOUND_HZ));
    for (let k = from; k < to; k++) {
      const t = k / SOUND_HZ;
      const gate = Math.min(1, (t - startS) / fadeS) * Math.min(1, Math.exp(-(t - endS) / fadeS));
      short[k] = (short[k] as number) - family.hush * gate * (jet[k] as number);
    }
    // Re-ignition: the main source of sound in dip transfer (Grad and others 2004).
    addGrain(reignition, SOUND_HZ, endS, family, strength, 1, dice.around(1, 0.3), dice);
  }
}

/**
 * A free drop: the jet swells while it hangs and drops back as it leaves, with a small grain on
 * top.
 */
function addDrops(out: DrySound, plan: Plan, family: Family, jet: Float32Array, dice: Dice): void {
  const { drop } = out.events;
  const reach = dice.between(0.25, 1);
  let lastS = 0;
  for (const { timeS, size } of plan.drops) {
    const weight = Math.min(2.2, size ** 1.5);
    const depth = Math.min(0.8, family.dropDepth * weight * dice.around(1, 0.2));
    const hangS = Math.max(0.0002, reach * Math.min(0.03, timeS - lastS));
    const backS = 0.15 * hangS;
    const from = Math.max(0, Math.ceil((timeS - hangS) * SOUND_HZ));
    const to = Math.min(drop.length, Math.ceil((timeS + 4 * backS) * SOUND_HZ));
    for (let k = from; k < to; k++) {
      const since = k / SOUND_HZ - timeS;
      const m = since < 0 ? 1 + since / hangS : Math.exp(-since / backS);
      drop[k] = (drop[k] as number) + depth * m * (jet[k] as number);
    }
    const gain = family.dropGain * weight * dice.around(1, family.gainSpread);
    addGrain(drop, SOUND_HZ, timeS, family, gain, 0.5, 0, dice);
    lastS = timeS;
  }
}

/**
 * Pulses: the column follows the power; its edges are heard as a buzz, and the jet breathes with
 * it.
 */
function addPulses(
  out: DrySound,
  plan: Plan,
  shape: PulseShape,
  family: Family,
  jet: Float32Array,
  dice: Dice,
): void {
  const { pulse } = out.events;
  const edges = dice.between(0.1, 0.6);
  for (const { startS, fallS } of plan.pulses) {
    const gain = family.buzzGain * dice.around(1, 0.06);
    const upGain = gain * Math.sqrt(0.0004 / shape.riseS);
    const downGain = -gain * Math.sqrt(0.0004 / shape.fallS);
    for (const [timeS, widthS, g] of [
      [startS, shape.riseS, upGain],
      [fallS, shape.fallS, downGain],
    ] as const) {
      const end = Math.min(pulse.length, (timeS + widthS) * SOUND_HZ);
      for (let k = Math.ceil(timeS * SOUND_HZ); k < end; k++) {
        const part = (k / SOUND_HZ - timeS) / widthS;
        pulse[k] = (pulse[k] as number) + g * Math.sin(Math.PI * part) ** 2;
      }
      addGrain(pulse, SOUND_HZ, timeS, family, edges * Math.abs(g), 0.4, 0, dice);
    }
    const to = Math.min(pulse.length, Math.ceil((fallS + 4 * shape.fallS) * SOUND_HZ));
    for (let k = Math.ceil(startS * SOUND_HZ); k < to; k++) {
      const t = k / SOUND_HZ;
      const up = Math.min(1, (t - startS) / shape.riseS);
      const m = up * Math.min(1, Math.exp(-(t - fallS) / shape.fallS));
      pulse[k] = (pulse[k] as number) + family.buzzDepth * m * (jet[k] as number);
    }
  }
}

/** Spatter that lands and cracks: one law for every mode, part of what is not an event. */
function addSpatter(out: DrySound, plan: Plan, family: Family, dice: Dice): void {
  const rate = dice.ratio(0.3, 14);
  let t = dice.wait(1 / rate, 1);
  while (t < plan.durationS - 0.01) {
    const gain = family.crackGain * dice.ratio(0.05, 0.6);
    addGrain(out.hiss, SOUND_HZ, t, family, gain, dice.ratio(0.3, 2), 0, dice);
    t += dice.wait(1 / rate, 1);
  }
}

/** Draws the dry sound of a planned arc: effective value from one law for all modes. */
export function drawSound(
  dice: Dice,
  familyDice: Dice,
  plan: Plan,
  shape: PulseShape | null,
): DrySound {
  const length = Math.round(plan.durationS * SOUND_HZ);
  const family = drawFamily(familyDice);
  const jet = drawJet(dice, length, SOUND_HZ);
  const flicker = new SlowCurve(dice, plan.durationS, dice.between(0.02, 0.2), 0.5, 25);
  const firstS = plan.shorts[0]?.endS ?? 0;
  for (let k = 0; k < length; k++) {
    const t = k / SOUND_HZ;
    const lit = t < firstS ? 0.15 : 1 - 0.85 * Math.exp(-(t - firstS) / 0.02);
    jet[k] = (jet[k] as number) * lit * Math.exp(flicker.at(t));
  }
  const out: DrySound = {
    events: {
      short: new Float32Array(length),
      reignition: new Float32Array(length),
      drop: new Float32Array(length),
      pulse: new Float32Array(length),
    },
    hiss: new Float32Array(length),
  };
  addSteady(dice, out.hiss, SOUND_HZ);
  scale(out.hiss, dice.ratio(0.3, 1));
  mix(out.hiss, jet);
  addSpatter(out, plan, family, dice);
  addShorts(out, plan, family, jet, dice);
  addDrops(out, plan, family, jet, dice);
  if (shape) addPulses(out, plan, shape, family, jet, dice);

  // The hand changes the distance; then all parts take one gain, so that level tells nothing.
  const parts = [...Object.values(out.events), out.hiss];
  const handDb = dice.ratio(0.2, 2);
  const total = new Float32Array(length);
  for (const part of parts) mix(total, part);
  const gain = dice.ratio(0.02, 0.5) / Math.max(1e-9, rms(total));
  const curve = new Float32Array(length);
  for (let k = 0; k < length; k++) {
    curve[k] = gain * 10 ** ((handDb * plan.wander.at(k / SOUND_HZ + 0.07)) / 20);
  }
  for (const part of parts) {
    for (let k = 0; k < length; k++) part[k] = (part[k] as number) * (curve[k] as number);
  }
  return out;
}
