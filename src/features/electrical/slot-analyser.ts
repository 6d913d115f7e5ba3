import { mean as meanOf } from '../../dsp/index.js';
import { ArcPhase, type ArcPhaseSlot } from './arc-phase.js';
import { blockMeans, type SlotPlan } from './decimation.js';
import { type DropStep, DropSteps } from './drop-steps.js';
import { IncipientRule } from './incipient.js';
import { LevelHistogram } from './level-histogram.js';
import { type PulseSlot, PulseTracker } from './pulse-tracker.js';
import { SegmentSpectra, type SegmentSpectrum } from './segment-spectra.js';
import { type Short, ShortDetector } from './short-detector.js';
import { type ShortThresholds, ThresholdTracker } from './thresholds.js';

/** What the voltage of one slot says. */
export interface VoltageSlot {
  raw: Float64Array;
  thresholds: ShortThresholds;
  shorts: Short[];
  /** Pairs of first and one-past-last sample in a short, within the slot. */
  ranges: number[];
  shortSamples: number;
  arc: ArcPhaseSlot;
  spectra: SegmentSpectrum[];
  steps: DropStep[];
  stepNoiseV: number;
  stepTilt: number;
  pulses: PulseSlot;
}

/** What the current of one slot says. */
export interface CurrentSlot {
  raw: Float64Array;
  slow: Float64Array;
  spectra: SegmentSpectrum[];
  pulses: PulseSlot;
}

/** One slot of an arc interval, counted from the arc start. */
export interface Slot {
  index: number;
  voltage: VoltageSlot | null;
  current: CurrentSlot | null;
}

/** Swings of voltage, and of current over its mean, from which two levels are followed: below those of pulses. */
const FOLLOWED_V = 3;
const FOLLOWED_SHARE = 0.3;

/** Turns the samples of one arc interval into slots. A new arc interval takes a new analyser. */
export class SlotAnalyser {
  readonly incipient = new IncipientRule();
  readonly #plan: SlotPlan;
  readonly #thresholds: ThresholdTracker;
  readonly #shorts: ShortDetector;
  readonly #arcPhase: ArcPhase;
  readonly #voltageSpectra: SegmentSpectra;
  readonly #currentSpectra: SegmentSpectra;
  readonly #steps: DropSteps;
  readonly #voltagePulses = new PulseTracker();
  readonly #currentPulses = new PulseTracker();
  readonly #currentLevels = new LevelHistogram(-100, 2, 700);
  #index = 0;

  constructor(plan: SlotPlan) {
    this.#plan = plan;
    this.#thresholds = new ThresholdTracker(plan.sampleRateHz);
    this.#shorts = new ShortDetector(plan.sampleRateHz);
    this.#arcPhase = new ArcPhase(plan);
    this.#voltageSpectra = new SegmentSpectra(plan.slowRateHz);
    this.#currentSpectra = new SegmentSpectra(plan.slowRateHz);
    this.#steps = new DropSteps(plan.slowRateHz);
  }

  /** Takes exactly one slot of samples, which are kept. */
  push(voltage: Float64Array | null, current: Float64Array | null): Slot {
    return {
      index: this.#index++,
      voltage: voltage ? this.#voltage(voltage, current) : null,
      current: current ? this.#current(current) : null,
    };
  }

  #voltage(raw: Float64Array, current: Float64Array | null): VoltageSlot {
    const thresholds = this.#thresholds.update(raw);
    const { shorts, ranges } = this.#shorts.scan(raw, current, thresholds);
    for (const short of shorts)
      this.incipient.learn((short.endSample - short.startSample) / this.#plan.sampleRateHz);
    let shortSamples = 0;
    for (let r = 0; r < ranges.length; r += 2) shortSamples += ranges[r + 1]! - ranges[r]!;
    const arc = this.#arcPhase.push(raw, ranges);
    const steps = this.#steps.push(arc.voltage, arc.bridged);
    const cut = (thresholds.lowV + thresholds.highV) / 2;
    return {
      raw,
      thresholds,
      shorts,
      ranges,
      shortSamples,
      arc,
      spectra: this.#voltageSpectra.push(arc.voltage),
      steps,
      stepNoiseV: this.#steps.noiseV,
      stepTilt: this.#steps.tilt,
      pulses: this.#voltagePulses.push(raw, this.#thresholds.histogram, FOLLOWED_V, cut),
    };
  }

  #current(raw: Float64Array): CurrentSlot {
    this.#currentLevels.fade(0.9);
    this.#currentLevels.add(raw);
    const slow = blockMeans(raw, this.#plan.factor);
    return {
      raw,
      slow,
      spectra: this.#currentSpectra.push(slow),
      pulses: this.#currentPulses.push(
        raw,
        this.#currentLevels,
        FOLLOWED_SHARE * Math.abs(meanOf(slow)),
      ),
    };
  }
}
