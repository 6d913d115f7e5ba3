import { type ArcInterval, MODES, type Mode, type Segment } from '../core/index.js';

export type Shares = Record<Mode | 'undetermined', number>;

/**
 * Share of the judged time by mode: segments cut to the arc intervals less ignition and crater. Where a
 * arc interval is shorter than the masks the whole of it counts. Null when there is no time at all.
 */
export function shareOfArcTime(
  arcIntervals: readonly ArcInterval[],
  segments: readonly Segment[],
  ignitionS: number,
  craterS: number,
): Shares | null {
  const seconds: Shares = { ...(zeroes() as Record<Mode, number>), undetermined: 0 };
  let total = 0;
  for (const arcInterval of arcIntervals) {
    const { fromS, toS } = steadyPart(arcInterval, ignitionS, craterS);
    for (const segment of segments) {
      const overlapS = Math.min(toS, segment.endS) - Math.max(fromS, segment.startS);
      if (overlapS <= 0) continue;
      seconds[segment.mode ?? 'undetermined'] += overlapS;
      total += overlapS;
    }
  }
  if (total === 0) return null;
  for (const key of [...MODES, 'undetermined'] as const) seconds[key] /= total;
  return seconds;
}

/** An arc interval without its ignition and crater; an open end has none to leave out. */
export function steadyPart(arcInterval: ArcInterval, ignitionS: number, craterS: number) {
  const fromS = arcInterval.startS + (arcInterval.openStart ? 0 : ignitionS);
  const toS = arcInterval.endS - (arcInterval.openEnd ? 0 : craterS);
  return toS > fromS ? { fromS, toS } : { fromS: arcInterval.startS, toS: arcInterval.endS };
}

function zeroes(): Record<string, number> {
  return Object.fromEntries(MODES.map((mode) => [mode, 0]));
}
