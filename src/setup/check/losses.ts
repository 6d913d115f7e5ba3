import { type Made, message } from '../../messages/index.js';
import { cableDrop, type Range, range, type Setup, sourceDrop } from '../index.js';

/** A loss between two places at which the volts are known. */
export interface Loss {
  from: 'set' | 'source' | 'feeder';
  to: 'source' | 'feeder' | 'arc' | 'trace';
  fromV: number;
  toV: number;
  volts: number;
  /** What source, leads and gun normally take between the two. */
  normal: Range;
  /** Volts above the normal; 0 where within. */
  excessV: number;
}

/** From feeder to arc, V; a reading may take none of it in (common practice, no source). */
const GUN: Range = { min: 0, max: 2 };
const plus = (...ranges: Range[]): Range =>
  range(
    ranges.reduce((sum, one) => sum + one.min, 0),
    ranges.reduce((sum, one) => sum + one.max, 0),
  );

/** Every loss that can be told from the stated and measured volts, neighbours only. */
export function tellLosses(setup: Setup, traceV: number | null, currentA: Range): Loss[] {
  const at = (place: 'source' | 'feeder' | 'arc', stated: number | null): number | null =>
    stated ?? (setup.traceVoltsAt === place ? traceV : null);
  const dialAt = setup.voltsAt === 'feeder' || setup.voltsAt === 'arc' ? setup.voltsAt : null;
  const volts = {
    set: dialAt === null ? setup.setVoltageV : null,
    source: at('source', setup.sourceVoltsV),
    feeder: at('feeder', setup.feederVoltsV),
    arc: at('arc', setup.arcVoltsV),
    trace: setup.traceVoltsAt === null ? traceV : null,
  };
  const source = sourceDrop(currentA, setup.sourceSlopeVPer100A);
  const cable = cableDrop(currentA, setup.cableLengthM);
  const steps: [Loss['from'], Loss['to'], Range][] = [
    ['set', 'source', source],
    ['source', 'feeder', cable],
    ['feeder', 'arc', GUN],
  ];
  const losses = steps.map((step) => loss(volts, step));
  if (volts.source === null) losses.push(loss(volts, ['set', 'feeder', plus(source, cable)]));
  if (volts.feeder === null && volts.source === null) {
    losses.push(loss(volts, ['set', 'arc', plus(source, cable, GUN)]));
    losses.push(loss(volts, ['set', 'trace', range(0, plus(source, cable, GUN).max)]));
  }
  if (volts.feeder === null) losses.push(loss(volts, ['source', 'arc', plus(cable, GUN)]));
  return losses.filter((one) => one !== null);
}

function loss(
  volts: Record<Loss['from'] | Loss['to'], number | null>,
  [from, to, normal]: [Loss['from'], Loss['to'], Range],
): Loss | null {
  const [fromV, toV] = [volts[from], volts[to]];
  if (fromV === null || toV === null) return null;
  const lost = fromV - toV;
  return { from, to, fromV, toV, volts: lost, normal, excessV: Math.max(0, lost - normal.max) };
}

/** `24 V set, 19.5 V at the feeder: 4.5 V lost, 1.5–3 V are usual`. */
export function sayLoss({ from, to, fromV, toV, volts, normal }: Loss): Made {
  return message('voltage-loss', { from, to, fromV, toV, lostV: volts, usualV: normal });
}
