import type { Random } from '../../../core/index.js';
import { ArcError } from '../../../core/index.js';
import { sometimes } from '../sometimes.js';
import { drawEventSounds, type EventSoundSpec } from './event-sound-spec.js';
import { drawFlutter, type FlutterSpec } from './flutter.js';
import { drawSwells, type SwellSpec } from './swells.js';

/** Families in which all sound but spatter, and perhaps clicks of drops, follows the power of the arc. */
export const POWER_FAMILIES = ['monopole', 'absorbing', 'resonant'] as const;
/**
 * Families of assumptions about how the arc makes sound. In `voiced` the single events sound as well; in
 * `textured` the hiss swells at them; in `unbalanced` hiss may drown the impulses or be hardly there.
 */
export const ACOUSTIC_FAMILIES = [...POWER_FAMILIES, 'voiced', 'textured', 'unbalanced'] as const;
export type AcousticFamily = (typeof ACOUSTIC_FAMILIES)[number];

/** How one run sounds in free air at the microphone. Pressures in Pa at 1 m. */
export interface AcousticScenario {
  family: AcousticFamily;
  seed: number;
  rateHz: number;
  distanceM: number;
  /** Share of the ideal monopole that is left after absorption in and near the arc. */
  pulseGain: number;
  /** Corner of the plasma's own inertia, Hz. */
  pulseHz: number;
  /** Power law of `absorbing` (1 is linear) and what is left of rarefactions. */
  exponent: number;
  negativeShare: number;
  /** Part of the pulse source that follows the square of the current (jet pressure). */
  jetShare: number;
  /** Ringing of plate, nozzle and fixture: frequency, Q, share. */
  modes: { hz: number; q: number; gain: number }[];
  /** Turbulence at 5 kW, its band, how it follows power and arc voltage, how fast. */
  hissPa: number;
  hissHz: number;
  hissQ: number;
  hissPower: number;
  hissLength: number;
  hissFollowHz: number;
  /** How unsteady the turbulence is. */
  flutter: FlutterSpec;
  /** Swells of the turbulence at the events; null where there are none. */
  swells: SwellSpec | null;
  rumblePa: number;
  /** Click of a detaching drop of the wire's size, and its ringing time. */
  dropPa: number;
  dropS: number;
  /** Spatter: crackles per second of arc, chance per rupture, typical size. */
  crackleRate: number;
  crackleShare: number;
  cracklePa: number;
  /** Shielding gas before, during and after; contactor clicks; feeder whine. */
  gasPa: number;
  gasLeadS: number;
  gasTailS: number;
  clickPa: number;
  feederPa: number;
  feederHz: number;
  /** Sounds of the single events, apart from the change of power; null where there are none. */
  eventSounds: EventSoundSpec | null;
}

/**
 * Hiss (Pa at 1 m and 5 kW) over the share of the monopole that is left, at which a typical dip arc
 * has its impulses 5 dB above its hiss in the analysis band: set by own measurement on simulated dips. Anchor: sound of short-circuit transfer is
 * twice that of spray on one microphone (79.7 to 38.7 mV; Poopat & Warinsiriruk, Songklanakarin J. Sci.
 * Technol. 28 (2006) 829), and re-ignition is its main source (Grad et al., IJMTM 44 (2004) 555).
 */
const HISS_TO_PULSE_PA = 0.75;
/** Spread of that ratio over torches, gases and microphones, dB; a guess, kept wide. */
const HISS_TO_PULSE_DB = 7;
/** The same where nothing is known of it: drops of a spray may be heard one by one, or no event at all. */
const UNBALANCED_DB = [-24, 14] as const;
/** The same for the hiss at rest where events swell it, many of them on top of each other: own choice, kept wide. */
const TEXTURED_DB = [-10, 14] as const;

/** Random acoustics of the family; hiss against impulses spread widely about the published anchor. */
export function drawAcoustics(
  random: Random,
  options: { family: string; rateHz?: number },
): AcousticScenario {
  const family = options.family as AcousticFamily;
  if (!ACOUSTIC_FAMILIES.includes(family)) {
    throw new ArcError({
      code: 'unknown-family',
      what: `There is no acoustic family "${options.family}".`,
      expected: `one of ${ACOUSTIC_FAMILIES.join(', ')}`,
      todo: 'Choose one of these.',
    });
  }
  const pulses = drawPulses(random, family);
  const hissPa = HISS_TO_PULSE_PA * pulses.pulseGain * 10 ** (drawHissDb(random, family) / 20);
  return {
    family,
    seed: random.integer(0, 2 ** 31 - 1),
    rateHz: options.rateHz ?? 44100,
    distanceM: random.logUniform(0.15, 3),
    ...pulses,
    hissPa,
    ...drawHiss(random, family, hissPa),
    ...drawExtras(random, family, hissPa),
    flutter: drawFlutter(random),
    swells: family === 'textured' ? drawSwells(random) : null,
    eventSounds: family === 'voiced' ? drawEventSounds(random, hissPa) : null,
  };
}

function drawHissDb(random: Random, family: AcousticFamily): number {
  if (family === 'unbalanced') return random.uniform(...UNBALANCED_DB);
  if (family === 'textured') return random.uniform(...TEXTURED_DB);
  return random.normal(0, HISS_TO_PULSE_DB);
}

function drawPulses(random: Random, family: AcousticFamily) {
  const modes: AcousticScenario['modes'] = [];
  const absorbing = family === 'absorbing' || (family === 'unbalanced' && random.next() < 0.5);
  const count = family === 'resonant' ? random.integer(2, 6) : random.integer(0, 2);
  for (let i = 0; i < count; i++) {
    modes.push({
      hz: random.logUniform(350, 9000),
      q: random.logUniform(2, 25),
      gain: random.uniform(0.1, family === 'resonant' ? 1.5 : 0.4),
    });
  }
  return {
    pulseGain: random.logUniform(0.01, 0.6),
    pulseHz: random.logUniform(2500, 15000),
    exponent: absorbing ? random.uniform(0.4, 0.85) : 1,
    negativeShare: absorbing ? random.uniform(0.1, 0.7) : 1,
    jetShare: family === 'resonant' ? random.uniform(0.3, 0.9) : 0,
    modes,
  };
}

function drawHiss(random: Random, family: AcousticFamily, hissPa: number) {
  const slow = family === 'resonant';
  return {
    hissHz: random.logUniform(1800, 10000),
    hissQ: random.uniform(0.3, 0.9),
    hissPower: random.uniform(0.4, 1.6),
    hissLength: random.uniform(0, family === 'absorbing' ? 6 : 3),
    hissFollowHz: slow ? random.logUniform(60, 800) : random.logUniform(200, 4000),
    rumblePa: hissPa * random.logUniform(0.1, 3),
  };
}

/**
 * Drops, spatter, gas and clicks, stated against the hiss so that their balance does not depend on its level.
 * Whether a single drop clicks is not known: in half of the arcs of the plain families, in three of ten elsewhere.
 */
function drawExtras(random: Random, family: AcousticFamily, hissPa: number) {
  const clicking = POWER_FAMILIES.some((name) => name === family) ? 0.5 : 0.3;
  return {
    dropPa: hissPa * sometimes(random, clicking, 0.4, 8),
    dropS: random.logUniform(5e-5, 6e-4),
    crackleRate: sometimes(random, 0.7, 0.3, 40),
    crackleShare: random.uniform(0, 0.4),
    cracklePa: hissPa * random.logUniform(0.5, 20),
    gasPa: hissPa * sometimes(random, 0.7, 0.01, 0.2),
    gasLeadS: random.uniform(0.05, 0.6),
    gasTailS: random.uniform(0.05, 1),
    clickPa: hissPa * sometimes(random, 0.6, 0.3, 6),
    feederPa: hissPa * sometimes(random, 0.4, 0.01, 0.2),
    feederHz: random.logUniform(60, 900),
  };
}
