import type { LiveEvent } from '../../analysis/index.js';
import { DepartureWatch } from '../../analysis/index.js';
import { type Made, message, said } from '../../messages/index.js';
import type { Observer, WatchEvent, WatchState, Why } from './events.js';
import { ModeChangeNotifier } from './mode-change-notifier.js';
import type { WatchOptions } from './options.js';
import { type GoodWelds, refuseOtherKind } from './reference-welds.js';
import { sourceEvent } from './source-event.js';
import type { LiveItem, LiveSource } from './sources/types.js';
import { newState } from './state.js';
import { StreamHolder } from './stream-holder.js';
import { Strip } from './strip.js';
import { weldNotes } from './weld-notes.js';

const because = (why: Made): Why => ({ why: why.text, whyMessage: said(why) });
const noted = (text: Made) => ({ text: text.text, textMessage: said(text) });

/** One run of `watch`: items of the source in, events out to all observers in order. */
export class Session {
  readonly state: WatchState;
  readonly #options: WatchOptions;
  readonly #source: LiveSource;
  readonly #observers: readonly Observer[];
  readonly #good: GoodWelds | null;
  readonly #streams: StreamHolder;
  readonly #watch: DepartureWatch;
  readonly #notifier = new ModeChangeNotifier();
  readonly #strip = new Strip();
  #nextWeld: number;
  #welds = 0;
  #lastMs = performance.now();
  #lostBefore = 0;

  constructor(
    source: LiveSource,
    options: WatchOptions,
    observers: readonly Observer[],
    firstWeld: number,
    good: GoodWelds | null = null,
  ) {
    this.#source = source;
    this.#options = options;
    this.#observers = observers;
    this.#good = good;
    this.#nextWeld = firstWeld;
    this.#streams = new StreamHolder(source.name, options);
    const { expectation, settings } = options;
    this.#watch = new DepartureWatch(expectation, settings.craterMaskS, good?.modeBias);
    const { cells } = this.#strip;
    this.state = newState(source, this.#watch.expected, cells);
  }

  /** Until the source ends or `signal` stops it. What burns then becomes a weld with an open end. */
  async run(signal: AbortSignal): Promise<void> {
    const cpu = process.cpuUsage();
    const startMs = performance.now();
    const timer = setInterval(() => this.#beat(), 200);
    try {
      for await (const item of this.#source.items(signal)) {
        await this.#item(item);
      }
    } finally {
      clearInterval(timer);
      await this.#live(this.#streams.end());
      const used = process.cpuUsage(cpu);
      const cpuShare = (used.user + used.system) / 1000 / (performance.now() - startMs);
      const { timeS, alarms, losses } = this.state;
      await this.#tell({ event: 'end', timeS, welds: this.#welds, alarms, cpuShare, ...losses });
    }
  }

  /** Expects another mode from now on: told by the stream, or by a broker. */
  async expect(mode: WatchState['expected'], why: Made): Promise<void> {
    const { expectation } = this.#options;
    const times = expectation ?? this.#options.expectTimes;
    const next = mode === null ? null : { ...times, mode };
    const changes = this.#watch.expect(next, this.state.timeS);
    this.state.expected = mode;
    await this.#tell({ event: 'expect', timeS: this.state.timeS, mode, ...because(why) });
    await this.#alarms(changes);
  }

  async #item(item: LiveItem): Promise<void> {
    const { timeS } = this.state;
    if (item.type === 'samples') await this.#samples(item.channels);
    else if (item.type === 'format') await this.#format(item);
    else if (item.type === 'gap') await this.#gap(item.lostS, item.why);
    else if (item.type === 'expect')
      await this.expect(item.mode, message('watch-told-by', { by: 'stream' }));
    else if (item.type === 'program') await this.#program(item.name);
    else await this.#tell({ event: 'note', timeS, ...noted(item.text) });
  }

  async #format({ format }: LiveItem & { type: 'format' }): Promise<void> {
    await this.#live(this.#streams.end());
    const { featureSet } = await this.#streams.begin(format);
    if (this.#good) refuseOtherKind(this.#good, this.state.name, featureSet);
    await this.#tell(sourceEvent(this.state, format, this.#good));
  }

  async #samples(channels: Float64Array[]): Promise<void> {
    this.#lastMs = performance.now();
    if (this.state.signal === 'lost')
      await this.#tell({ event: 'signal-back', timeS: this.state.timeS });
    this.state.signal = 'ok';
    await this.#live(this.#streams.push(channels));
    this.state.timeS = this.#streams.timeS;
    if (!this.state.arcOn) this.#strip.set(this.state.timeS, 'off');
  }

  async #gap(lostS: number | null, why: Made): Promise<void> {
    this.#watch.signalLost();
    this.state.signal = 'lost';
    await this.#live(this.#streams.end());
    const wallS = (performance.now() - this.#lastMs) / 1000;
    this.#streams.skip(lostS ?? wallS);
    await this.#tell({ event: 'gap', timeS: this.state.timeS, lostS, ...because(why) });
  }

  async #program(name: string): Promise<void> {
    const mode = this.#options.programs.get(name);
    if (mode !== undefined) return this.expect(mode, message('watch-program', { program: name }));
    const text = message('watch-program-unknown', { program: name });
    await this.#tell({ event: 'note', timeS: this.state.timeS, ...noted(text) });
  }

  /** Runs beside the samples: notices that none come any more. Silence of the line is no change of mode. */
  #beat(): void {
    const { state } = this;
    const quietS = (performance.now() - this.#lastMs) / 1000;
    if (state.signal === 'ok' && quietS > this.#options.lostAfterS) {
      state.signal = 'lost';
      this.#watch.signalLost();
      this.#strip.set(state.timeS, 'lost');
      const why = message('watch-nothing-comes', { quietS });
      void this.#tell({ event: 'signal-lost', timeS: state.timeS, ...because(why) });
    }
    for (const one of this.#observers) one.tick?.(state);
  }

  async #live(events: LiveEvent[]): Promise<void> {
    for (const event of events) await this.#one(event);
  }

  async #one(event: LiveEvent): Promise<void> {
    const { state } = this;
    if (event.type === 'now') return this.#now(event);
    if (event.type === 'window') return this.#window(event);
    if (event.type === 'weld') return this.#weld(event);
    if (event.type === 'not-a-weld') {
      const { startS, endS } = event.arcInterval;
      return this.#tell({ event: 'not-a-weld', timeS: endS, startS });
    }
    const { timeS, open } = event;
    state.arcOn = event.type === 'arc-start';
    state.modes = null;
    state.eventRateHz = null;
    state.weld = this.#nextWeld;
    this.#notifier.reset();
    if (state.arcOn) this.#streams.arcStart(timeS, open);
    await this.#tell({ event: event.type, timeS, weld: state.weld, open });
    if (!state.arcOn && state.signal !== 'lost') await this.#alarms(this.#watch.arcStop(timeS));
  }

  async #now(now: LiveEvent & { type: 'now' }): Promise<void> {
    const { state } = this;
    state.modes = now.modes;
    state.eventRateHz = now.rateHz;
    this.#strip.set(now.timeS, now.modes.provisional.mode ?? 'unnamed');
    for (const change of this.#notifier.changes(now))
      await this.#tell({ ...change, weld: state.weld });
  }

  async #window(window: LiveEvent & { type: 'window' }): Promise<void> {
    if (!this.#streams.counts(window)) return;
    const { timeS, hopS, belief, rateHz } = window;
    await this.#alarms(this.#watch.push(timeS, hopS, belief, rateHz));
  }

  async #alarms(changes: ReturnType<DepartureWatch['push']>): Promise<void> {
    for (const { type, ...rest } of changes) {
      this.state.alarm = this.#watch.alarm;
      if (type === 'alarm') this.state.alarms++;
      await this.#tell({ event: type, ...rest, weld: this.state.weld });
    }
  }

  async #weld({ arcInterval, result }: LiveEvent & { type: 'weld' }): Promise<void> {
    const weld = this.#nextWeld++;
    this.#welds++;
    const lost = this.#source.losses.lostSamples - this.#lostBefore;
    this.#lostBefore += lost;
    result.source.notes.push(...weldNotes(weld, this.#streams.startedAt, lost));
    const { status, mode, confidence } = result;
    const { startS, endS: timeS } = arcInterval;
    await this.#tell({ event: 'weld', timeS, weld, startS, status, mode, confidence, result });
  }

  async #tell(event: WatchEvent): Promise<void> {
    this.state.alarm = this.#watch.alarm;
    for (const one of this.#observers) await one.tell(event, this.state);
  }
}
