import { concat, median } from '../../dsp/index.js';
import type { SlotPlan } from './decimation.js';
import { LevelHistogram } from './level-histogram.js';
import { momentsOf, slowSpread } from './moments.js';
import { type PulseWindow, pulseWindow } from './pulse-window.js';
import type { Short } from './short-detector.js';
import type { CurrentSlot, VoltageSlot } from './slot-analyser.js';
import { type Measures, wholeSegments } from './voltage-window.js';
import { findWindowLine, meanPower } from './window-lines.js';

/** Pulses of the source leap at least this share of the mean current (common practice, no source). */
const LEAST_PULSE_SHARE = 0.4;

/** Measures of the current of one window; all ratios to its mean. */
export function currentWindow(
  slots: readonly CurrentSlot[],
  plan: SlotPlan,
): { measures: Measures; pulses: PulseWindow; meanA: number } {
  const parts = slots.map((slot) => slot.slow);
  const moments = momentsOf(parts);
  const meanA = moments.mean;
  const pulses = pulseWindow(
    slots.map((slot) => slot.pulses),
    plan.samples,
    plan.sampleRateHz,
    LEAST_PULSE_SHARE * Math.abs(meanA),
  );
  const levels = new LevelHistogram(-100, 1, 1400);
  for (const part of parts) levels.add(part);
  const measures: Measures = {
    currentCv: moments.sd / meanA,
    currentSkewness: moments.skewness,
    currentHighRatio: levels.quantile(0.95) / meanA,
    currentLowRatio: levels.quantile(0.05) / meanA,
    currentSlowShare: slowSpread(parts, Math.max(1, Math.round(0.01 * plan.slowRateHz))) / meanA,
    ...lineMeasures(slots, plan),
    currentPulseRateHz: pulses.rateHz,
    currentSwingShare: pulses.swing / meanA,
    currentSeparation: pulses.separation,
    currentDutyShare: pulses.dutyShare,
    currentClockCv: pulses.clockCv,
  };
  return { measures, pulses, meanA };
}

function lineMeasures(slots: readonly CurrentSlot[], plan: SlotPlan): Measures {
  const slow = concat(slots.map((slot) => slot.slow));
  const power = meanPower(
    wholeSegments(
      slots.map((slot) => slot.spectra),
      slow.length,
      slow.length,
    ),
  );
  if (!power) return {};
  const binHz = plan.slowRateHz / (2 * (power.length - 1));
  const line = findWindowLine(power, binHz, slow, plan.slowRateHz, Number.NaN);
  return {
    currentLineHz: line.rateHz,
    currentLineProminence: line.prominence,
    currentLineTonalShare: line.tonalShare,
  };
}

/** Mean current outside shorts, from the slow traces; NaN when nothing is left. */
export function arcCurrent(voltage: readonly VoltageSlot[], current: readonly CurrentSlot[]) {
  return momentsOf(
    current.map((slot) => slot.slow),
    voltage.map((slot) => slot.arc.bridged),
  );
}

/** What voltage and current show together. `shorts` are the transferring ones of the window. */
export function jointMeasures(
  voltage: readonly VoltageSlot[],
  current: readonly CurrentSlot[],
  shorts: readonly Short[],
  plan: SlotPlan,
): Measures {
  const arc = arcCurrent(voltage, current);
  const of = (pick: (short: Short) => number) => median(shorts.map(pick)) / arc.mean;
  return {
    arcCurrentCv: arc.sd / arc.mean,
    shortOverArcCurrent: of((short) => short.meanA),
    breakOverArcCurrent: of((short) => short.breakA),
    leastOverStartCurrent: median(shorts.map((short) => short.leastA / short.startA)),
    currentRisePerS: of((short) => riseAPerS(short, plan.sampleRateHz)),
    ...slopeMeasures(voltage, current, arc.mean),
  };
}

/** Rise of the current from the first to the last sample of a short, in A/s; NaN for one sample or no current. */
export function riseAPerS(short: Short, sampleRateHz: number): number {
  const steps = short.endSample - short.startSample - 1;
  return steps > 0 ? ((short.breakA - short.startA) * sampleRateHz) / steps : Number.NaN;
}

function slopeMeasures(
  voltage: readonly VoltageSlot[],
  current: readonly CurrentSlot[],
  meanA: number,
): Measures {
  const volts = momentsOf(
    voltage.map((slot) => slot.arc.voltage),
    voltage.map((slot) => slot.arc.bridged),
  );
  let [vi, ii, vv] = [0, 0, 0];
  for (let s = 0; s < voltage.length; s++) {
    const { voltage: v, bridged } = voltage[s]!.arc;
    const a = current[s]!.slow;
    for (let n = 0; n < v.length; n++) {
      if (bridged[n] === 1) continue;
      const dv = v[n]! - volts.mean;
      const da = a[n]! - meanA;
      vi += dv * da;
      ii += da * da;
      vv += dv * dv;
    }
  }
  return { arcSlopeOhm: vi / ii, arcCorrelation: vi / Math.sqrt(ii * vv) };
}
