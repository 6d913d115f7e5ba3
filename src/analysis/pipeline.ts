import { type ArcChange, EvidenceTracker } from '../detect/index.js';
import type { FeatureWindow, Lane, LaneEvent, LaneSummary } from '../features/index.js';
import { decide, type JudgedStretches, RunEvidence, type Verdict } from '../judge/index.js';
import { Classifier, type Model, type WindowJudgement } from '../model/index.js';
import type { Settings } from './settings.js';
import { StretchJudge, type StretchOutcome } from './stretch-judge.js';

/** What the pipeline says while samples go through it. */
export type PipelineEvent =
  /** Provisional: this window alone. */
  | { type: 'window'; window: FeatureWindow; judgement: WindowJudgement; arcOn: boolean }
  /** The newest half second of sound alone, from lanes that give it. */
  | { type: 'newest'; startS: number; endS: number; arcScore: number; probabilities: Float64Array }
  | ArcChange
  /** A stretch is over; its segments and evidence are final. */
  | StretchEvent;

/** A finished stretch. `kept` is false for what is surely no arc; `summary` where the lane tells stretches apart. */
export interface StretchEvent {
  type: 'stretch';
  outcome: StretchOutcome;
  accepted: boolean;
  kept: boolean;
  score: number;
  summary: LaneSummary | undefined;
}

/**
 * The way from samples to verdict, the same for a file and a live arc:
 * lane (features) → arc-on → classifier → timeline → verdict.
 */
export class Pipeline {
  readonly #lane: Lane;
  readonly #classifier: Classifier;
  readonly #settings: Settings;
  readonly #rateHz: number;
  readonly #tracker: EvidenceTracker | undefined;
  readonly #accepted: JudgedStretches;
  readonly #doubtful: JudgedStretches;
  /** Windows that wait until it is sure on which side of an edge of the arc they lie. */
  #pending: { window: FeatureWindow; judgement: WindowJudgement }[] = [];
  #judge: StretchJudge | undefined;
  #samples = 0;
  readonly #gathers: boolean;

  /** `gathers` false keeps no finished stretch, for a stream without an end: `verdict` then never has any. */
  constructor(lane: Lane, rateHz: number, model: Model, settings: Settings, gathers = true) {
    this.#gathers = gathers;
    this.#lane = lane;
    this.#rateHz = rateHz;
    this.#classifier = new Classifier(model);
    this.#settings = settings;
    this.#tracker = model.gate ? new EvidenceTracker() : undefined;
    this.#accepted = this.#emptyStretches();
    this.#doubtful = this.#emptyStretches();
  }

  get durationS(): number {
    return this.#samples / this.#rateHz;
  }

  push(channels: readonly Float64Array[]): PipelineEvent[] {
    this.#samples += channels[0]!.length;
    return this.#lane.push(channels).flatMap((event) => this.#take(event));
  }

  flush(): PipelineEvent[] {
    const events = this.#lane.flush().flatMap((event) => this.#take(event));
    for (const change of this.#tracker?.flush(this.durationS) ?? [])
      events.push(...this.#change(change));
    return events;
  }

  /** The lane's figures, valid after `flush`. */
  summary(): LaneSummary {
    return this.#lane.summary();
  }

  /** The accepted stretches and their evidence, valid after `flush`. */
  get accepted(): JudgedStretches {
    return this.#accepted;
  }

  verdict(): Verdict {
    return decide(
      this.#accepted,
      this.#doubtful,
      this.#classifier,
      this.#lane.featureSet,
      this.#settings,
    );
  }

  #take(event: LaneEvent): PipelineEvent[] {
    if (event.type === 'newest') return [this.#newest(event)];
    if (event.type !== 'window') return this.#change(event);
    const { window } = event;
    const judgement = this.#classifier.judge(window);
    const changes = this.#tracker
      ? this.#tracker.push({
          startS: window.startS,
          endS: window.endS,
          score: judgement.arcScore,
          levels: window.sound!.levels,
        })
      : [];
    this.#pending.push({ window, judgement });
    const events = changes.flatMap((change) => this.#change(change));
    this.#release();
    const arcOn = this.#judge !== undefined;
    return [...events, { type: 'window', window, judgement, arcOn }];
  }

  #newest({ startS, endS, values }: LaneEvent & { type: 'newest' }): PipelineEvent {
    const arcScore = this.#classifier.arcScore(values);
    const probabilities = this.#classifier.windowProbabilities(values);
    return { type: 'newest', startS, endS, arcScore, probabilities };
  }

  #change(change: ArcChange): PipelineEvent[] {
    if (change.type === 'arc-start') {
      this.#judge = this.#newJudge(change);
      this.#pending = this.#pending.filter(({ window }) => middle(window) >= change.timeS);
      return [change];
    }
    const judge = this.#judge;
    if (!judge) return [change];
    for (const { window, judgement } of this.#pending)
      if (middle(window) <= change.timeS) judge.push(window, judgement);
    this.#pending = [];
    this.#judge = undefined;
    return [change, this.#finish(judge.finish(change))];
  }

  /** Hands windows on that no later change of the arc can concern; without an arc only the newest are kept. */
  #release(): void {
    const kept = this.#tracker ? EvidenceTracker.delayWindows : 0;
    while (this.#pending.length > kept) {
      const { window, judgement } = this.#pending.shift()!;
      this.#judge?.push(window, judgement);
    }
  }

  #finish(outcome: StretchOutcome): PipelineEvent {
    const { stretch, evidence } = outcome;
    const gate = this.#classifier.model.gate;
    const { startDb, stopDb } = outcome;
    const score = this.#classifier.stretchScore(
      { vector: evidence.vector, startDb, stopDb },
      this.#settings.arcPrior,
    );
    const lengthS = stretch.endS - stretch.startS;
    const long = lengthS >= this.#settings.minStretchS;
    // Shorter than a window, all that was judged reaches beyond it: a loud word can look like an arc so.
    const whole = !gate || lengthS >= this.#lane.windowS;
    const accepted = long && whole && score >= (gate?.acceptScore ?? -Infinity);
    const into = accepted ? this.#accepted : this.#doubtful;
    const kept = accepted || !!(gate && long && evidence.windows > 0 && score >= gate.rejectScore);
    if (kept && this.#gathers) {
      into.stretches.push(stretch);
      into.segments.push(...outcome.segments);
      into.evidence.merge(evidence);
      into.bestScore = Math.max(into.bestScore, score);
    }
    const summary = this.#lane.takeSummary?.();
    return { type: 'stretch', outcome, accepted, kept, score, summary };
  }

  #newJudge(start: { timeS: number; open: boolean }): StretchJudge {
    const { windowS, hopS } = this.#lane;
    return new StretchJudge(this.#classifier, start, {
      filter: {
        hopS,
        weight: hopS / windowS,
        meanDwellS: this.#settings.meanDwellS,
        lookAhead: Math.round(this.#settings.lookAheadS / hopS),
      },
      ignitionMaskS: this.#settings.ignitionMaskS,
      craterMaskS: this.#settings.craterMaskS,
    });
  }

  #emptyStretches(): JudgedStretches {
    const features = this.#classifier.model.featureSet.features.length;
    return {
      stretches: [],
      segments: [],
      evidence: new RunEvidence(features),
      bestScore: -Infinity,
    };
  }
}

function middle(window: FeatureWindow): number {
  return (window.startS + window.endS) / 2;
}
