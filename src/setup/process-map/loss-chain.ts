import type { VoltsAt } from '../choices.js';
import type { Setup } from '../setup-schema.js';
import type { Sourced } from '../sourced.js';
import { CABLE_DROP } from './cable-table.js';
import { type Likely, likely, minus, plus } from './spread.js';

/** Places in the circuit from the dial to the arc, each with less voltage than the one before. */
export const PLACES = ['set', 'source', 'feeder', 'arc'] as const;
export type Place = (typeof PLACES)[number];

/** What the circuit takes in one step, V at the current at hand. */
export interface Loss {
  from: Place;
  to: Place;
  volts: Likely;
  /** True where slope or length was stated, not taken as usual. */
  stated: boolean;
}

/** What is known of source and leads. */
export type Circuit = Pick<Setup, 'sourceSlopeVPer100A' | 'cableLengthM' | 'stickOutMm'>;

/**
 * Droop of a source where it is not stated, V per 100 A: many sources regulate at their terminals, older
 * ones give way by 2–3 V per 100 A (common practice, no source). Most of the weight lies near none.
 */
export const USUAL_DROOP = {
  mean: 0.2,
  sd: 0.4,
  source: 'common practice, no source',
  certainty: 'CP',
} as const satisfies Likely & Sourced;

/** Welding cable where its length is not stated, m: the shorter end of the table's 10–15 m. */
export const USUAL_CABLE_M = {
  mean: 10,
  sd: 4,
  source: 'a welding-cable table of 10–15 m; the spread is own choice',
  certainty: 'CP',
} as const satisfies Likely & Sourced;

/** From feeder to arc: gun cable, contact tip and the wire that sticks out, V at 200 A and 15 mm. */
export const USUAL_GUN = {
  mean: 1.1,
  sd: 0.5,
  atA: 200,
  source: 'common practice, no source: 0.2–2 V',
  certainty: 'CP',
} as const satisfies Likely & Sourced & { atA: number };

/** Every step with its likeliest loss at a current, from the dial to the arc. */
export function lossChain(circuit: Circuit, currentA: number): Loss[] {
  return [
    {
      from: 'set',
      to: 'source',
      volts: droop(circuit, currentA),
      stated: circuit.sourceSlopeVPer100A !== null,
    },
    {
      from: 'source',
      to: 'feeder',
      volts: cable(circuit, currentA),
      stated: circuit.cableLengthM !== null,
    },
    {
      from: 'feeder',
      to: 'arc',
      volts: likely(
        (USUAL_GUN.mean * currentA) / USUAL_GUN.atA,
        (USUAL_GUN.sd * currentA) / USUAL_GUN.atA,
      ),
      stated: false,
    },
  ];
}

function droop({ sourceSlopeVPer100A }: Circuit, currentA: number): Likely {
  const hundreds = currentA / 100;
  if (sourceSlopeVPer100A !== null) {
    return likely(sourceSlopeVPer100A * hundreds, 0.1 * sourceSlopeVPer100A * hundreds);
  }
  return likely(USUAL_DROOP.mean * hundreds, USUAL_DROOP.sd * hundreds);
}

function cable({ cableLengthM }: Circuit, currentA: number): Likely {
  const [a, b] = CABLE_DROP.atA;
  const at = (end: 'min' | 'max'): number => {
    const [va, vb] = CABLE_DROP.volts;
    if (currentA <= a) return (va[end] * currentA) / a;
    return va[end] + ((currentA - a) / (b - a)) * (vb[end] - va[end]);
  };
  const perMetre = likely(
    (at('min') + at('max')) / 2 / CABLE_DROP.lengthM,
    (at('max') - at('min')) / 4 / CABLE_DROP.lengthM,
  );
  const metres = cableLengthM === null ? USUAL_CABLE_M : likely(cableLengthM, 0);
  return likely(
    perMetre.mean * metres.mean,
    Math.hypot(perMetre.sd * metres.mean, perMetre.mean * metres.sd),
  );
}

/** Loss from one place to a later one; nothing for the same place. */
export function lossBetween(circuit: Circuit, from: Place, to: Place, currentA: number): Likely {
  const steps = lossChain(circuit, currentA).slice(PLACES.indexOf(from), PLACES.indexOf(to));
  return plus(likely(0, 0), ...steps.map((one) => one.volts));
}

/** Volts at another place of the circuit, losses taken off or put on. */
export function voltsAtPlace(
  volts: Likely,
  from: Place,
  to: Place,
  circuit: Circuit,
  currentA: number,
): Likely {
  if (PLACES.indexOf(from) <= PLACES.indexOf(to)) {
    return minus(volts, lossBetween(circuit, from, to, currentA));
  }
  return plus(volts, lossBetween(circuit, to, from, currentA));
}

/** Volts at the feeder of a reading whose place is anywhere between the source's terminals and the arc. */
export function voltsOfUnknownPlace(volts: Likely, circuit: Circuit, currentA: number): Likely {
  const high = lossBetween(circuit, 'source', 'feeder', currentA);
  const low = lossBetween(circuit, 'feeder', 'arc', currentA);
  return plus(volts, likely((low.mean - high.mean) / 2, (low.mean + high.mean) / 3));
}

/** Where a set voltage holds: at the dial unless the user says where it is held. */
export const placeOfSetting = (voltsAt: VoltsAt | null): Place =>
  voltsAt === 'feeder' || voltsAt === 'arc' ? voltsAt : 'set';
