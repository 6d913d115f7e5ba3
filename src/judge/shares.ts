import { type ArcStretch, MODES, type Mode, type Segment } from '../core/index.js';

export type Shares = Record<Mode | 'undetermined', number>;

/**
 * Share of the judged time by mode: segments cut to the stretches less ignition and crater. Where a
 * stretch is shorter than the masks the whole of it counts. Null when there is no time at all.
 */
export function shareOfArcTime(
  stretches: readonly ArcStretch[],
  segments: readonly Segment[],
  ignitionS: number,
  craterS: number,
): Shares | null {
  const seconds: Shares = { ...(zeroes() as Record<Mode, number>), undetermined: 0 };
  let total = 0;
  for (const stretch of stretches) {
    const { fromS, toS } = steadyPart(stretch, ignitionS, craterS);
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

/** A stretch without its ignition and crater; an open end has none to leave out. */
export function steadyPart(stretch: ArcStretch, ignitionS: number, craterS: number) {
  const fromS = stretch.startS + (stretch.openStart ? 0 : ignitionS);
  const toS = stretch.endS - (stretch.openEnd ? 0 : craterS);
  return toS > fromS ? { fromS, toS } : { fromS: stretch.startS, toS: stretch.endS };
}

function zeroes(): Record<string, number> {
  return Object.fromEntries(MODES.map((mode) => [mode, 0]));
}
