import type { RunFigures } from '../extractor.js';
import type { SlotPlan } from './decimation.js';
import type { PulseSlot } from './pulse-tracker.js';
import { Running } from './running.js';
import type { SegmentSpectrum } from './segment-spectra.js';
import type { Slot } from './slot-analyser.js';
import { findLine, lineNarrowness, type SpectralLine } from './spectral-line.js';
import { mainsMultipleNear } from './tone.js';
import type { VoltageWindow } from './voltage-window.js';
import { LINE_SPAN } from './window-lines.js';

/** A mains line found in this share of the windows is there for the run. */
const MAINS_SHARE = 0.3;

/** Narrower lines than this are tones; one at a mains multiple is mains. */
const TONE_NARROWNESS = 0.85;

/** Line of a run with the prominence of its double: sharp events have one, a swinging pool or drop has not. */
export interface RunLine extends SpectralLine {
  harmonic: number;
}

function harmonicProminence(power: Float64Array, binHz: number, hz: number): number {
  const double = 2 * hz;
  if (!(double < (power.length - 8) * binHz)) return Number.NaN;
  const span = { fromHz: LINE_SPAN.fromHz, toHz: Math.min(2400, (power.length - 2) * binHz) };
  return findLine(
    power,
    binHz,
    span,
    (x) => Math.abs(x - double) > Math.max(2 * binHz, 0.04 * double),
  ).prominence;
}

/** Drops, lines and pulses of the steady part of a run. */
export class RunEvents {
  readonly #plan: SlotPlan;
  readonly #stepV = new Running();
  readonly #stepIntervalS = new Running();
  readonly #pulseIntervalS = new Running();
  readonly #mains = new Map<number, number>();
  readonly #tilt = new Running();
  readonly #noiseV = new Running();
  #power: Float64Array | null = null;
  #segments = 0;
  #windows = 0;
  #pulsedWindows = 0;
  #keptSlow = 0;
  #lastStep = Number.NaN;
  #lastRise = Number.NaN;
  #voltageLevels = newLevels();
  #currentLevels = newLevels();

  constructor(plan: SlotPlan) {
    this.#plan = plan;
  }

  newArcInterval(): void {
    this.#lastStep = Number.NaN;
    this.#lastRise = Number.NaN;
  }

  add(slot: Slot): void {
    for (const spectrum of slot.voltage?.spectra ?? []) this.#spectrum(spectrum);
    for (const step of slot.voltage?.steps ?? []) {
      this.#stepV.add(step.heightV);
      this.#stepIntervalS.add((step.atSample - this.#lastStep) / this.#plan.slowRateHz);
      this.#lastStep = step.atSample;
    }
    if (slot.voltage) {
      this.#tilt.add(slot.voltage.stepTilt);
      this.#noiseV.add(slot.voltage.stepNoiseV);
      for (const bridged of slot.voltage.arc.bridged) this.#keptSlow += 1 - bridged;
      addLevels(this.#voltageLevels, slot.voltage.pulses, this.#plan.samples);
    }
    if (slot.current) addLevels(this.#currentLevels, slot.current.pulses, this.#plan.samples);
    const clock = slot.current?.pulses ?? slot.voltage?.pulses;
    for (const rise of clock?.rises ?? []) {
      this.#pulseIntervalS.add((rise - this.#lastRise) / this.#plan.sampleRateHz);
      this.#lastRise = rise;
    }
  }

  /** Takes what a window found; windows near the edges count too, as votes only. */
  addWindow(voltage: VoltageWindow | null, pulsed: boolean): void {
    this.#windows++;
    if (pulsed) this.#pulsedWindows++;
    for (const hz of voltage?.line?.mainsHz ?? [])
      this.#mains.set(hz, (this.#mains.get(hz) ?? 0) + 1);
  }

  #spectrum({ power }: SegmentSpectrum): void {
    this.#power ??= new Float64Array(power.length);
    for (let k = 0; k < power.length; k++) this.#power[k] = this.#power[k]! + power[k]!;
    this.#segments++;
  }

  /** Line of the averaged spectrum outside mains and, when pulsed, outside the pulses. */
  line(clockHz: number): RunLine {
    if (!this.#power) return { rateHz: Number.NaN, prominence: 0, harmonic: 0 };
    const power = this.#power;
    const binHz = this.#plan.slowRateHz / (2 * (power.length - 1));
    const mains = this.#mainsLines();
    const near = 2.5 * binHz;
    const excluded = (hz: number) =>
      mains.some((line) => Math.abs(line - hz) < near) ||
      (clockHz > 0 && Math.abs(hz - Math.round(hz / clockHz) * clockHz) < near);
    for (;;) {
      const line = findLine(power, binHz, LINE_SPAN, excluded);
      const multiple = mainsMultipleNear(line.rateHz, 0.3 * binHz);
      if (!Number.isNaN(multiple) && lineNarrowness(power, binHz, line) > TONE_NARROWNESS) {
        mains.push(multiple);
        continue;
      }
      return { ...line, harmonic: harmonicProminence(power, binHz, line.rateHz) };
    }
  }

  /** Spectra averaged so far. */
  get segments(): number {
    return this.#segments;
  }

  #mainsLines(): number[] {
    const enough = Math.max(1, MAINS_SHARE * this.#windows);
    return [...this.#mains].filter(([, count]) => count >= enough).map(([hz]) => hz);
  }

  figures(): RunFigures {
    const mains = [...this.#mains].sort((a, b) => b[1] - a[1])[0];
    const pulsed = this.#windows > 0 && this.#pulsedWindows > 0.5 * this.#windows;
    const pulseHz = pulsed ? 1 / this.#pulseIntervalS.mean : Number.NaN;
    const line = this.line(pulseHz);
    return {
      stepRateHz: (this.#stepV.count * this.#plan.slowRateHz) / this.#keptSlow,
      stepIntervalCv: this.#stepIntervalS.cv,
      stepV: this.#stepV.mean,
      stepNoiseV: this.#noiseV.mean,
      stepTilt: this.#tilt.mean,
      lineHz: line.rateHz,
      lineProminence: line.prominence,
      lineHarmonic: line.harmonic,
      rippleHz: mains && this.#mainsLines().includes(mains[0]) ? mains[0] : Number.NaN,
      pulseRateHz: pulseHz,
      pulseClockCv: pulsed ? this.#pulseIntervalS.cv : Number.NaN,
      ...levelFigures('V', this.#voltageLevels, pulsed),
      ...levelFigures('A', this.#currentLevels, pulsed),
    };
  }
}

interface Levels {
  high: number;
  low: number;
  highSamples: number;
  lowSamples: number;
}

function newLevels(): Levels {
  return { high: 0, low: 0, highSamples: 0, lowSamples: 0 };
}

function addLevels(sums: Levels, slot: PulseSlot, samples: number): void {
  sums.high += slot.highSum;
  sums.low += slot.lowSum;
  sums.highSamples += slot.highSamples;
  sums.lowSamples += samples - slot.highSamples;
}

function levelFigures(unit: 'V' | 'A', sums: Levels, pulsed: boolean): RunFigures {
  const samples = sums.highSamples + sums.lowSamples;
  const shown = pulsed && samples > 0;
  const figures: RunFigures = {
    [`pulsePeak${unit}`]: shown ? sums.high / sums.highSamples : Number.NaN,
    [`pulseBase${unit}`]: shown ? sums.low / sums.lowSamples : Number.NaN,
  };
  if (shown) figures['pulseDutyShare'] = sums.highSamples / samples;
  return figures;
}
