import { type FeatureWindow, hasClearLine, hasClearOnsets } from '../features/index.js';
import { HeardSums, RunVector, type WindowJudgement, WindowOpinions } from '../model/index.js';
import { RateTally } from './rate-tally.js';

/**
 * Sums over the steady windows of one or more arc intervals: all that the verdict needs, in memory
 * that does not grow with the run.
 */
export class RunEvidence {
  windows = 0;
  novelty = 0;
  clipped = 0;
  /** Sum of the levels of the sound (mean squares of 16 ms), and how many they are. */
  #level = 0;
  #levels = 0;
  /** Sound windows in which both estimates of the event rate stood, and those in which they differed. */
  ratePairs = 0;
  rateConflicts = 0;
  readonly rates = new RateTally();
  readonly vector: RunVector;
  readonly opinions: WindowOpinions;
  /** What a network heard: each block once, whatever windows overlap in it. */
  readonly heard = new HeardSums();
  #lastBlock = -1;

  constructor(features: number) {
    this.vector = new RunVector(features);
    this.opinions = new WindowOpinions(features);
  }

  /** Mean level of the analysis band, dB of full scale; NaN without sound. */
  get levelDb(): number {
    return 10 * Math.log10(this.#level / this.#levels + 1e-20);
  }

  add(window: FeatureWindow, judgement: WindowJudgement): void {
    this.windows++;
    this.novelty += judgement.novelty;
    this.vector.add(window.values);
    this.opinions.add(judgement.scores, judgement.parts);
    if (window.sound) this.#addSound(window.sound);
    for (const block of window.heard ?? []) {
      if (block.index <= this.#lastBlock) continue;
      this.#lastBlock = block.index;
      this.heard.add(block);
    }
  }

  /** Joins the evidence of another arc interval of the same run. */
  merge(other: RunEvidence): void {
    this.windows += other.windows;
    this.novelty += other.novelty;
    this.clipped += other.clipped;
    this.#level += other.#level;
    this.#levels += other.#levels;
    this.ratePairs += other.ratePairs;
    this.rateConflicts += other.rateConflicts;
    this.rates.merge(other.rates);
    this.vector.merge(other.vector);
    this.opinions.merge(other.opinions);
    this.heard.merge(other.heard);
  }

  #addSound(sound: NonNullable<FeatureWindow['sound']>): void {
    this.clipped += sound.clippedShare;
    for (const level of sound.levels) this.#level += level;
    this.#levels += sound.levels.length;
    const line = hasClearLine(sound);
    const onsets = hasClearOnsets(sound);
    // A line is exact where events are even; the count of onsets stands in where they are not.
    if (line) this.rates.add(sound.lineHz);
    else if (onsets) this.rates.add(sound.onsetHz, false);
    if (!line || !onsets) return;
    this.ratePairs++;
    if (Math.abs(Math.log2(sound.lineHz / sound.onsetHz)) > RATE_CONFLICT_OCTAVES)
      this.rateConflicts++;
  }
}

/** Two estimates further apart than this (0.4 octaves, 32 %) are in conflict. */
const RATE_CONFLICT_OCTAVES = 0.4;
