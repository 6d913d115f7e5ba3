import type { Polarity } from '../choices.js';
import { currentForFeed, feedForCurrent, thinWireRule } from '../melting.js';
import { type Likely, likely } from './spread.js';
import {
  ALUMINIUM_FEED_ROWS,
  BRONZE_FEED_ROWS,
  type FeedRow,
  type MapMaterial,
  METAL_CORED_FEED_ROWS,
  solidTwin,
} from './wires-of-map.js';

/** The wire whose feed and current are held against each other. */
export interface FedWire {
  material: MapMaterial;
  diameterMm: number;
  /** Wire between contact tip and arc, mm; null where not stated. */
  stickOutMm: number | null;
  polarity: Polarity | null;
}

/**
 * Stick-out where it is not stated, and how well a stated one is held, mm: own choice between the
 * 6–10 mm taught for dip and the 15–20 mm usual for spray (common practice, no source).
 */
export const USUAL_STICK_OUT: Likely = { mean: 15, sd: 3 };
const HELD_STICK_OUT_SD = 1.5;
/** The melting formula and the shop's feed-per-ampere rule agree within 10 %, taken as two standard deviations here. */
const FORMULA_SHARE = 0.06;

export const stickOutOf = ({ stickOutMm }: Pick<FedWire, 'stickOutMm'>): Likely =>
  stickOutMm === null ? USUAL_STICK_OUT : likely(stickOutMm, HELD_STICK_OUT_SD);

/**
 * `v·d²/I` in mm³/(s·A), which a table's rows share where resistance heating does not count:
 * mean and spread over the rows.
 */
export function meltingConstant(rows: readonly FeedRow[]): Likely {
  const values = rows.map((row) => ((row.feedMPerMin / 0.06) * row.diameterMm ** 2) / row.currentA);
  const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
  const variance = values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (values.length - 1);
  return likely(mean, Math.sqrt(variance));
}

/** Current that a feed draws, A, with its spread. Null for alternating current and for negative polarity without a row. */
export function currentOfFeed(wire: FedWire, feedMPerMin: number): Likely | null {
  const table = tableOf(wire.material);
  if (table !== null) {
    if (wire.polarity === 'dcen' || wire.polarity === 'ac') return null;
    const { mean, sd } = meltingConstant(table);
    const amps = ((feedMPerMin / 0.06) * wire.diameterMm ** 2) / mean;
    return likely(amps, (amps * sd) / mean);
  }
  if (wire.material === 'metal-cored') return fromCoredTable(wire, feedMPerMin);
  const solid = solidTwin(wire.material);
  const stickOut = stickOutOf(wire);
  const melted = {
    material: solid ?? ('carbon-steel' as const),
    diameterMm: wire.diameterMm,
    ...(wire.polarity === null ? {} : { polarity: wire.polarity }),
  };
  const at = (stickOutMm: number): number | null =>
    currentForFeed({ ...melted, stickOutMm }, feedMPerMin);
  const [mid, long] = [at(stickOut.mean), at(stickOut.mean + stickOut.sd)];
  if (mid === null || long === null) return null;
  // Formula and shop rule part for thin wire: the middle of the two, with half their distance.
  const rule = thinWireRule(melted, feedMPerMin) ?? mid;
  const amps = (mid + rule) / 2;
  return likely(amps, Math.hypot(amps * FORMULA_SHARE, mid - long, (rule - mid) / 2));
}

/** Feed that draws a current, m/min: the likeliest value. */
export function feedOfCurrent(wire: FedWire, currentA: number): number | null {
  const table = tableOf(wire.material);
  if (table !== null) {
    if (wire.polarity === 'dcen' || wire.polarity === 'ac') return null;
    return ((meltingConstant(table).mean * currentA) / wire.diameterMm ** 2) * 0.06;
  }
  if (wire.material === 'metal-cored') return coredFeed(wire, currentA);
  const first = feedForCurrent(
    {
      material: solidTwin(wire.material) ?? 'carbon-steel',
      diameterMm: wire.diameterMm,
      stickOutMm: stickOutOf(wire).mean,
      ...(wire.polarity === null ? {} : { polarity: wire.polarity }),
    },
    currentA,
  );
  return first === null ? null : settled(wire, currentA, first);
}

/** Newton steps from the formula's feed to the one whose likeliest current is asked for. */
function settled(wire: FedWire, currentA: number, first: number): number {
  let feed = first;
  for (let step = 0; step < 20; step++) {
    const drawn = currentOfFeed(wire, feed);
    const more = currentOfFeed(wire, feed * 1.001);
    if (drawn === null || more === null || Math.abs(drawn.mean - currentA) < 0.01) break;
    feed += ((currentA - drawn.mean) / (more.mean - drawn.mean)) * feed * 0.001;
  }
  return feed;
}

function tableOf(material: MapMaterial): readonly FeedRow[] | null {
  if (material === 'aluminium') return ALUMINIUM_FEED_ROWS;
  return material === 'silicon-bronze' ? BRONZE_FEED_ROWS : null;
}

/** Between the rows of one diameter by straight lines; another diameter goes with its cross-section (own choice). */
function coredCurve(diameterMm: number): { feed: number; amps: number }[] {
  const sizes = [1.143, 1.588];
  const nearest = Math.abs(diameterMm - sizes[0]!) <= Math.abs(diameterMm - sizes[1]!) ? 0 : 1;
  const size = sizes[nearest]!;
  const area = (size / diameterMm) ** 2;
  return METAL_CORED_FEED_ROWS.filter((row) => row.diameterMm === size).map((row) => ({
    feed: row.feedMPerMin * area,
    amps: row.currentA,
  }));
}

function fromCoredTable({ diameterMm }: FedWire, feedMPerMin: number): Likely {
  const curve = coredCurve(diameterMm);
  const amps = between(
    curve.map(({ feed, amps }) => [feed, amps]),
    feedMPerMin,
  );
  return likely(amps, amps * 0.1);
}

function coredFeed({ diameterMm }: FedWire, currentA: number): number {
  return between(
    coredCurve(diameterMm).map(({ feed, amps }) => [amps, feed]),
    currentA,
  );
}

function between(points: readonly (readonly [number, number])[], x: number): number {
  const index = points.findIndex(([at]) => at >= x);
  const upper = Math.min(Math.max(1, index < 0 ? points.length - 1 : index), points.length - 1);
  const [a, b] = [points[upper - 1]!, points[upper]!];
  return a[1] + ((x - a[0]) / (b[0] - a[0])) * (b[1] - a[1]);
}
