import type { Mode, RunMode } from '../../../core/index.js';
import type { FeatureExtractor, FeatureWindow } from '../../../features/index.js';
import type { RunTruth } from '../../simulate/index.js';

/** Share of the metal that the named mechanism must carry for a window to teach it. */
const TEACHING_SHARE = 0.6;
/** Ignition and crater left out of the teaching windows, s. */
const EDGE_S = 0.3;

/** Condition of recordings that were really made, not simulated. */
export const REAL = 'real';
/** Condition of renderings of those through a simulated room, noise and device. */
export const RERECORDED = 'recorded again';

/** One window with what really happened in it. */
export interface LabelledWindow {
  window: FeatureWindow;
  /** Mode by what crossed the gap; null where nothing may be taught (edges, mixtures). */
  mode: Mode | null;
  /** Whether an arc burned: all of the window, none of it, or a part. */
  arc: 'on' | 'off' | 'edge';
}

/** A run (or a recording without an arc) reduced to its windows. */
export interface LabelledRun {
  id: string;
  family: string;
  /** Names of the groups it is counted in: wire, gas, noise and the like. */
  conditions: readonly string[];
  /** Null for a recording without an arc. */
  mode: RunMode | null;
  unambiguous: boolean;
  windows: LabelledWindow[];
}

/** Sends channels through a feature extractor and returns its windows. */
export function windowsOf(
  extractor: FeatureExtractor,
  channels: readonly Float64Array[],
): FeatureWindow[] {
  return [...extractor.push(channels), ...extractor.flush()].flatMap((event) =>
    event.type === 'window' ? [event.window] : [],
  );
}

/** Labels windows by the truth of a simulated run. */
export function labelWindows(windows: readonly FeatureWindow[], truth: RunTruth): LabelledWindow[] {
  return windows.map((window) => {
    const arc = arcIn(window, truth);
    return { window, arc, mode: arc === 'on' ? modeIn(window, truth) : null };
  });
}

function arcIn({ startS, endS }: FeatureWindow, truth: RunTruth): LabelledWindow['arc'] {
  const touching = truth.arcOn.filter((arc) => arc.startS < endS && arc.endS > startS);
  if (touching.length === 0) return 'off';
  return touching.some((arc) => arc.startS <= startS + 1e-6 && arc.endS >= endS - 1e-6)
    ? 'on'
    : 'edge';
}

function modeIn({ startS, endS }: FeatureWindow, truth: RunTruth): Mode | null {
  const last = truth.arcOn.at(-1);
  const first = truth.arcOn[0];
  if (first && first.startS > 0 && startS < first.startS + EDGE_S) return null;
  if (last && endS > last.endS - EDGE_S) return null;
  const segment = truth.segments.find((one) => one.startS <= startS && one.endS >= endS);
  if (!segment || segment.shares[segment.mode] < TEACHING_SHARE) return null;
  return segment.mode;
}
