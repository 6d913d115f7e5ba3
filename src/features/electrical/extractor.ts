import { ArcError } from '../../core/index.js';
import { TraceArcDetector } from '../../detect/index.js';
import type { ExtractorSummary, FeatureExtractor } from '../extractor.js';
import type { ExtractorEvent, FeatureSet } from '../vector.js';
import { planSlots, type SlotPlan } from './decimation.js';
import { checkOptions, type ElectricalExtractorOptions, heldTimes } from './extractor-options.js';
import { ExtractorTally } from './extractor-tally.js';
import { electricalFeatureSet } from './feature-sets.js';
import { HeldSamples } from './held-samples.js';
import { IntervalSlots } from './interval-slots.js';
import { SampleStore } from './sample-store.js';

/** Samples taken in one go, so that one large push needs no more memory than many small ones. */
const CHUNK = 8192;

/**
 * Feature extractor for voltage and/or current in volts and amperes: arc intervals, a feature window a hop counted
 * from the arc start, run figures. Times are seconds from the first sample.
 * @throws ArcError `bad-sample-rate`, `no-channel` or `bad-window`.
 */
export function createElectricalExtractor(options: ElectricalExtractorOptions): FeatureExtractor {
  checkOptions(options);
  const { sampleRateHz } = options;
  const times = heldTimes(sampleRateHz);
  const extractor = new ElectricalExtractor({ ...options, sampleRateHz: times * sampleRateHz });
  return times === 1 ? extractor : new HeldSamples(extractor, times);
}

class ElectricalExtractor implements FeatureExtractor {
  readonly featureSet: FeatureSet;
  readonly windowS: number;
  readonly hopS: number;
  readonly shortWindowHopS = null;
  readonly #rateHz: number;
  readonly #plan: SlotPlan;
  readonly #gate: TraceArcDetector;
  readonly #stores: SampleStore[];
  readonly #has: { voltage: boolean; current: boolean };
  readonly #perArcInterval: boolean;
  readonly #summaries: ExtractorSummary[] = [];
  readonly #voltageAt: number;
  readonly #currentAt: number;
  #tally: ExtractorTally;
  #arcInterval: IntervalSlots | null = null;
  #samples = 0;
  #ticked = 0;
  #flushed = false;

  constructor(options: ElectricalExtractorOptions) {
    const { sampleRateHz, hasVoltage, hasCurrent, windowS = 0.5, hopS = 0.25 } = options;
    const has = { voltage: hasVoltage, current: hasCurrent };
    this.featureSet = electricalFeatureSet(hasVoltage, hasCurrent);
    this.#rateHz = sampleRateHz;
    this.#plan = planSlots(sampleRateHz, windowS, hopS);
    this.windowS = this.#plan.windowSlots * this.#plan.seconds;
    this.hopS = this.#plan.hopSlots * this.#plan.seconds;
    this.#gate = new TraceArcDetector(sampleRateHz, has);
    this.#voltageAt = hasVoltage ? 0 : -1;
    this.#currentAt = hasCurrent ? (hasVoltage ? 1 : 0) : -1;
    const capacity = 4 * (CHUNK + Math.ceil(0.5 * sampleRateHz));
    this.#stores = [hasVoltage, hasCurrent].filter(Boolean).map(() => new SampleStore(capacity));
    this.#has = has;
    this.#perArcInterval = options.perArcInterval ?? false;
    this.#tally = this.#newTally();
  }

  takeSummary(): ExtractorSummary | undefined {
    return this.#summaries.shift();
  }

  #newTally(): ExtractorTally {
    const { seconds, samples } = this.#gate.plan;
    const ticks = { tickS: seconds, fromTick: Math.ceil(this.#ticked / samples) };
    return new ExtractorTally(this.#plan, ticks, this.#rateHz, this.#has);
  }

  push(channels: readonly Float64Array[]): ExtractorEvent[] {
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
    const events: ExtractorEvent[] = [];
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

  flush(): ExtractorEvent[] {
    const events: ExtractorEvent[] = [];
    if (this.#flushed) return events;
    this.#flushed = true;
    if (this.#samples > this.#ticked) this.#tick(this.#samples - this.#ticked, events);
    if (!this.#arcInterval) return events;
    const { endTick, open } = this.#gate.finish();
    this.#stop(endTick, open, events);
    return events;
  }

  summary(): ExtractorSummary {
    return this.#tally.summary();
  }

  /** Goes through all whole ticks at hand; what happens depends on ticks alone, never on how samples were split. */
  #advance(events: ExtractorEvent[]): void {
    const tick = this.#gate.plan.samples;
    while (this.#ticked + tick <= this.#samples) this.#tick(tick, events);
    const oldest = this.#arcInterval
      ? this.#arcInterval.nextSample
      : Math.max(0, (this.#gate.oldestTick - 1) * tick);
    for (const store of this.#stores) store.forget(Math.min(oldest, this.#ticked - 1));
  }

  #tick(samples: number, events: ExtractorEvent[]): void {
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
    const meanA = this.#currentAt >= 0 ? this.#stores[this.#currentAt]!.mean(from, to) : 0;
    this.#tally.tick(meanV, meanA);
    const step = this.#gate.push(meanV, whiteV2, meanA);
    if (step === 'started') this.#start(events);
    else if (step === 'stopped') this.#stop(this.#gate.safeTick, false, events);
    else if (this.#arcInterval) this.#feed(this.#gate.safeTick * this.#gate.plan.samples, events);
  }

  #start(events: ExtractorEvent[]): void {
    const tick = this.#gate.plan.samples;
    const sample = this.#firstBurning(this.#gate.startTick * tick);
    const open = sample <= 2 * tick;
    this.#arcInterval = new IntervalSlots(
      sample,
      this.#plan,
      this.featureSet,
      this.#tally.run,
      this.#tally.votes,
    );
    this.#tally.arcIntervals++;
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

  #stop(endTick: number, open: boolean, events: ExtractorEvent[]): void {
    const end = Math.min(endTick * this.#gate.plan.samples, this.#samples);
    this.#feed(end, events);
    this.#tally.run.endArcInterval(this.#arcInterval?.startSample ?? end, end);
    this.#arcInterval = null;
    events.push({ type: 'arc-stop', timeS: end / this.#rateHz, open });
    if (this.#perArcInterval) this.#closeSummary();
  }

  #closeSummary(): void {
    this.#summaries.push(this.summary());
    this.#tally = this.#newTally();
  }

  #feed(safeSample: number, events: ExtractorEvent[]): void {
    const arcInterval = this.#arcInterval;
    if (!arcInterval) return;
    while (arcInterval.nextSample + this.#plan.samples <= safeSample) {
      const from = arcInterval.nextSample;
      const take = (at: number) =>
        at < 0 ? null : this.#stores[at]!.view(from, from + this.#plan.samples).slice();
      const voltage = take(this.#voltageAt);
      const current = take(this.#currentAt);
      if (voltage) this.#tally.quality[this.#voltageAt]!.watch(voltage);
      if (current) this.#tally.quality[this.#currentAt]!.watch(current);
      const window = arcInterval.push(voltage, current);
      if (window) events.push({ type: 'window', window });
    }
  }
}
