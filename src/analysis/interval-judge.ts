import type { ArcInterval, Segment } from '../core/index.js';
import type { ArcChange } from '../detect/index.js';
import type { FeatureWindow } from '../features/index.js';
import { RunEvidence } from '../judge/index.js';
import { ModeFilter, type ModeFilterOptions, SegmentBuilder } from '../judge/timeline/index.js';
import type { Classifier, WindowJudgement } from '../model/index.js';

/** A finished arc interval with everything the verdict needs of it. */
export interface IntervalOutcome {
  arcInterval: ArcInterval;
  segments: Segment[];
  evidence: RunEvidence;
  /** Leaps of the level at the edges, dB; 0 where none was seen. */
  startDb: number;
  stopDb: number;
}

/** Start or stop of the arc interval. */
type Edge = Omit<ArcChange, 'type'>;

interface Waiting {
  window: FeatureWindow;
  judgement: WindowJudgement;
}

/**
 * Judges the windows of one arc interval: beliefs into segments, steady windows into evidence. A window
 * waits until it is certain not to belong to the crater.
 */
export class IntervalJudge {
  readonly #steadyFromS: number;
  readonly #craterMaskS: number;
  readonly #start: Edge;
  readonly #filter: ModeFilter;
  readonly #segments: SegmentBuilder;
  readonly #evidence: RunEvidence;
  /** Used only where the arc interval is too short to have a steady part. */
  readonly #all: RunEvidence;
  #waiting: Waiting[] = [];

  constructor(
    classifier: Classifier,
    start: Edge,
    options: { filter: ModeFilterOptions; ignitionMaskS: number; craterMaskS: number },
  ) {
    this.#start = start;
    this.#steadyFromS = start.timeS + (start.open ? 0 : options.ignitionMaskS);
    this.#craterMaskS = options.craterMaskS;
    this.#filter = new ModeFilter(options.filter);
    this.#segments = new SegmentBuilder(start.timeS);
    const features = classifier.model.featureSet.features.length;
    this.#evidence = new RunEvidence(features);
    this.#all = new RunEvidence(features);
  }

  push(window: FeatureWindow, judgement: WindowJudgement): void {
    const belief = this.#filter.push(window.startS, window.endS, judgement.probabilities);
    if (belief) this.#segments.push(belief);
    this.#waiting.push({ window, judgement });
    while (this.#waiting[0] && this.#waiting[0].window.endS <= window.endS - this.#craterMaskS)
      this.#count(this.#waiting.shift()!);
  }

  finish({ timeS, open, stepDb }: Edge): IntervalOutcome {
    for (const belief of this.#filter.flush()) this.#segments.push(belief);
    const steadyToS = timeS - (open ? 0 : this.#craterMaskS);
    for (const waiting of this.#waiting)
      if (waiting.window.endS <= steadyToS + 1e-9) this.#count(waiting);
      else this.#all.add(waiting.window, waiting.judgement);
    this.#waiting = [];
    return {
      arcInterval: {
        startS: this.#start.timeS,
        endS: timeS,
        openStart: this.#start.open,
        openEnd: open,
      },
      segments: this.#segments.finish(timeS),
      evidence: this.#evidence.windows > 0 ? this.#evidence : this.#all,
      startDb: this.#start.stepDb ?? 0,
      stopDb: stepDb ?? 0,
    };
  }

  #count({ window, judgement }: Waiting): void {
    const steady = window.startS >= this.#steadyFromS - 1e-9;
    (steady ? this.#evidence : this.#all).add(window, judgement);
  }
}
