import type { Polarity } from './choices.js';
import {
  ALUMINIUM_MELTING,
  FEED_PER_AMPERE,
  MELTING_ROWS,
  SPEED_ROW_1_2_MM,
} from './melting-rows.js';
import { MM_PER_INCH } from './quantities.js';
import { type Range, range } from './sourced.js';
import type { WireMaterial } from './wire-words.js';

/** The wire whose feed and current are held against each other. */
export interface MeltingWire {
  material: WireMaterial;
  diameterMm: number;
  /** Wire between contact tip and arc, mm. */
  stickOutMm: number;
  /** Electrode positive where not said; alternating current lies between the two and is refused. */
  polarity?: Polarity;
}

/** Wire between tip and arc where it is not stated, mm (common practice, no source). */
export const USUAL_STICK_OUT: Range = { min: 10, max: 20 };

/** Neither formula nor rule is better than this (the two agree within 10 % for 1.2 mm steel). */
const MODEL_ERROR = 0.1;

interface Coefficients {
  /** mm/(s·A). */
  alpha: number;
  /** 1/(s·A²). */
  beta: number;
}

/** Feed in m/min that the current melts, by `α·I + β·L·I²`. Null for alternating current. */
export function feedForCurrent(wire: MeltingWire, currentA: number): number | null {
  const c = coefficients(wire);
  if (c === null) return null;
  return (c.alpha * currentA + c.beta * wire.stickOutMm * currentA ** 2) * 0.06;
}

/** Current in A that a feed draws: the inverse of {@link feedForCurrent}. */
export function currentForFeed(wire: MeltingWire, feedMPerMin: number): number | null {
  const c = coefficients(wire);
  if (c === null) return null;
  const feed = feedMPerMin / 0.06;
  const quadratic = c.beta * wire.stickOutMm;
  if (quadratic === 0) return feed / c.alpha;
  // The stable form of the root: no difference of near-equal numbers for small feeds.
  return (2 * feed) / (c.alpha + Math.sqrt(c.alpha ** 2 + 4 * quadratic * feed));
}

/** Stick-out in mm that would make this feed draw this current; may be negative or absurd. */
export function impliedStickOut(
  wire: Omit<MeltingWire, 'stickOutMm'>,
  feedMPerMin: number,
  currentA: number,
): number | null {
  const c = coefficients({ ...wire, stickOutMm: 0 });
  // The thin-wire rule and aluminium have no resistive part: nothing can be implied from them.
  if (c === null || c.beta === 0) return null;
  return (feedMPerMin / 0.06 - c.alpha * currentA) / (c.beta * currentA ** 2);
}

/**
 * Current a feed draws, with the model's error and the stick-out left open where it is unknown. For
 * thin steel wire the range reaches to the shop's feed-per-ampere rule, since the two disagree.
 */
export function currentRangeForFeed(
  wire: Omit<MeltingWire, 'stickOutMm'> & { stickOutMm: number | null },
  feedMPerMin: number,
): Range | null {
  const long = wire.stickOutMm ?? USUAL_STICK_OUT.max;
  const short = wire.stickOutMm ?? USUAL_STICK_OUT.min;
  const least = currentForFeed({ ...wire, stickOutMm: long }, feedMPerMin);
  const most = currentForFeed({ ...wire, stickOutMm: short }, feedMPerMin);
  if (least === null || most === null) return null;
  const rule = thinWireRule(wire, feedMPerMin) ?? least;
  const error = wire.material === 'aluminium' ? ALUMINIUM_MELTING.share : MODEL_ERROR;
  return range(Math.min(least, rule) * (1 - error), Math.max(most, rule) * (1 + error));
}

/** Current by the feed-per-ampere rule, for steel wire up to 0.95 mm on electrode positive. */
export function thinWireRule(
  { material, diameterMm, polarity }: Omit<MeltingWire, 'stickOutMm'>,
  feedMPerMin: number,
): number | null {
  if (material === 'aluminium' || polarity === 'dcen' || diameterMm > 0.95) return null;
  return (feedMPerMin * 1000) / (MM_PER_INCH * ipmPerAmpere(diameterMm / MM_PER_INCH));
}

/** Linear between the rule's rows, the ends carried on. */
function ipmPerAmpere(inch: number): number {
  const rows = FEED_PER_AMPERE;
  const index = Math.min(
    Math.max(
      1,
      rows.findIndex((row) => row.inch >= inch),
    ),
    rows.length - 1,
  );
  const [a, b] = [rows[index - 1]!, rows[index]!];
  return a.ipmPerA + ((inch - a.inch) / (b.inch - a.inch)) * (b.ipmPerA - a.ipmPerA);
}

function coefficients({ material, diameterMm, polarity }: MeltingWire): Coefficients | null {
  if (polarity === 'ac') return null;
  if (material === 'aluminium') {
    return polarity === 'dcen'
      ? null
      : { alpha: ALUMINIUM_MELTING.constant / diameterMm ** 2, beta: 0 };
  }
  const positive = steel(diameterMm);
  if (polarity !== 'dcen') return positive;
  const ratio = MELTING_ROWS.steelDcen.a / MELTING_ROWS.steelDcep.a;
  return { alpha: positive.alpha * ratio, beta: positive.beta };
}

/**
 * Steel (stainless taken as steel: no row of its own is held). α goes with 1/d² and β with 1/d⁴.
 * Below 0.8 mm that scaling gives far too much feed, so the shop's feed-per-ampere rule sets α.
 */
function steel(diameterMm: number): Coefficients {
  const scale = SPEED_ROW_1_2_MM.diameterMm / diameterMm;
  const alpha = SPEED_ROW_1_2_MM.alpha * scale ** 2;
  const beta = SPEED_ROW_1_2_MM.beta * scale ** 4;
  if (diameterMm >= 0.78) return { alpha, beta };
  return { alpha: (ipmPerAmpere(diameterMm / MM_PER_INCH) * MM_PER_INCH) / 60, beta: 0 };
}
