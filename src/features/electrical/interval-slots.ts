import type { FeatureSet, FeatureWindow } from '../vector.js';
import { arcCurrent, currentWindow, jointMeasures } from './current-window.js';
import type { SlotPlan } from './decimation.js';
import { type ProgrammeVotes, windowProgramme } from './programme.js';
import type { RunTally } from './run-tally.js';
import { type Slot, SlotAnalyser } from './slot-analyser.js';
import { type Measures, type VoltageWindow, voltageWindow } from './voltage-window.js';

/** One arc interval: slots in, a feature window a hop out. */
export class IntervalSlots {
  readonly startSample: number;
  readonly #plan: SlotPlan;
  readonly #set: FeatureSet;
  readonly #run: RunTally;
  readonly #votes: ProgrammeVotes;
  readonly #analyser: SlotAnalyser;
  readonly #slots: Slot[] = [];
  #count = 0;

  constructor(
    startSample: number,
    plan: SlotPlan,
    set: FeatureSet,
    run: RunTally,
    votes: ProgrammeVotes,
  ) {
    this.startSample = startSample;
    this.#plan = plan;
    this.#set = set;
    this.#run = run;
    this.#votes = votes;
    this.#analyser = new SlotAnalyser(plan);
  }

  /** First sample that no slot has taken yet. */
  get nextSample(): number {
    return this.startSample + this.#count * this.#plan.samples;
  }

  /** Takes one slot of samples, which are kept; answers the window that it completes. */
  push(voltage: Float64Array | null, current: Float64Array | null): FeatureWindow | null {
    const slot = this.#analyser.push(voltage, current);
    this.#count++;
    this.#run.add(slot, this.#analyser.incipient, this.startSample);
    this.#slots.push(slot);
    const { windowSlots, hopSlots } = this.#plan;
    if (this.#slots.length > windowSlots) this.#slots.shift();
    if (this.#count < windowSlots || (this.#count - windowSlots) % hopSlots !== 0) return null;
    return this.#window();
  }

  #window(): FeatureWindow {
    const measures = this.#measure();
    const { samples, sampleRateHz, windowSlots } = this.#plan;
    const startSample = this.startSample + (this.#count - windowSlots) * samples;
    return {
      startS: startSample / sampleRateHz,
      endS: (startSample + windowSlots * samples) / sampleRateHz,
      values: Float64Array.from(this.#set.features, ({ id }) => finite(measures[id])),
    };
  }

  #measure(): Measures {
    const voltage = this.#slots.flatMap((slot) => slot.voltage ?? []);
    const current = this.#slots.flatMap((slot) => slot.current ?? []);
    const both = voltage.length > 0 && current.length > 0;
    const arcA = both ? arcCurrent(voltage, current).mean : Number.NaN;
    const volts: VoltageWindow | null =
      voltage.length > 0
        ? voltageWindow(voltage, this.#plan, this.#analyser.incipient, arcA)
        : null;
    const amperes = current.length > 0 ? currentWindow(current, this.#plan) : null;
    const measures: Measures = {
      ...volts?.measures,
      ...amperes?.measures,
      ...(both && volts ? jointMeasures(voltage, current, volts.transferring, this.#plan) : {}),
    };
    const programme = windowProgramme(measures, volts?.pulses ?? null, amperes?.pulses ?? null);
    this.#votes.add(programme);
    this.#run.events.addWindow(volts, programme === 'pulsed');
    return measures;
  }
}

function finite(value: number | undefined): number {
  return value !== undefined && Number.isFinite(value) ? value : Number.NaN;
}
