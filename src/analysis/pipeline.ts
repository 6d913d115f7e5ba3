import { type ArcChange, type ArcTracker, EvidenceTracker, HeardTracker } from '../detect/index.js';
import type {
  ExtractorEvent,
  ExtractorSummary,
  FeatureExtractor,
  FeatureWindow,
} from '../features/index.js';
import {
  decide,
  type JudgedIntervals,
  type PlainRefusal,
  plainRefusal,
  RunEvidence,
  type Verdict,
} from '../judge/index.js';
import {
  type Classifier,
  classifierFor,
  earOf,
  type Model,
  type WindowJudgement,
} from '../model/index.js';
import { HearingExtractor } from './hearing-extractor.js';
import { IntervalJudge, type IntervalOutcome } from './interval-judge.js';
import type { Settings } from './settings.js';

/** What the pipeline says while samples go through it. */
export type PipelineEvent =
  /** Provisional: this window alone. */
  | { type: 'window'; window: FeatureWindow; judgement: WindowJudgement; arcOn: boolean }
  /** The newest half second of sound alone, from feature extractors that give it. */
  | {
      type: 'short-window';
      startS: number;
      endS: number;
      arcScore: number;
      probabilities: Float64Array;
    }
  | ArcChange
  /** An arc interval is over; its segments and evidence are final. */
  | IntervalEvent;

/** A finished arc interval. `kept` is false for what is surely no arc; `summary` where the feature extractor tells arc intervals apart. */
export interface IntervalEvent {
  type: 'arc-interval';
  outcome: IntervalOutcome;
  accepted: boolean;
  kept: boolean;
  score: number;
  summary: ExtractorSummary | undefined;
}

/**
 * The way from samples to verdict, the same for a file and a live arc:
 * feature extractor (features) → arc-on → classifier → timeline → verdict.
 */
export class Pipeline {
  readonly #extractor: FeatureExtractor;
  readonly #classifier: Classifier;
  readonly #settings: Settings;
  readonly #rateHz: number;
  readonly #tracker: ArcTracker | undefined;
  #accepted: JudgedIntervals;
  #doubtful: JudgedIntervals;
  /** Windows that wait until it is sure on which side of an edge of the arc they lie. */
  #pending: { window: FeatureWindow; judgement: WindowJudgement }[] = [];
  #judge: IntervalJudge | undefined;
  #samples = 0;
  /** What was heard in the newest interval that was plainly no arc. */
  #refusal: PlainRefusal | null = null;
  readonly #gathers: boolean;

  /** `gathers` false keeps no finished arc interval, for a stream without an end: `verdict` then never has any. */
  constructor(
    extractor: FeatureExtractor,
    rateHz: number,
    model: Model,
    settings: Settings,
    gathers = true,
  ) {
    this.#gathers = gathers;
    this.#extractor =
      model.kind === 'arc-transfer-ear'
        ? new HearingExtractor(extractor, rateHz, earOf(model))
        : extractor;
    this.#rateHz = rateHz;
    this.#classifier = classifierFor(model);
    this.#settings = settings;
    const { findsArcs, hearsBlocks, leapLenience } = this.#classifier;
    const tracker = () => (hearsBlocks ? new HeardTracker() : new EvidenceTracker(leapLenience));
    this.#tracker = findsArcs ? tracker() : undefined;
    this.#accepted = this.#emptyArcIntervals();
    this.#doubtful = this.#emptyArcIntervals();
  }

  get durationS(): number {
    return this.#samples / this.#rateHz;
  }

  push(channels: readonly Float64Array[]): PipelineEvent[] {
    this.#samples += channels[0]!.length;
    return this.#extractor.push(channels).flatMap((event) => this.#take(event));
  }

  flush(): PipelineEvent[] {
    const events = this.#extractor.flush().flatMap((event) => this.#take(event));
    for (const change of this.#tracker?.flush(this.durationS) ?? [])
      events.push(...this.#change(change));
    return events;
  }

  /** The feature extractor's figures, valid after `flush`. */
  summary(): ExtractorSummary {
    return this.#extractor.summary();
  }

  /** The accepted arc intervals and their evidence, valid after `flush`. */
  get accepted(): JudgedIntervals {
    return this.#accepted;
  }

  verdict(): Verdict {
    return decide(
      this.#accepted,
      this.#doubtful,
      this.#classifier,
      this.#extractor.featureSet,
      this.#settings,
      this.#refusal,
    );
  }

  #take(event: ExtractorEvent): PipelineEvent[] {
    if (event.type === 'short-window') return [this.#shortWindow(event)];
    if (event.type !== 'window') return this.#change(event);
    const { window } = event;
    const judgement = this.#classifier.judge(window, this.#settings.arcPrior);
    const changes = this.#tracker
      ? this.#tracker.push({
          startS: window.startS,
          endS: window.endS,
          score: judgement.arcScore,
          ...(judgement.blocks ? { blocks: judgement.blocks } : {}),
          levels: window.sound!.levels,
        })
      : [];
    this.#pending.push({ window, judgement });
    const events = changes.flatMap((change) => this.#change(change));
    this.#release();
    const arcOn = this.#judge !== undefined;
    return [...events, { type: 'window', window, judgement, arcOn }];
  }

  #shortWindow(event: ExtractorEvent & { type: 'short-window' }): PipelineEvent {
    const { startS, endS } = event;
    const judgement = this.#classifier.judgeShort(event, this.#settings.arcPrior);
    return { type: 'short-window', startS, endS, ...judgement };
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

  #finish(outcome: IntervalOutcome): PipelineEvent {
    const { arcInterval, evidence } = outcome;
    const { findsArcs, hearsBlocks, acceptScore, rejectScore } = this.#classifier;
    const { startDb, stopDb } = outcome;
    const { vector, opinions, heard } = evidence;
    const score = this.#classifier.arcIntervalScore(
      { vector, opinions, heard, startDb, stopDb },
      this.#settings.arcPrior,
    );
    const lengthS = arcInterval.endS - arcInterval.startS;
    const long = lengthS >= this.#settings.minStretchS;
    // Shorter than a window, all that was judged reaches beyond it: a loud word can look like an arc so.
    const whole = !findsArcs || hearsBlocks || lengthS >= this.#extractor.windowS;
    const { featureSet } = this.#extractor;
    const refusal = hearsBlocks ? plainRefusal(evidence, featureSet) : null;
    this.#refusal = refusal ?? this.#refusal;
    const plain = refusal === null;
    const accepted = plain && long && whole && score >= acceptScore;
    const kept =
      accepted || (findsArcs && plain && long && evidence.windows > 0 && score >= rejectScore);
    const gathered = accepted ? this.#accepted : this.#doubtful;
    if (kept && this.#gathers && this.#isForeground(gathered, evidence)) {
      const into = accepted ? this.#accepted : this.#doubtful;
      into.arcIntervals.push(arcInterval);
      into.segments.push(...outcome.segments);
      into.evidence.merge(evidence);
      into.bestScore = Math.max(into.bestScore, score);
    }
    const summary = this.#extractor.takeSummary?.();
    return { type: 'arc-interval', outcome, accepted, kept, score, summary };
  }

  /**
   * Whether an interval is as loud as what was gathered. One microphone hears one weld far above the rest: what is much
   * fainter is background, and what is much louder shows that the earlier was.
   */
  #isForeground(gathered: JudgedIntervals, { levelDb }: RunEvidence): boolean {
    if (!this.#classifier.hearsBlocks || gathered.arcIntervals.length === 0) return true;
    const over = levelDb - gathered.evidence.levelDb;
    if (over > BACKGROUND_DB) {
      const fresh = this.#emptyArcIntervals();
      if (gathered === this.#accepted) this.#accepted = fresh;
      else this.#doubtful = fresh;
    }
    return over >= -BACKGROUND_DB;
  }

  #newJudge(start: { timeS: number; open: boolean }): IntervalJudge {
    const { windowS, hopS } = this.#extractor;
    return new IntervalJudge(this.#classifier, start, {
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

  #emptyArcIntervals(): JudgedIntervals {
    const features = this.#classifier.model.featureSet.features.length;
    return {
      arcIntervals: [],
      segments: [],
      evidence: new RunEvidence(features),
      bestScore: -Infinity,
    };
  }
}

/** So much fainter than the arc is background, dB: eight times as far away. Own choice. */
const BACKGROUND_DB = 18;

function middle(window: FeatureWindow): number {
  return (window.startS + window.endS) / 2;
}
