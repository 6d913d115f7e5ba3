import { planSlots, SegmentSpectra, SlotAnalyser, type SlotPlan } from '../../../features/index.js';
import { type EventKind, EventTally } from './event-tally.js';
import { PhaseCounts } from './level-counts.js';
import { ShortOverlay } from './short-overlay.js';
import { TimedSums } from './timed-sums.js';
import type { AverageShort, Evidence, FluctuationSpectrum } from './types.js';

type ArcIntervals = readonly { startS: number; endS: number }[];
/** A slot of 50 ms in which nothing moves more than this (V, or A without a voltage) holds no arc. */
const STILL = 1;
/** Shorts, drops, levels and spectra of a voltage and/or current, slot after slot of about 50 ms. */
export class TraceEvidence {
  readonly #plan: SlotPlan;
  #analyser: SlotAnalyser;
  #analyserFrom = 0;
  #wasDead = false;
  readonly #spectra: SegmentSpectra;
  readonly #voltageAt: number;
  readonly #currentAt: number;
  readonly #slot: Float64Array[];
  readonly #phases: PhaseCounts;
  readonly #overlay: ShortOverlay;
  readonly #power: TimedSums;
  readonly #events = new EventTally();
  #filled = 0;
  #slots = 0;

  constructor(rateHz: number, channels: readonly { quantity: string }[]) {
    this.#plan = planSlots(rateHz, 0.5, 0.25);
    this.#analyser = new SlotAnalyser(this.#plan);
    this.#spectra = new SegmentSpectra(this.#plan.slowRateHz);
    this.#voltageAt = channels.findIndex((one) => one.quantity === 'voltage');
    this.#currentAt = channels.findIndex((one) => one.quantity === 'current');
    this.#slot = channels.map(() => new Float64Array(this.#plan.samples));
    const hasCurrent = this.#currentAt >= 0;
    this.#phases = new PhaseCounts({ rateHz, slotS: this.#plan.seconds, hasCurrent });
    this.#overlay = new ShortOverlay(rateHz);
    this.#power = new TimedSums(this.#spectra.size / 2 + 2, { slotS: 0.25, most: 64 });
  }

  push(channels: readonly Float64Array[]): void {
    const count = channels[0]!.length;
    for (let from = 0; from < count; ) {
      const take = Math.min(this.#plan.samples - this.#filled, count - from);
      for (let c = 0; c < this.#slot.length; c++)
        this.#slot[c]!.set(channels[c]!.subarray(from, from + take), this.#filled);
      this.#filled += take;
      from += take;
      if (this.#filled === this.#plan.samples) this.#finishSlot();
    }
  }

  /** Everything but traces; what happened outside the arc intervals is left out. */
  finish(
    arcIntervals: ArcIntervals,
    kind: EventKind,
  ): Pick<
    Evidence,
    'marks' | 'levels' | 'plane' | 'averageShort' | 'spectrum' | 'intervals' | 'eventRate'
  > {
    const hasVoltage = this.#voltageAt >= 0;
    return {
      marks: this.#events.marks(arcIntervals, kind),
      levels: hasVoltage ? this.#phases.levels(arcIntervals) : null,
      plane: hasVoltage && this.#currentAt >= 0 ? this.#phases.plane(arcIntervals) : null,
      averageShort: hasVoltage ? this.#averageShort(arcIntervals) : null,
      spectrum: this.#spectrum(arcIntervals),
      intervals: this.#events.intervals(arcIntervals, kind),
      eventRate: this.#events.rate(kind),
    };
  }

  #finishSlot(): void {
    this.#filled = 0;
    const index = this.#slots++;
    const copies = this.#slot.map((channel) => channel.slice());
    const voltage = copies[this.#voltageAt] ?? null;
    const current = copies[this.#currentAt] ?? null;
    const { seconds, samples, sampleRateHz, slowRateHz } = this.#plan;
    this.#restartAfterDead(voltage ?? current!, index);
    const fromS = (this.#analyserFrom * samples) / sampleRateHz;
    const slot = this.#analyser.push(voltage, current);
    const shorts = slot.voltage?.shorts ?? [];
    if (voltage) {
      this.#phases.push(index, voltage, current, slot.voltage!.ranges);
      const starts = shorts.map((one) => this.#analyserFrom * samples + one.startSample);
      this.#overlay.push(copies, index * samples, starts);
    }
    for (const { startSample, endSample } of shorts)
      this.#events.add(
        'short',
        fromS + startSample / sampleRateHz,
        (endSample - startSample) / sampleRateHz,
      );
    for (const step of slot.voltage?.steps ?? [])
      this.#events.add('drop', fromS + step.atSample / slowRateHz, 0);
    const clock = slot.current?.pulses ?? slot.voltage?.pulses;
    for (const rise of clock?.rises ?? [])
      this.#events.add('pulse', fromS + rise / sampleRateHz, 0);
    this.#addSpectra((index + 0.5) * seconds, voltage ?? current!);
  }

  /** Levels learnt from a dead circuit would hide the first shorts: a new arc is met without memory. */
  #restartAfterDead(values: Float64Array, index: number): void {
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (const value of values) {
      if (value < low) low = value;
      if (value > high) high = value;
    }
    const dead = !(high - low > STILL);
    if (this.#wasDead && !dead) {
      this.#analyser = new SlotAnalyser(this.#plan);
      this.#analyserFrom = index;
    }
    this.#wasDead = dead;
  }

  #addSpectra(timeS: number, values: Float64Array): void {
    const { factor } = this.#plan;
    const slow = new Float64Array(Math.floor(values.length / factor));
    for (let n = 0; n < values.length; n++) {
      const at = Math.floor(n / factor);
      slow[at] = slow[at]! + values[n]! / factor;
    }
    for (const { power } of this.#spectra.push(slow)) {
      const sum = this.#power.at(timeS);
      for (let k = 0; k < power.length; k++) sum[k] = sum[k]! + power[k]!;
      sum[power.length]!++;
    }
  }

  #spectrum(arcIntervals: ArcIntervals): FluctuationSpectrum | null {
    const sum = this.#power.within(arcIntervals);
    const count = sum[sum.length - 1]!;
    if (count === 0) return null;
    const { binHz } = this.#spectra;
    const bins = Math.min(sum.length - 1, Math.round(1000 / binHz) + 1);
    const power = sum.slice(0, bins).map((value) => value / count);
    const voltage = this.#voltageAt >= 0;
    return { of: voltage ? 'voltage' : 'current', unit: voltage ? 'V²' : 'A²', binHz, power };
  }

  #averageShort(arcIntervals: ArcIntervals): AverageShort | null {
    const names = [
      { at: this.#voltageAt, name: 'voltage' as const, unit: 'V' },
      { at: this.#currentAt, name: 'current' as const, unit: 'A' },
    ].filter((one) => one.at >= 0);
    return this.#overlay.finish(names, arcIntervals);
  }
}
