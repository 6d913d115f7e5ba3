import { MODES, type Mode, type Segment } from '../../core/index.js';

/** How the mode went over the run. */
export interface ModeTimeline {
  /** Modes by time, longest first, each with its share of the time that has a mode. */
  shares: { mode: Mode; share: number }[];
  /** One change that lasted to the end, or null. */
  lasting: { atS: number; from: Mode; to: Mode } | null;
  /** Changes from one mode to another. */
  changes: number;
}

/** A side of a lasting change is this much of one mode, and at least this share of the time. */
const PURE = 0.85;
const LEAST_SIDE = 0.2;

/** Reads the segments; those without a mode are left out. An empty list gives an empty mode timeline. */
export function modeTimeline(segments: readonly Segment[]): ModeTimeline {
  const known = segments.filter((one): one is Segment & { mode: Mode } => one.mode !== null);
  const changes = known.filter((one, i) => i > 0 && one.mode !== known[i - 1]!.mode).length;
  return { shares: sharesOf(known), lasting: lastingChange(known), changes };
}

type Known = Segment & { mode: Mode };

const length = (one: Segment): number => one.endS - one.startS;
const total = (segments: readonly Segment[]): number =>
  segments.reduce((sum, one) => sum + length(one), 0);

function sharesOf(segments: readonly Known[]): ModeTimeline['shares'] {
  const whole = total(segments);
  if (whole <= 0) return [];
  return MODES.map((mode) => ({
    mode,
    share: total(segments.filter((one) => one.mode === mode)) / whole,
  }))
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share);
}

function lastingChange(segments: readonly Known[]): ModeTimeline['lasting'] {
  const whole = total(segments);
  for (let i = 1; i < segments.length; i++) {
    const [before, after] = [segments.slice(0, i), segments.slice(i)];
    if (Math.min(total(before), total(after)) < LEAST_SIDE * whole) continue;
    const [from, to] = [sharesOf(before)[0]!, sharesOf(after)[0]!];
    if (from.mode === to.mode || from.share < PURE || to.share < PURE) continue;
    if (segments[i]!.mode !== to.mode) continue;
    return { atS: segments[i]!.startS, from: from.mode, to: to.mode };
  }
  return null;
}
