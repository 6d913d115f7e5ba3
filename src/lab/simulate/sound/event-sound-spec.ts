import type { Random } from '../../../core/index.js';
import { sometimes } from '../sometimes.js';

/** How single drops, arcs that strike anew and pulses sound. Pressures in Pa at 1 m. */
export interface EventSoundSpec {
  /** Share of the drops that are heard, a drop of the wire's size, power of the size, spread (ln), lag. */
  dropShare: number;
  dropPa: number;
  dropPower: number;
  dropSpread: number;
  dropLagS: number;
  /** Breath of noise: how it swells and dies, its band. */
  puffAttackS: number;
  puffDecayS: number;
  puffHz: number;
  puffQ: number;
  /** Low tone beside it, as a share. */
  thumpShare: number;
  thumpHz: number;
  thumpS: number;
  /** Share of the drops that burst. */
  burstShare: number;
  /** Crack of an electrical event of strength 1, power of the strength, spread (ln), tail and its band. */
  crackPa: number;
  crackPower: number;
  crackSpread: number;
  crackNoise: number;
  crackTailS: number;
  crackHz: number;
}

/**
 * All own choice, kept wide. Drops and electrical events are drawn alike, each by itself: in a third of the
 * arcs the one or the other is not heard at all.
 */
export function drawEventSounds(random: Random, hissPa: number): EventSoundSpec {
  return {
    dropShare: random.uniform(0.3, 1),
    dropPa: hissPa * sometimes(random, 0.65, 0.15, 15),
    dropPower: random.uniform(0.5, 3),
    dropSpread: random.uniform(0.2, 0.9),
    dropLagS: random.logUniform(2e-4, 6e-3),
    puffAttackS: random.logUniform(2e-4, 2e-3),
    puffDecayS: random.logUniform(7e-4, 1e-2),
    puffHz: random.logUniform(500, 7000),
    puffQ: random.uniform(0.4, 1.5),
    thumpShare: random.next() < 0.5 ? random.uniform(0, 1.2) : 0,
    thumpHz: random.logUniform(70, 500),
    thumpS: random.logUniform(3e-3, 1.5e-2),
    burstShare: random.next() < 0.5 ? random.uniform(0, 0.3) : 0,
    crackPa: hissPa * sometimes(random, 0.65, 0.15, 15),
    crackPower: random.uniform(0.4, 1.5),
    crackSpread: random.uniform(0.05, 0.7),
    crackNoise: random.uniform(0.3, 2),
    crackTailS: random.logUniform(2e-4, 2.5e-3),
    crackHz: random.logUniform(1000, 8000),
  };
}
