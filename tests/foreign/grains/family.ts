import type { Dice } from './dice.js';

/** One resonance of a grain. */
export interface GrainBand {
  hz: number;
  q: number;
  gain: number;
  decayS: number;
}

/**
 * How the grains of one arc sound. Drawn from one law for all modes: it tells nothing about them.
 */
export interface Family {
  bands: GrainBand[];
  attackS: number;
  /** Width and gain of the pressure pulse that opens a grain. */
  knockS: number;
  knockGain: number;
  /** The broad tail that follows a crack. */
  tail: GrainBand;
  /** Spread of the gain from grain to grain (logarithm). */
  gainSpread: number;
  /** Peak of a crack over the effective value of the hiss. */
  crackGain: number;
  /** Part of the crack that a contact gives. */
  contactGain: number;
  /** How far the jet falls silent in a bridge. */
  hush: number;
  /** Peak of a free drop over the effective value of the hiss, for a drop as wide as the wire. */
  dropGain: number;
  /** Part of the jet that a drop as wide as the wire modulates. */
  dropDepth: number;
  /** Peak of a pulse's edges over the effective value of the hiss. */
  buzzGain: number;
  /** Part of the jet that a pulse modulates. */
  buzzDepth: number;
}

/**
 * Draws a family. All figures are own choice, between limits by ear and by what measured dip
 * transfer shows
 * (centroid 1.8-2.4 kHz, kurtosis 6-9 in 1.5-12 kHz); pressure pulses of some 25 µs and more:
 * Blumschein 1997.
 */
export function drawFamily(dice: Dice): Family {
  const bands: GrainBand[] = [];
  const count = dice.whole(2, 4);
  // All events together, louder or softer against the hiss.
  const over = dice.ratio(0.6, 1.7);
  for (let k = 0; k < count; k++) {
    bands.push({
      hz: dice.ratio(400, 7000),
      q: dice.ratio(0.5, 3),
      gain: dice.ratio(0.3, 1),
      decayS: dice.ratio(0.0003, 0.003),
    });
  }
  return {
    bands,
    attackS: dice.ratio(0.00004, 0.0004),
    knockS: dice.ratio(0.00004, 0.0003),
    knockGain: dice.ratio(0.15, 1),
    tail: {
      hz: dice.ratio(900, 3500),
      q: dice.ratio(0.35, 0.9),
      gain: dice.ratio(0.25, 1.3),
      decayS: dice.ratio(0.0015, 0.008),
    },
    gainSpread: dice.ratio(0.1, 0.45),
    crackGain: over * dice.ratio(3.5, 14),
    contactGain: dice.ratio(0.04, 0.35),
    hush: dice.between(0.4, 0.97),
    dropGain: over * dice.ratio(0.3, 2.5),
    dropDepth: dice.ratio(0.15, 1),
    buzzGain: over * dice.ratio(0.8, 5),
    buzzDepth: dice.between(0.1, 0.7),
  };
}
