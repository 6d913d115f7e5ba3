import type { Mode, Random } from '../../../core/index.js';
import type { FamilyTraits } from '../families.js';
import type {
  ArcSpec,
  BridgingSpec,
  DetachmentSpec,
  EndsSpec,
  GasSpec,
  HandSpec,
  PoolSpec,
  ProbeSpec,
  WireSpec,
} from '../scenario.js';
import { transitionCurrentA, wireOhmPerMm } from './materials.js';

/** How drops let go, by gas. The transition scatters by some 8 % about its published line; all else is own choice, kept wide. */
export function drawDetachment(
  random: Random,
  traits: FamilyTraits,
  wire: WireSpec,
  gas: GasSpec,
): DetachmentSpec {
  const transition = transitionCurrentA(wire.material, wire.diameterMm, gas);
  const rich = gas.co2Percent >= 15 && random.next() < 0.5 ? random.uniform(1, 1.3) : 1;
  const active = Math.min(1, gas.co2Percent / 50);
  const leave = random.uniform(0.08, 0.3);
  return {
    law: traits.detachment,
    transitionA: transition * rich * Math.exp(0.08 * random.normal()),
    transitionWidth: random.uniform(...traits.transitionWidth),
    rootAngle: active >= 0.5 ? random.uniform(0.9, 1.6) : random.uniform(1.6, 2.3),
    repulsion: active >= 0.5 ? random.uniform(0, 0.8) : 0,
    retain: random.uniform(0.75, 1.1),
    maxRatio: random.uniform(2, 3.4),
    leastRatio: drawLeastDrop(random, wire, gas) / Math.cbrt(1 - leave),
    thinning: random.uniform(0.6, 2.2),
    taperS: random.logUniform(0.001, 0.012),
    scatter: random.uniform(...traits.dropScatter),
    leave,
    restFactor: random.uniform(0.3, 1.6),
    neckFactor: random.logUniform(0.2, 0.9),
    bumpV: random.logUniform(0.1, 2),
    wobble: active >= 0.5 ? random.uniform(0.06, 0.35) : random.uniform(0.01, 0.15),
    leapShare: active >= 0.5 ? random.uniform(0, 0.5) : random.uniform(0, 0.15),
  };
}

/**
 * Drop at the transition, in wire diameters: projected spray has drops about as thick as the wire (Komen et al.
 * 2018); from wires under 0.035 in they were never thinner than it in mixes under 30 % CO2 (Soderstrom & Mendez
 * 2008). The necking adds to it. Widths are own choice.
 */
function drawLeastDrop(random: Random, wire: WireSpec, gas: GasSpec): number {
  const thin = wire.diameterMm < 0.889 && gas.co2Percent < 30;
  return thin ? random.uniform(1.12, 1.4) : random.uniform(0.88, 1.06);
}

/** Fall of the arc that steel and aluminium have in this gas, V: common practice, no source. */
export function fallRangeV(wire: WireSpec, gas: GasSpec): readonly [number, number] {
  const shift = 3 * Math.min(1, gas.co2Percent / 100) + (wire.material === 'aluminium' ? -2.5 : 0);
  return [13 + shift, 17 + shift];
}

/** Arc voltage and its unrest by gas: levels are common practice, no source; unrest is own choice, kept wide. */
export function drawArc(
  random: Random,
  traits: FamilyTraits,
  wire: WireSpec,
  gas: GasSpec,
): ArcSpec {
  const active = Math.min(1, gas.co2Percent / 100);
  // One connection in six is bad: the load on the source wanders by some tenths of a volt to a volt.
  const worn = random.next() < 1 / 6;
  return {
    fallV: random.uniform(...fallRangeV(wire, gas)),
    ohm: random.uniform(0.008, 0.03),
    fieldVPerMm: random.uniform(0.5, 0.95) * (1 + active * random.uniform(0.5, 1.2)),
    wireOhmPerMm: wireOhmPerMm(wire.material, wire.diameterMm) * random.uniform(0.7, 1.3),
    noiseV: traits.noiseScale * random.logUniform(0.12, 0.9) * (1 + active),
    noiseHz: random.logUniform(200, 6000),
    slowV: traits.noiseScale * random.logUniform(0.05, 0.7) * (1 + 1.5 * active),
    slowHz: random.logUniform(4, 120),
    strayOhm: worn ? random.logUniform(8e-4, 5e-3) : 0,
    strayHz: worn ? random.logUniform(0.3, 30) : 1,
  };
}

/** How bridges last and burst: own choice, kept wide about bridges of a few milliseconds. */
export function drawBridging(
  random: Random,
  traits: FamilyTraits,
  wire: WireSpec,
  gas: GasSpec,
  aim: Mode,
): BridgingSpec {
  const size = wire.diameterMm / 1.2;
  const active = gas.co2Percent >= 25;
  return {
    law: traits.bridging,
    timeFactor: random.logUniform(...traits.timeFactor),
    pinchA: random.uniform(160, 380) * Math.sqrt(size),
    actionA2s: random.logUniform(10, 90) * size ** 2.5,
    spread: random.uniform(...traits.spread),
    leave: random.uniform(0.1, 0.4),
    incipientShare: drawIncipientShare(random, active, aim),
    incipientS: random.logUniform(1.5e-4, 1.2e-3),
    contactV: random.uniform(0.5, 2.5),
    bridgeOhm: random.uniform(0.004, 0.016),
    riseS: random.logUniform(...traits.riseS),
    overshootV: random.uniform(0, 10),
    ruptureGapMm: random.uniform(0.1, 0.7),
  };
}

/**
 * Share of contacts that part again without metal; a repelled drop in CO2 may bounce most of the time, above all
 * where the arc is long enough for most of the metal to fall freely.
 */
function drawIncipientShare(random: Random, active: boolean, aim: Mode): number {
  if (active && aim === 'globular') return random.uniform(0.5, 0.97);
  if (random.next() < 0.4) return 0;
  if (active && random.next() < 0.3) return random.uniform(0.4, 0.9);
  return random.uniform(0, active ? 0.4 : 0.25);
}

/** Pool under the arc; 30 to 150 Hz (common practice, no source), the rest own choice. */
export function drawPool(random: Random, traits: FamilyTraits): PoolSpec {
  return {
    law: traits.pool,
    hz: random.logUniform(30, 150),
    damping: random.uniform(...traits.poolDamping),
    noiseMm: random.logUniform(0.01, 0.3),
    kickMm: random.logUniform(0.05, 0.6),
    impactMm: random.logUniform(0.005, 0.12),
  };
}

/** A robot's steady torch or a hand's; one hand in eight lets the distance wander far. Own choice. */
export function drawHand(random: Random): HandSpec {
  if (random.next() < 0.4) {
    return { wanderMm: random.uniform(0, 0.1), wanderHz: 1, weaveMm: 0, weaveHz: 0 };
  }
  const far = random.next() < 1 / 8;
  return {
    wanderMm: far ? random.uniform(1.2, 3) : random.uniform(0.1, 1.2),
    wanderHz: random.logUniform(0.2, 3),
    weaveMm: random.next() < 0.4 ? random.uniform(0.1, 0.8) : 0,
    weaveHz: random.uniform(0.5, 4),
  };
}

/** Strike and crater: own choice, with the fourth power of the diameter for what heats its cross-section. */
export function drawEnds(random: Random, diameterMm: number): EndsSpec {
  return {
    runInShare: random.uniform(0.15, 1),
    strikeA2s: 60 * diameterMm ** 4 * random.logUniform(0.5, 8),
    craterS: random.next() < 0.5 ? 0 : random.logUniform(0.05, 0.9),
  };
}

/** Logger: gain, noise, steps, filter (common practice, no source). */
export function drawProbe(random: Random): ProbeSpec {
  const fullScaleV = random.pick([60, 100, 100, 200]);
  return {
    noiseV: random.logUniform(0.01, 0.4),
    noiseA: random.logUniform(0.2, 6),
    leadOhm: random.uniform(0, 0.012),
    humV: random.next() < 0.6 ? 0 : random.logUniform(0.02, 0.5),
    humHz: random.pick([50, 60]),
    fullScaleV,
    fullScaleA: random.pick([500, 600, 1000]),
    bits: random.pick([10, 12, 12, 14, 16]),
    antiAliasHz: random.logUniform(2000, 12000),
    offsetA: random.next() < 0.6 ? 0 : random.normal(0, 3),
  };
}
