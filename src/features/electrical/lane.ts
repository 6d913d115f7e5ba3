import { ArcError } from '../../core/index.js';
import { ElectricalGate } from '../../detect/index.js';
import type { Lane, LaneSummary } from '../lane.js';
import type { FeatureSet, LaneEvent } from '../vector.js';
import { planSlots, type SlotPlan } from './decimation.js';
import { electricalFeatureSet } from './feature-sets.js';
import { checkOptions, type ElectricalLaneOptions } from './lane-options.js';
import { LaneTally } from './lane-tally.js';
import { SampleStore } from './sample-store.js';
import { Stretch } from './stretch.js';

/** Samples taken in one go, so that one large push needs no more memory than many small ones. */
const CHUNK = 8192;

/**
 * Lane for voltage and/or current in volts and amperes: arc stretches, a feature window a hop counted
 * from the arc start, run figures. Times are seconds from the first sample.
 * @throws ArcError `bad-sample-rate`, `no-channel` or `bad-window`.
 */
export function createElectricalLane(options: ElectricalLaneOptions): Lane {
  return new ElectricalLane(options);
}

class ElectricalLane implements Lane {
  readonly featureSet: FeatureSet;
  readonly windowS: number;
  readonly hopS: number;
  readonly newestHopS = null;
  readonly #rateHz: number;
  readonly #plan: SlotPlan;
  readonly #gate: ElectricalGate;
  readonly #stores: SampleStore[];
  readonly #has: { voltage: boolean; current: boolean };
  readonly #perStretch: boolean;
  readonly #summaries: LaneSummary[] = [];
  readonly #voltageAt: number;
  readonly #currentAt: number;
  #tally: LaneTally;
  #stretch: Stretch | null = null;
  #samples = 0;
  #ticked = 0;
  #flushed = false;

  constructor(options: ElectricalLaneOptions) {
    checkOptions(options);
    const { sampleRateHz, hasVoltage, hasCurrent, windowS = 0.5, hopS = 0.25 } = options;
    const has = { voltage: hasVoltage, current: hasCurrent };
    this.featureSet = electricalFeatureSet(hasVoltage, hasCurrent);
    this.#rateHz = sampleRateHz;
    this.#plan = planSlots(sampleRateHz, windowS, hopS);
    this.windowS = this.#plan.windowSlots * this.#plan.seconds;
    this.hopS = this.#plan.hopSlots * this.#plan.seconds;
    this.#gate = new ElectricalGate(sampleRateHz, has);
    this.#voltageAt = hasVoltage ? 0 : -1;
    this.#currentAt = hasCurrent ? (hasVoltage ? 1 : 0) : -1;
    const capacity = 4 * (CHUNK + Math.ceil(0.5 * sampleRateHz));
    this.#stores = [hasVoltage, hasCurrent].filter(Boolean).map(() => new SampleStore(capacity));
    this.#has = has;
    this.#perStretch = options.perStretch ?? false;
    this.#tally = this.#newTally();
  }

  takeSummary(): LaneSummary | undefined {
    return this.#summaries.shift();
  }

  #newTally(): LaneTally {
    return new LaneTally(this.#plan, this.#rateHz, this.#has);
  }

  push(channels: readonly Float64Array[]): LaneEvent[] {
    const length = channels[0]?.length ?? 0;
    if (
      channels.length !== this.#stores.length ||
      channels.some((channel) => channel.length !== length)
    )
      throw new ArcError({
        code: 'bad-block',
        what: `A block of ${channels.length} channels with lengths ${channels.map((c) => c.length)} was given.`,
        expected: `${this.#stores.length} channel(s) of equal length: ${this.featureSet.id}.`,
        todo: 'Pass one array a channel, in the order voltage, current.',
      });
    const events: LaneEvent[] = [];
    for (let from = 0; from < length; from += CHUNK) {
      const count = Math.min(CHUNK, length - from);
      for (let c = 0; c < channels.length; c++) {
        const { target, at } = this.#stores[c]!.reserve(count);
        this.#tally.quality[c]!.copy(channels[c]!, from, target, at, count);
      }
      this.#samples += count;
      this.#advance(events);
    }
    return events;
  }

  flush(): LaneEvent[] {
    const events: LaneEvent[] = [];
    if (this.#flushed) return events;
    this.#flushed = true;
    if (this.#samples > this.#ticked) this.#tick(this.#samples - this.#ticked, events);
    if (!this.#stretch) return events;
    const { endTick, open } = this.#gate.finish();
    this.#stop(endTick, open, events);
    return events;
  }

  summary(): LaneSummary {
    return this.#tally.summary();
  }

  /** Goes through all whole ticks at hand; what happens depends on ticks alone, never on how samples were split. */
  #advance(events: LaneEvent[]): void {
    const tick = this.#gate.plan.samples;
    while (this.#ticked + tick <= this.#samples) this.#tick(tick, events);
    const oldest = this.#stretch
      ? this.#stretch.nextSample
      : Math.max(0, (this.#gate.oldestTick - 1) * tick);
    for (const store of this.#stores) store.forget(Math.min(oldest, this.#ticked - 1));
  }

  #tick(samples: number, events: LaneEvent[]): void {
    const from = this.#ticked;
    const to = from + samples;
    this.#ticked = to;
    let meanV = 0;
    let whiteV2 = 0;
    if (this.#voltageAt >= 0) {
      const store = this.#stores[this.#voltageAt]!;
      meanV = store.mean(from, to);
      // The sample before is kept, so that a step between two ticks is seen.
      whiteV2 = store.whitePower(from, to);
    }
    this.#tally.tick(meanV);
    const meanA = this.#currentAt >= 0 ? this.#stores[this.#currentAt]!.mean(from, to) : 0;
    const step = this.#gate.push(meanV, whiteV2, meanA);
    if (step === 'started') this.#start(events);
    else if (step === 'stopped') this.#stop(this.#gate.safeTick, false, events);
    else if (this.#stretch) this.#feed(this.#gate.safeTick * this.#gate.plan.samples, events);
  }

  #start(events: LaneEvent[]): void {
    const tick = this.#gate.plan.samples;
    const sample = this.#firstBurning(this.#gate.startTick * tick);
    const open = sample <= 2 * tick;
    this.#stretch = new Stretch(
      sample,
      this.#plan,
      this.featureSet,
      this.#tally.run,
      this.#tally.votes,
    );
    this.#tally.stretches++;
    events.push({ type: 'arc-start', timeS: sample / this.#rateHz, open });
  }

  /** The first sample of arc around the tick that the gate named, so that ticks leave no grid in the times. */
  #firstBurning(sample: number): number {
    const tick = this.#gate.plan.samples;
    const from = Math.max(0, sample - tick);
    if (this.#voltageAt < 0) return sample;
    const values = this.#stores[this.#voltageAt]!.view(from, sample + tick);
    let first = values.length - 1;
    while (first > 0 && values[first - 1]! >= 9 && values[first - 1]! <= 48) first--;
    return from + first;
  }

  #stop(endTick: number, open: boolean, events: LaneEvent[]): void {
    const end = Math.min(endTick * this.#gate.plan.samples, this.#samples);
    this.#feed(end, events);
    this.#tally.run.endStretch();
    this.#stretch = null;
    events.push({ type: 'arc-stop', timeS: end / this.#rateHz, open });
    if (this.#perStretch) this.#closeSummary();
  }

  #closeSummary(): void {
    this.#summaries.push(this.summary());
    this.#tally = this.#newTally();
  }

  #feed(safeSample: number, events: LaneEvent[]): void {
    const stretch = this.#stretch;
    if (!stretch) return;
    while (stretch.nextSample + this.#plan.samples <= safeSample) {
      const from = stretch.nextSample;
      const take = (at: number) =>
        at < 0 ? null : this.#stores[at]!.view(from, from + this.#plan.samples).slice();
      const voltage = take(this.#voltageAt);
      const current = take(this.#currentAt);
      if (voltage) this.#tally.quality[this.#voltageAt]!.watch(voltage);
      if (current) this.#tally.quality[this.#currentAt]!.watch(current);
      const window = stretch.push(voltage, current);
      if (window) events.push({ type: 'window', window });
    }
  }
}
