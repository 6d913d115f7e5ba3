import { concat, median } from '../../dsp/index.js';
import type { SlotPlan } from './decimation.js';
import type { IncipientRule } from './incipient.js';
import { trainOf } from './intervals.js';
import { LevelHistogram } from './level-histogram.js';
import { momentsOf, slowSpread } from './moments.js';
import { type PulseWindow, pulseWindow } from './pulse-window.js';
import { bandPower, type SegmentSpectrum } from './segment-spectra.js';
import type { Short } from './short-detector.js';
import type { VoltageSlot } from './slot-analyser.js';
import { findWindowLine, meanPower, type WindowLine } from './window-lines.js';

/** Pulses of the source leap at least this far in voltage (common practice, no source). */
export const LEAST_PULSE_V = 4;

/** Measures of a window by feature name; what is not there is absent. */
export type Measures = Record<string, number>;

/** What the voltage of a window shows, with the parts that others need. */
export interface VoltageWindow {
  measures: Measures;
  transferring: Short[];
  pulses: PulseWindow;
  line: WindowLine | null;
}

/** Measures one window of slots. `arcA` is the mean arc-phase current, NaN without current. */
export function voltageWindow(
  slots: readonly VoltageSlot[],
  plan: SlotPlan,
  rule: IncipientRule,
  arcA: number,
): VoltageWindow {
  const pulses = pulseWindow(
    slots.map((slot) => slot.pulses),
    plan.samples,
    plan.sampleRateHz,
    LEAST_PULSE_V,
  );
  const shorts = slots.flatMap((slot) => slot.shorts);
  const transferring = shorts.filter(
    (short) =>
      !rule.isIncipient(short, (short.endSample - short.startSample) / plan.sampleRateHz, arcA),
  );
  const spectrum = spectralMeasures(slots, plan, pulses.rateHz > 0 ? pulses.rateHz : Number.NaN);
  const measures: Measures = {
    ...shortMeasures(slots, plan, shorts, transferring),
    ...arcMeasures(slots, plan),
    ...(pulses.evident ? {} : stepMeasures(slots, plan)),
    ...spectrum.measures,
    pulseRateHz: pulses.rateHz,
    pulseSwingV: pulses.swing,
    pulseSeparation: pulses.separation,
    pulseDutyShare: pulses.dutyShare,
    pulseClockCv: pulses.clockCv,
  };
  return { measures, transferring, pulses, line: spectrum.line };
}

function shortMeasures(
  slots: readonly VoltageSlot[],
  plan: SlotPlan,
  shorts: readonly Short[],
  transferring: readonly Short[],
): Measures {
  const seconds = slots.length * plan.seconds;
  const durations = momentsOf([Float64Array.from(transferring, durationOf)]);
  const starts = transferring.map((short) => short.startSample / plan.sampleRateHz);
  const gaps = shorts.slice(1).map((short, k) => short.startSample - shorts[k]!.endSample);
  const limits = slots[slots.length - 1]!.thresholds;
  const shortSamples = slots.reduce((sum, slot) => sum + slot.shortSamples, 0);
  return {
    shortRateHz: transferring.length / seconds,
    allShortsRateHz: shorts.length / seconds,
    incipientShare: 1 - transferring.length / shorts.length,
    shortShare: shortSamples / (slots.length * plan.samples),
    shortDurationS: median(transferring.map(durationOf)) / plan.sampleRateHz,
    shortDurationCv: durations.count > 2 ? durations.sd / durations.mean : Number.NaN,
    shortIntervalCv: trainOf(starts).cv,
    arcTimeS: median(gaps) / plan.sampleRateHz,
    shortDepthV: shorts.length > 0 ? limits.arcV - limits.shortV : Number.NaN,
  };
}

function durationOf(short: Short): number {
  return short.endSample - short.startSample;
}

function arcMeasures(slots: readonly VoltageSlot[], plan: SlotPlan): Measures {
  const parts = slots.map((slot) => slot.arc.voltage);
  const skips = slots.map((slot) => slot.arc.bridged);
  const moments = momentsOf(parts, skips);
  const levels = new LevelHistogram(-20, 0.1, 900);
  for (let p = 0; p < parts.length; p++) levels.add(keptOf(parts[p]!, skips[p]!));
  return {
    arcSdV: moments.sd,
    arcSpreadV: levels.quantile(0.95) - levels.quantile(0.05),
    arcSkewness: moments.skewness,
    arcKurtosis: moments.kurtosis,
    slowFluctuationV: slowSpread(parts, Math.max(1, Math.round(0.01 * plan.slowRateHz))),
  };
}

function keptOf(values: Float64Array, skip: Uint8Array): Float64Array {
  const kept = new Float64Array(values.length);
  let count = 0;
  for (let n = 0; n < values.length; n++) if (skip[n] === 0) kept[count++] = values[n]!;
  return kept.subarray(0, count);
}

function stepMeasures(slots: readonly VoltageSlot[], plan: SlotPlan): Measures {
  const steps = slots.flatMap((slot) => slot.steps);
  const last = slots[slots.length - 1]!;
  let kept = 0;
  for (const slot of slots) for (const bridged of slot.arc.bridged) kept += 1 - bridged;
  return {
    stepNoiseV: last.stepNoiseV,
    stepTilt: last.stepTilt,
    dropStepRateHz: kept > 0 ? (steps.length * plan.slowRateHz) / kept : Number.NaN,
    dropStepV: median(steps.map((step) => step.heightV)),
    dropStepCv: trainOf(steps.map((step) => step.atSample / plan.slowRateHz)).cv,
  };
}

function spectralMeasures(slots: readonly VoltageSlot[], plan: SlotPlan, clockHz: number) {
  const slow = concat(slots.map((slot) => slot.arc.voltage));
  const inside = wholeSegments(
    slots.map((slot) => slot.spectra),
    slow.length,
    slots.length * plan.slowSamples,
  );
  const power = meanPower(inside);
  if (!power) return { measures: {} as Measures, line: null };
  const binHz = plan.slowRateHz / (2 * (power.length - 1));
  const line = findWindowLine(power, binHz, slow, plan.slowRateHz, clockHz);
  const mid = bandPower(power, binHz, 60, 1200) - line.mainsRms ** 2;
  const measures: Measures = {
    midFluctuationV: Math.sqrt(Math.max(0, mid)),
    lineRateHz: line.rateHz,
    lineProminence: line.prominence,
    lineTonalShare: line.tonalShare,
    mainsRippleV: line.mainsRms,
  };
  if (plan.slowRateHz >= 4800)
    measures['highFluctuationV'] = Math.sqrt(bandPower(power, binHz, 1200, 2400));
  return { measures, line };
}

/** Segments that begin within the window: the first of a window still reach back before it. */
export function wholeSegments(
  spectra: readonly (readonly SegmentSpectrum[])[],
  _length: number,
  windowSamples: number,
): SegmentSpectrum[] {
  const all = spectra.flat();
  if (all.length === 0) return [];
  const size = 2 * (all[0]!.power.length - 1);
  const fits = Math.max(1, Math.floor((windowSamples - size) / (size / 2)) + 1);
  return all.slice(-fits);
}
