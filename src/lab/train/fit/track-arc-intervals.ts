import { EvidenceTracker } from '../../../detect/index.js';
import {
  type ArcSigns,
  LEAP_LENIENCE,
  RunVector,
  type Scorer,
  windowArcScore,
} from '../../../model/index.js';
import type { LabelledRun, LabelledWindow } from '../data/labelled-run.js';

/** An arc interval that the tracker would take for an arc, with what it really was. */
export interface TrackedInterval {
  signs: ArcSigns;
  /** Whether most of its windows lie in an arc. */
  arc: boolean;
}

/** A recording with the arc intervals found in it by a gate that had not met its family, kind or source, see `fit-gate.ts`. */
export interface TrackedRun {
  run: LabelledRun;
  arc: boolean;
  arcIntervals: TrackedInterval[];
}

/** The arc intervals that a window scorer would find in a recording, by the same tracker as the pipeline. */
export function trackArcIntervals(run: LabelledRun, scorer: Scorer): TrackedInterval[] {
  const tracker = new EvidenceTracker(LEAP_LENIENCE);
  const changes = run.windows.flatMap(({ window }) =>
    tracker.push({
      startS: window.startS,
      endS: window.endS,
      score: windowArcScore(scorer, window.values),
      levels: window.sound!.levels,
    }),
  );
  changes.push(...tracker.flush(run.windows.at(-1)?.window.endS ?? 0));
  const found: TrackedInterval[] = [];
  for (let i = 0; i + 1 < changes.length; i += 2) {
    const start = changes[i]!;
    const stop = changes[i + 1]!;
    const inside = run.windows.filter(
      ({ window }) => window.startS >= start.timeS - 1e-9 && window.endS <= stop.timeS + 1e-9,
    );
    if (inside.length > 0) found.push(arcIntervalOf(inside, start.stepDb ?? 0, stop.stepDb ?? 0));
  }
  return found;
}

/** The signs of a span of windows. */
export function arcIntervalOf(
  windows: readonly LabelledWindow[],
  startDb: number,
  stopDb: number,
): TrackedInterval {
  const vector = new RunVector(windows[0]!.window.values.length);
  for (const { window } of windows) vector.add(window.values);
  const inArc = windows.filter((one) => one.arc !== 'off').length;
  return { signs: { vector, startDb, stopDb }, arc: inArc > windows.length / 2 };
}
