import type { ArcStretch, Segment } from '../../core/index.js';
import type { FeatureSet, FeatureWindow } from '../../features/index.js';
import { RunEvidence } from '../../judge/index.js';
import { Classifier, type Model, type WindowJudgement } from '../../model/index.js';
import type { Settings } from '../settings.js';
import { StretchJudge } from '../stretch-judge.js';

/** A window with what its model says, in the sound's time. */
export interface PlacedWindow {
  window: FeatureWindow;
  judgement: WindowJudgement;
}

/** One of two recordings of one run. */
export interface Witness {
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

/** Segments and evidence of the windows that lie in the stretches, whatever the witness itself took for an arc. */
export function testimony(
  { model, windowS, hopS, windows }: Witness,
  stretches: readonly ArcStretch[],
  settings: Settings,
): { segments: Segment[]; evidence: RunEvidence } {
  const evidence = new RunEvidence(model.featureSet.features.length);
  const classifier = new Classifier(model);
  const segments = stretches.flatMap((stretch) => {
    const judge = new StretchJudge(
      classifier,
      { timeS: stretch.startS, open: stretch.openStart },
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
      if (middleS >= stretch.startS && middleS <= stretch.endS) judge.push(window, judgement);
    }
    const outcome = judge.finish({ timeS: stretch.endS, open: stretch.openEnd });
    evidence.merge(outcome.evidence);
    return outcome.segments;
  });
  return { segments, evidence };
}
