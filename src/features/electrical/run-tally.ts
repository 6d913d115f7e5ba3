import type { RunFigures } from '../extractor.js';
import type { SlotPlan } from './decimation.js';
import { DisturbanceTally } from './disturbances/tally.js';
import { judgeDrops } from './drop-rate.js';
import type { IncipientRule } from './incipient.js';
import { RunCurrent } from './run-current.js';
import { RunEvents } from './run-events.js';
import { RunVoltage } from './run-voltage.js';
import type { Slot } from './slot-analyser.js';

/** Ignition and crater are left out of the figures: this much at either end of each arc interval. */
export const EDGE_S = 0.3;

/**
 * Figures of the steady part of a run. A slot counts only once enough of the arc interval has followed it, so
 * a few slots are held back; nothing else grows.
 */
export class RunTally {
  readonly events: RunEvents;
  readonly disturbances: DisturbanceTally;
  readonly #plan: SlotPlan;
  readonly #edge: number;
  readonly #voltage: RunVoltage | null;
  readonly #current: RunCurrent | null;
  #held: Slot[] = [];
  #counted = 0;

  /** @param ticks length of the ticks of `disturbances`, s, and how many came before */
  constructor(
    plan: SlotPlan,
    ticks: { tickS: number; fromTick: number },
    has: { voltage: boolean; current: boolean },
  ) {
    this.#plan = plan;
    this.#edge = Math.ceil(EDGE_S / plan.seconds - 1e-6);
    this.disturbances = new DisturbanceTally({
      ...ticks,
      slotS: plan.seconds,
      sampleRateHz: plan.sampleRateHz,
      edgeS: EDGE_S,
      has,
    });
    this.#voltage = has.voltage ? new RunVoltage(plan, this.disturbances) : null;
    this.#current = has.current ? new RunCurrent() : null;
    this.events = new RunEvents(plan);
  }

  /** `fromSample`: where the arc interval of the slot began. */
  add(slot: Slot, rule: IncipientRule, fromSample: number): void {
    this.#held.push(slot);
    if (this.#held.length <= this.#edge) return;
    const ready = this.#held.shift()!;
    if (ready.index < this.#edge) return;
    this.#counted++;
    if (ready.voltage) this.#voltage?.add(ready.voltage, ready.current, rule);
    if (ready.current) this.#current?.add(ready.current, ready.voltage);
    this.events.add(ready);
    this.disturbances.slot(ready, fromSample);
  }

  /** The arc interval is over: what is held belongs to its end. */
  endArcInterval(startSample: number, endSample: number): void {
    this.disturbances.interval(startSample, endSample, this.#held);
    this.#held = [];
    this.#voltage?.newArcInterval();
    this.events.newArcInterval();
  }

  /** Null where a figure is not shown. */
  figures(): RunFigures {
    const raw: RunFigures = {
      steadyTimeS: this.#counted * this.#plan.seconds,
      ...this.#voltage?.figures(),
      ...this.events.figures(),
      ...this.#current?.figures(),
      ...this.disturbances.figures(),
    };
    const judged = this.#voltage ? { ...raw, ...judgeDrops(raw, this.events.segments) } : raw;
    return Object.fromEntries(
      Object.entries(judged).map(([key, value]) => [
        key,
        value !== null && Number.isFinite(value) ? value : null,
      ]),
    );
  }
}
