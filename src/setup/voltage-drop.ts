import type { VoltsAt } from './choices.js';
import { type Range, range, type Sourced } from './sourced.js';

/** Loss along a welding cable: about 1 V at 100 A and 2–3 V at 500 A over 10–15 m. */
export const CABLE_DROP = {
  atA: [100, 500],
  volts: [range(0.7, 1), range(2, 3)],
  lengthM: 12.5,
  source: 'a welding-cable table',
  certainty: 'F',
} as const satisfies Sourced & Record<string, unknown>;

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

/** From feeder to arc: gun cable, tip and stick-out, V (common practice, no source). */
const GUN_DROP: Range = range(0.2, 2);

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

/** Volts at the feeder while welding, from a voltage that is set or measured at some place. */
export function feederVoltage(
  volts: number,
  from: 'set' | VoltsAt | 'unknown',
  currentA: Range,
  line: { sourceSlopeVPer100A: number | null; cableLengthM: number | null },
): Range {
  const cable = cableDrop(currentA, line.cableLengthM);
  if (from === 'feeder') return range(volts, volts);
  if (from === 'arc') return range(volts + GUN_DROP.min, volts + GUN_DROP.max);
  if (from === 'source') return range(volts - cable.max, volts - cable.min);
  if (from === 'unknown') return range(volts - cable.max, volts + GUN_DROP.max);
  const source = sourceDrop(currentA, line.sourceSlopeVPer100A);
  return range(volts - cable.max - source.max, volts - cable.min - source.min);
}
