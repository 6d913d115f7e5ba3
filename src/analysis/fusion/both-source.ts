import type { ArcInterval, Segment } from '../../core/index.js';
import type { FeatureSet, FeatureWindow } from '../../features/index.js';
import { RunEvidence } from '../../judge/index.js';
import { classifierFor, type Model, type WindowJudgement } from '../../model/index.js';
import { IntervalJudge } from '../interval-judge.js';
import type { Settings } from '../settings.js';

/** A window with what its model says, in the sound's time. */
export interface PlacedWindow {
  window: FeatureWindow;
  judgement: WindowJudgement;
}

/** One of two recordings of one run. */
export interface Source {
  model: Model;
  featureSet: FeatureSet;
  windowS: number;
  hopS: number;
  windows: PlacedWindow[];
}

/** The same windows on another clock: `shiftS` later. */
export function placed(windows: readonly PlacedWindow[], shiftS: number): PlacedWindow[] {
  return windows.map(({ window, judgement }) => {
    const times = { startS: window.startS + shiftS, endS: window.endS + shiftS };
    return { window: { ...window, ...times }, judgement: { ...judgement, ...times } };
  });
}

/** Segments and evidence of the windows that lie in the arc intervals, whatever the source itself took for an arc. */
export function evidenceWithin(
  { model, windowS, hopS, windows }: Source,
  arcIntervals: readonly ArcInterval[],
  settings: Settings,
): { segments: Segment[]; evidence: RunEvidence } {
  const evidence = new RunEvidence(model.featureSet.features.length);
  const classifier = classifierFor(model);
  const segments = arcIntervals.flatMap((arcInterval) => {
    const judge = new IntervalJudge(
      classifier,
      { timeS: arcInterval.startS, open: arcInterval.openStart },
      {
        filter: {
          hopS,
          weight: hopS / windowS,
          meanDwellS: settings.meanDwellS,
          lookAhead: Math.round(settings.lookAheadS / hopS),
        },
        ignitionMaskS: settings.ignitionMaskS,
        craterMaskS: settings.craterMaskS,
      },
    );
    for (const { window, judgement } of windows) {
      const middleS = (window.startS + window.endS) / 2;
      if (middleS >= arcInterval.startS && middleS <= arcInterval.endS)
        judge.push(window, judgement);
    }
    const outcome = judge.finish({ timeS: arcInterval.endS, open: arcInterval.openEnd });
    evidence.merge(outcome.evidence);
    return outcome.segments;
  });
  return { segments, evidence };
}
