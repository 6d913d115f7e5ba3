import type { Dice } from './dice.js';
import type { Family, GrainBand } from './family.js';
import { Biquad } from './filters.js';

/** Adds one band of a grain: noise through a band filter under a drawn attack and decay. */
function addBand(
  out: Float32Array,
  rateHz: number,
  at: number,
  band: GrainBand,
  gain: number,
  attackS: number,
  dice: Dice,
): void {
  const filter = Biquad.band(Math.min(band.hz, 0.4 * rateHz), rateHz, band.q);
  const keep = Math.exp(-1 / (rateHz * band.decayS));
  const attack = Math.max(1, Math.round(attackS * rateHz));
  // A narrow band passes less of the noise: bring all bands to like strength.
  const lift = 1.3 * gain * band.gain * Math.sqrt((band.q * rateHz) / (2 * band.hz));
  const end = Math.min(out.length, at + attack + Math.ceil(5 * band.decayS * rateHz));
  let level = 0;
  let age = 0;
  for (let k = Math.max(0, at); k < end; k++) {
    level = age < attack ? (age + 1) / attack : level * keep;
    age++;
    // One even draw is noise enough under a short envelope.
    const y = filter.step((dice.next() * 2 - 1) * 1.73 * level);
    out[k] = (out[k] as number) + lift * y;
  }
}

/** Adds the pressure pulse of a sudden change of power: up, then a shallow swing back. */
export function addKnock(
  out: Float32Array,
  rateHz: number,
  timeS: number,
  widthS: number,
  gain: number,
): void {
  const first = Math.max(0, Math.ceil(timeS * rateHz));
  const swing = 4 * widthS;
  const end = Math.min(out.length, Math.ceil((timeS + widthS + swing) * rateHz));
  const least = Math.max(widthS, 0.8 / rateHz);
  for (let k = first; k < end; k++) {
    const t = k / rateHz - timeS;
    const up = t < least ? Math.sin((Math.PI * t) / least) : 0;
    const back =
      t >= least && t < least + swing ? -0.25 * Math.sin((Math.PI * (t - least)) / swing) : 0;
    out[k] = (out[k] as number) + gain * (up + back);
  }
}

/**
 * Adds a whole grain.
 *
 * @param timeS where it starts, seconds from the first sample
 * @param gain peak, about
 * @param length how long it rings, against the family
 * @param tail strength of the broad tail, against the family; 0 for none
 */
export function addGrain(
  out: Float32Array,
  rateHz: number,
  timeS: number,
  family: Family,
  gain: number,
  length: number,
  tail: number,
  dice: Dice,
): void {
  const at = Math.ceil(timeS * rateHz);
  for (const band of family.bands) {
    const moved: GrainBand = {
      hz: band.hz * (0.8 + 0.45 * dice.next()),
      q: band.q,
      gain: band.gain * (0.6 + 0.8 * dice.next()),
      decayS: band.decayS * length * (0.7 + 0.6 * dice.next()),
    };
    addBand(out, rateHz, at, moved, 0.6 * gain, family.attackS, dice);
  }
  if (tail > 0) {
    addBand(out, rateHz, at, family.tail, 0.6 * gain * tail, 4 * family.attackS, dice);
  }
  addKnock(out, rateHz, timeS, family.knockS, gain * family.knockGain);
}
