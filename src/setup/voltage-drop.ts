import type { VoltsAt } from './choices.js';
import { CABLE_DROP } from './process-map/cable-table.js';
import { voltsAtPlace, voltsOfUnknownPlace } from './process-map/loss-chain.js';
import { fromRange, likely, widely } from './process-map/spread.js';
import { type Range, range, type Sourced } from './sourced.js';

/**
 * Droop of a source, V per 100 A: none where it regulates at its terminals. The upper end is set so
 * that droop and cable together give the 1–6 V, growing with current, between dial and feeder (20 mΩ in all;
 * both common practice, no source). Sources with a steeper slope exist: then it has to be stated.
 */
export const SOURCE_DROOP = {
  vPer100A: range(0, 1.5),
  source: 'lumped 20 mΩ model of source and leads',
  certainty: 'X',
} as const satisfies Sourced & Record<string, unknown>;

/** Volts lost between source and feeder at a current; the cable's length scales the table. */
export function cableDrop(currentA: Range, cableLengthM: number | null): Range {
  const at = (amps: number, end: 'min' | 'max'): number => {
    const [a, b] = CABLE_DROP.atA;
    const [va, vb] = CABLE_DROP.volts;
    const volts =
      amps <= a ? (va[end] * amps) / a : va[end] + ((amps - a) / (b - a)) * (vb[end] - va[end]);
    return volts * ((cableLengthM ?? CABLE_DROP.lengthM) / CABLE_DROP.lengthM);
  };
  return range(at(currentA.min, 'min'), at(currentA.max, 'max'));
}

/** Volts between what is set and the source's terminals while welding. */
export function sourceDrop(currentA: Range, slopeVPer100A: number | null): Range {
  if (slopeVPer100A !== null) {
    return range((slopeVPer100A * currentA.min) / 100, (slopeVPer100A * currentA.max) / 100);
  }
  const { min, max } = SOURCE_DROOP.vPer100A;
  return range((min * currentA.min) / 100, (max * currentA.max) / 100);
}

/**
 * Volts at the feeder while welding, from a voltage that is set or measured at some place: the likeliest
 * loss with two standard deviations to each side, not the worst case.
 */
export function feederVoltage(
  volts: number,
  from: 'set' | VoltsAt | 'unknown',
  currentA: Range,
  line: { sourceSlopeVPer100A: number | null; cableLengthM: number | null },
): Range {
  if (from === 'feeder') return range(volts, volts);
  const circuit = { ...line, stickOutMm: null };
  const amps = fromRange(currentA);
  const given = likely(volts, 0);
  const at = (current: number) =>
    from === 'unknown'
      ? voltsOfUnknownPlace(given, circuit, current)
      : voltsAtPlace(given, from, 'feeder', circuit, current);
  const [here, more] = [at(amps.mean), at(amps.mean + amps.sd)];
  return widely(likely(here.mean, Math.hypot(here.sd, more.mean - here.mean)));
}
