import type {
  ExtractorEvent,
  ExtractorSummary,
  FeatureExtractor,
  HeardBlock,
} from '../features/index.js';
import { type Ear, StreamingNetwork } from '../model/index.js';

/** Length of a level, s, as the edges of an arc are sought. */
const LEVEL_S = 0.016;
/** Time for which blocks are kept beyond the next window's end, s: longer than a window. */
const KEPT_S = 1.5;

/**
 * A feature extractor of sound beside a network that hears the same samples: its windows wait until the network has
 * come as far, and carry what it heard. Each second of sound goes through the network once.
 */
export class HearingExtractor implements FeatureExtractor {
  readonly featureSet;
  readonly windowS;
  readonly hopS;
  readonly shortWindowHopS;
  readonly #extractor: FeatureExtractor;
  readonly #network: StreamingNetwork;
  readonly #blockS: number;
  #blocks: HeardBlock[] = [];
  #heardS = 0;
  #waiting: ExtractorEvent[] = [];
  readonly #rateHz: number;
  /** Levels of the sound until the first window, for a recording that is shorter than one; null after it. */
  #start: { samples: number; squares: number[] } | null = { samples: 0, squares: [] };

  constructor(extractor: FeatureExtractor, rateHz: number, { network, blockS }: Ear) {
    this.#extractor = extractor;
    this.#rateHz = rateHz;
    this.#network = new StreamingNetwork(network, rateHz);
    this.#blockS = blockS;
    this.featureSet = extractor.featureSet;
    this.windowS = extractor.windowS;
    this.hopS = extractor.hopS;
    this.shortWindowHopS = extractor.shortWindowHopS;
  }

  push(channels: readonly Float64Array[]): ExtractorEvent[] {
    this.#network.push(channels[0]!);
    this.#measure(channels[0]!);
    const events = this.#extractor.push(channels);
    if (events.some(({ type }) => type === 'window')) this.#start = null;
    this.#waiting.push(...events);
    return this.#release(false);
  }

  flush(): ExtractorEvent[] {
    this.#network.flush();
    this.#waiting.push(...this.#extractor.flush());
    if (this.#start && this.#start.samples > 0)
      this.#waiting.push(this.#shortRecording(this.#start));
    return this.#release(true);
  }

  summary(): ExtractorSummary {
    return this.#extractor.summary();
  }

  #measure(samples: Float64Array): void {
    const start = this.#start;
    if (!start) return;
    const step = LEVEL_S * this.#rateHz;
    for (let i = 0; i < samples.length && start.samples < this.windowS * this.#rateHz; i++) {
      const at = Math.floor(start.samples++ / step);
      start.squares[at] = (start.squares[at] ?? 0) + samples[i]! ** 2 / step;
    }
  }

  /** All of a recording that is shorter than a window, which has no features. */
  #shortRecording({ samples, squares }: { samples: number; squares: number[] }): ExtractorEvent {
    const none = { lineHz: NaN, lineProminence: NaN, onsetHz: NaN, onsetStrength: NaN };
    return {
      type: 'window',
      window: {
        startS: 0,
        endS: samples / this.#rateHz,
        values: new Float64Array(this.featureSet.features.length).fill(NaN),
        sound: { ...none, levels: Float64Array.from(squares), clippedShare: 0 },
      },
    };
  }

  #release(all: boolean): ExtractorEvent[] {
    const blocks = this.#network.take();
    this.#blocks.push(...blocks);
    this.#heardS += blocks.length * this.#blockS;
    const ready: ExtractorEvent[] = [];
    while (this.#waiting[0] && (all || endOf(this.#waiting[0]) <= this.#heardS + 1e-9))
      ready.push(this.#carry(this.#waiting.shift()!));
    const nextS = Math.min(this.#heardS, ...this.#waiting.slice(0, 1).map(endOf)) - KEPT_S;
    const before = this.#blocks.findIndex(({ index }) => index * this.#blockS >= nextS);
    if (before > 0) this.#blocks.splice(0, before);
    return ready;
  }

  #carry(event: ExtractorEvent): ExtractorEvent {
    if (event.type === 'window')
      return { ...event, window: { ...event.window, heard: this.#within(event.window) } };
    if (event.type === 'short-window') return { ...event, heard: this.#within(event) };
    return event;
  }

  #within({ startS, endS }: { startS: number; endS: number }): HeardBlock[] {
    const from = Math.round(startS / this.#blockS);
    const to = Math.max(from + 1, Math.round(endS / this.#blockS));
    return this.#blocks.filter(({ index }) => index >= from && index < to);
  }
}

function endOf(event: ExtractorEvent): number {
  if (event.type === 'window') return event.window.endS;
  return event.type === 'short-window' ? event.endS : event.timeS;
}
