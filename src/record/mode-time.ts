import type { Result } from '../analysis/result/index.js';
import type { Mode } from '../core/index.js';
import type { WeldRecord } from './schema.js';

type ModeTime = WeldRecord['mode'];
type Departure = NonNullable<ModeTime['longestDeparture']>;

/** Segments that follow each other this closely are one time, s. */
const TOUCHING_S = 1e-6;

/**
 * How much of the arc time was in the modes of a procedure, and the longest departure from them. Time without a
 * clear mode is neither: it ends a departure and counts by itself.
 */
export function modeTime(result: Result, wanted: readonly Mode[]): ModeTime {
  const { mode, confidence, shareOfArcTime: shares } = result;
  const sum = (allowed: boolean): number | null => {
    if (!shares) return null;
    let share = 0;
    for (const [name, part] of Object.entries(shares)) {
      if (name !== 'undetermined' && wanted.includes(name as Mode) === allowed) share += part;
    }
    return Math.min(1, share);
  };
  return {
    seen: mode,
    confidence,
    wantedShare: sum(true),
    otherShare: sum(false),
    unclearShare: shares ? (shares.undetermined ?? 0) : null,
    longestDeparture: longestDeparture(result.segments, wanted),
  };
}

function longestDeparture(segments: Result['segments'], wanted: readonly Mode[]): Departure | null {
  const departures: Departure[] = [];
  for (const { mode, startS, endS } of segments) {
    if (mode === null || wanted.includes(mode)) continue;
    const last = departures.at(-1);
    if (last && startS - last.endS < TOUCHING_S) last.endS = endS;
    else departures.push({ mode, startS, endS });
  }
  const length = ({ startS, endS }: Departure): number => endS - startS;
  return departures.toSorted((a, b) => length(b) - length(a))[0] ?? null;
}
