import { MODES, type Mode, type Segment, totalS } from '../../core/index.js';

/** Time of judged arc and its share by mode. */
export interface ModeShares {
  /** Judged arc time, s. */
  timeS: number;
  shares: Record<Mode, number>;
  /** Independent looks at the mode that this time is worth. */
  looks: number;
}

/** A mode holds for a while once it is there: looks closer than this are one and the same, s. */
const LOOK_S = 1;

/** Shares from the segments that name a mode; null where none does. */
export function modeShares(segments: readonly Segment[]): ModeShares | null {
  const known = segments.filter((one) => one.mode !== null);
  const length = (mode: Mode | null): number =>
    totalS(known.filter((one) => mode === null || one.mode === mode));
  const timeS = length(null);
  if (timeS <= 0) return null;
  const changes = known.filter((one, i) => i > 0 && one.mode !== known[i - 1]!.mode).length;
  // A run that changes twice holds three pieces of news, however long each piece lasts.
  const lookS = changes === 0 ? LOOK_S : Math.max(LOOK_S, timeS / (changes + 1) / 2);
  return {
    timeS,
    looks: Math.max(1, timeS / lookS),
    shares: Object.fromEntries(
      MODES.map((mode) => [mode, length(mode) / timeS]),
    ) as ModeShares['shares'],
  };
}

/**
 * Interval of `after − before` for two shares with so many looks each: Newcombe's, from Wilson's
 * score intervals (Statistics in Medicine 17 (1998) 873, from memory). Right for shares of 0 and 1.
 */
export function shareDifference(
  before: { share: number; looks: number },
  after: { share: number; looks: number },
  z: number,
): { low: number; high: number } {
  const a = wilson(after, z);
  const b = wilson(before, z);
  const difference = after.share - before.share;
  return {
    low: difference - Math.hypot(after.share - a.low, b.high - before.share),
    high: difference + Math.hypot(a.high - after.share, before.share - b.low),
  };
}

/** Wilson's score interval. */
export function wilson(
  { share, looks }: { share: number; looks: number },
  z: number,
): { low: number; high: number } {
  const z2 = (z * z) / looks;
  const middle = (share + z2 / 2) / (1 + z2);
  const half = (z / (1 + z2)) * Math.sqrt((share * (1 - share) + z2 / 4) / looks);
  return { low: Math.max(0, middle - half), high: Math.min(1, middle + half) };
}

/** Probability-scale deviation of two shares: their difference over its pooled error. */
export function shareZ(
  before: { share: number; looks: number },
  after: { share: number; looks: number },
): number {
  const pooled =
    (before.share * before.looks + after.share * after.looks) / (before.looks + after.looks);
  const error = Math.sqrt(pooled * (1 - pooled) * (1 / before.looks + 1 / after.looks));
  return error === 0 ? 0 : (after.share - before.share) / error;
}
