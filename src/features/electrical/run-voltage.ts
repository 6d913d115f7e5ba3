import type { RunFigures } from '../extractor.js';
import { riseAPerS } from './current-window.js';
import type { SlotPlan } from './decimation.js';
import type { IncipientRule } from './incipient.js';
import { LevelHistogram } from './level-histogram.js';
import { BlockSums, Running, SampleCounts } from './running.js';
import type { Short } from './short-detector.js';
import type { CurrentSlot, VoltageSlot } from './slot-analyser.js';

/** Voltage and short-circuit figures of the steady part of a run, gathered slot by slot. */
export class RunVoltage {
  readonly #plan: SlotPlan;
  readonly #levels = new LevelHistogram(-40, 0.1, 1800);
  readonly #all = new BlockSums();
  readonly #arc = new BlockSums();
  readonly #shortA = new BlockSums();
  readonly #arcA = new BlockSums();
  readonly #durations: SampleCounts;
  readonly #durationS = new Running();
  readonly #gapS = new Running();
  readonly #intervalS = new Running();
  readonly #breakA = new Running();
  readonly #riseAPerS = new Running();
  readonly #ohm = new Running();
  readonly #lowV = new Running();
  readonly #highV = new Running();
  /** Shorts of each whole second: regular transfer counts alike, a slipping wire does not. */
  readonly #bySecond = new Running();
  #secondSlots = 0;
  #secondStart = 0;
  #slots = 0;
  #shorts = 0;
  #incipient = 0;
  #lastShort: Short | null = null;
  #lastTransferring: Short | null = null;

  readonly #ruptures: { rupture(breakA: number): void };

  /** `ruptures` is told the current at the end of each short that carried metal. */
  constructor(plan: SlotPlan, ruptures: { rupture(breakA: number): void }) {
    this.#plan = plan;
    this.#ruptures = ruptures;
    this.#durations = new SampleCounts(0.2 * plan.sampleRateHz);
  }

  /** A new arc interval: no interval reaches over the pause. */
  newArcInterval(): void {
    this.#lastShort = null;
    this.#lastTransferring = null;
    this.#secondSlots = 0;
    this.#secondStart = this.#shorts - this.#incipient;
  }

  add(slot: VoltageSlot, current: CurrentSlot | null, rule: IncipientRule): void {
    this.#slots++;
    this.#levels.add(slot.raw);
    this.#all.add(slot.raw);
    this.#lowV.add(slot.thresholds.lowV);
    this.#highV.add(slot.thresholds.highV);
    this.#split(slot, current);
    const arcA = current ? this.#arcA.mean : Number.NaN;
    for (const short of slot.shorts) this.#short(short, rule, arcA);
    this.#second();
  }

  #second(): void {
    this.#secondSlots++;
    if (this.#secondSlots < Math.round(1 / this.#plan.seconds)) return;
    this.#bySecond.add(this.#shorts - this.#incipient - this.#secondStart);
    this.#secondSlots = 0;
    this.#secondStart = this.#shorts - this.#incipient;
  }

  #split(slot: VoltageSlot, current: CurrentSlot | null): void {
    let from = 0;
    for (let r = 0; r <= slot.ranges.length; r += 2) {
      const to = slot.ranges[r] ?? slot.raw.length;
      this.#arc.add(slot.raw, from, to);
      if (current) this.#arcA.add(current.raw, from, to);
      const end = slot.ranges[r + 1] ?? slot.raw.length;
      if (current) this.#shortA.add(current.raw, to, end);
      from = end;
    }
  }

  #short(short: Short, rule: IncipientRule, arcA: number): void {
    const rateHz = this.#plan.sampleRateHz;
    const samples = short.endSample - short.startSample;
    this.#shorts++;
    if (this.#lastShort) this.#gapS.add((short.startSample - this.#lastShort.endSample) / rateHz);
    this.#lastShort = short;
    if (rule.isIncipient(short, samples / rateHz, arcA)) {
      this.#incipient++;
      return;
    }
    this.#durations.add(samples);
    this.#durationS.add(samples / rateHz);
    if (this.#lastTransferring)
      this.#intervalS.add((short.startSample - this.#lastTransferring.startSample) / rateHz);
    this.#lastTransferring = short;
    this.#breakA.add(short.breakA);
    this.#ruptures.rupture(short.breakA);
    this.#riseAPerS.add(riseAPerS(short, rateHz));
    if (Math.abs(short.meanA) > 1) this.#ohm.add(short.meanV / short.meanA);
  }

  /** NaN stands for "not shown". */
  figures(): RunFigures {
    const seconds = this.#slots * this.#plan.seconds;
    const shortSamples = this.#all.count - this.#arc.count;
    return {
      meanVoltageV: this.#all.mean,
      arcVoltageV: this.#arc.mean,
      voltageSdV: this.#all.sd,
      arcVoltageSdV: this.#arc.sd,
      voltageP05V: this.#levels.quantile(0.05),
      voltageP50V: this.#levels.quantile(0.5),
      voltageP95V: this.#levels.quantile(0.95),
      shortCircuitRateHz: (this.#shorts - this.#incipient) / seconds,
      allShortsRateHz: this.#shorts / seconds,
      incipientRateHz: this.#incipient / seconds,
      shortDurationS: this.#durations.median() / this.#plan.sampleRateHz,
      shortDurationCv: this.#durationS.cv,
      shortIntervalCv: this.#intervalS.cv,
      shortRateDriftCv: this.#bySecond.cv,
      arcTimeS: this.#gapS.mean,
      arcTimeCv: this.#gapS.cv,
      shortShare: shortSamples / this.#all.count,
      shortThresholdLowV: this.#lowV.mean,
      shortThresholdHighV: this.#highV.mean,
      stabilityIndex: this.#durationS.cv + this.#gapS.cv,
      arcCurrentA: this.#arcA.mean,
      shortCurrentA: this.#shortA.mean,
      currentAtBreakA: this.#breakA.mean,
      currentRiseAPerS: this.#riseAPerS.mean,
      shortResistanceOhm: this.#ohm.mean,
    };
  }
}
