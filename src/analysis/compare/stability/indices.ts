import { spreadOf } from './spread.js';

/**
 * Irregularity of short-circuit transfer: `σ(t_short)/mean + σ(t_arc)/mean`; 0 is a clock, lower is
 * more regular. Null where either list has no spread (see {@link spreadOf}).
 * From memory of Rezende, Liskévych, Vilarinho & Scotti, Soldagem & Inspeção 16(2) (2011) 98.
 */
export function irregularityIndex(
  shortTimesS: ArrayLike<number>,
  arcTimesS: ArrayLike<number>,
): number | null {
  const short = spreadOf(shortTimesS);
  const arc = spreadOf(arcTimesS);
  return short === null || arc === null ? null : short.cv + arc.cv;
}

/** Cycle by cycle: times in s, mean currents of each phase in A. */
export interface CycleLists {
  arcTimesS: ArrayLike<number>;
  shortTimesS: ArrayLike<number>;
  arcCurrentsA: ArrayLike<number>;
  shortCurrentsA: ArrayLike<number>;
}

/**
 * Product of the standard deviations of arcing time, short-circuit time and the mean currents of
 * both phases, s²·A²; lower is more stable. Depends on units and on the level of current, so only
 * runs at like settings compare. Null where any list has no spread.
 * From memory of Mita, Sakabe & Yokoo, Welding International 2(2) (1988) 152.
 */
export function spreadProductIndex(cycles: CycleLists): number | null {
  let product = 1;
  for (const list of Object.values(cycles) as ArrayLike<number>[]) {
    const spread = spreadOf(list);
    if (spread === null) return null;
    product *= spread.sd;
  }
  return product;
}

/** How close the rate of shorts is to a pool's own frequency: 1 is resonance. Null for no pool rate. */
export function poolRatio(shortRateHz: number, poolHz: number): number | null {
  // Hermans & den Ouden, Welding J. (1999) 137-s: most stable where the two are equal.
  if (!(poolHz > 0) || !Number.isFinite(shortRateHz)) return null;
  return shortRateHz / poolHz;
}
