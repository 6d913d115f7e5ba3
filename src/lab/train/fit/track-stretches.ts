import { EvidenceTracker } from '../../../detect/index.js';
import { RunVector, type Scorer, type StretchSigns, windowArcScore } from '../../../model/index.js';
import type { LabelledRun, LabelledWindow } from '../data/labelled-run.js';

/** A stretch that the tracker would take for an arc, with what it really was. */
export interface TrackedStretch {
  signs: StretchSigns;
  /** Whether most of its windows lie in an arc. */
  arc: boolean;
}

/** A recording with the stretches found in it by a gate that had not met its family, kind or source, see `fit-gate.ts`. */
export interface TrackedRun {
  run: LabelledRun;
  arc: boolean;
  stretches: TrackedStretch[];
}

/** The stretches that a window scorer would find in a recording, by the same tracker as the pipeline. */
export function trackStretches(run: LabelledRun, scorer: Scorer): TrackedStretch[] {
  const tracker = new EvidenceTracker();
  const changes = run.windows.flatMap(({ window }) =>
    tracker.push({
      startS: window.startS,
      endS: window.endS,
      score: windowArcScore(scorer, window.values),
      levels: window.sound!.levels,
    }),
  );
  changes.push(...tracker.flush(run.windows.at(-1)?.window.endS ?? 0));
  const found: TrackedStretch[] = [];
  for (let i = 0; i + 1 < changes.length; i += 2) {
    const start = changes[i]!;
    const stop = changes[i + 1]!;
    const inside = run.windows.filter(
      ({ window }) => window.startS >= start.timeS - 1e-9 && window.endS <= stop.timeS + 1e-9,
    );
    if (inside.length > 0) found.push(stretchOf(inside, start.stepDb ?? 0, stop.stepDb ?? 0));
  }
  return found;
}

/** The signs of a span of windows. */
export function stretchOf(
  windows: readonly LabelledWindow[],
  startDb: number,
  stopDb: number,
): TrackedStretch {
  const vector = new RunVector(windows[0]!.window.values.length);
  for (const { window } of windows) vector.add(window.values);
  const inArc = windows.filter((one) => one.arc !== 'off').length;
  return { signs: { vector, startDb, stopDb }, arc: inArc > windows.length / 2 };
}
