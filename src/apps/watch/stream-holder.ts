import { extractorFor, type LiveEvent, type LiveFormat, LiveStream } from '../../analysis/index.js';
import { loadShippedModel } from '../../files/shipped-models.js';
import { parseModel } from '../../model/parse/index.js';
import type { WatchOptions } from './options.js';

/** The stream between two breaks of the time base, and the time that runs on over them. */
export class StreamHolder {
  readonly #name: string;
  readonly #options: WatchOptions;
  #stream: LiveStream | undefined;
  #format: LiveFormat | undefined;
  #make: ((offsetS: number) => LiveStream) | undefined;
  #endedS = 0;
  #startedAt: Date | undefined;
  /** No alarm before this time: the start of an arc and tacks are left alone. */
  #alarmsFromS = 0;

  constructor(name: string, options: WatchOptions) {
    this.#name = name;
    this.#options = options;
  }

  /** When the first sample was heard. */
  get startedAt(): Date {
    return this.#startedAt ?? new Date();
  }

  get timeS(): number {
    return this.#stream?.timeS ?? this.#endedS;
  }

  /**
   * Loads what a format needs; the name of its feature set, which says what it is a recording of.
   *
   * @throws ArcError as `extractorFor` and `parseModel` do
   */
  async begin(format: LiveFormat): Promise<{ featureSet: string }> {
    const { settings, setup } = this.#options;
    const { id } = extractorFor(format, true).featureSet;
    const document = await loadShippedModel(id);
    this.#format = format;
    this.#make = (offsetS) => {
      const extractor = extractorFor(format, true);
      const model = parseModel(document, extractor.featureSet);
      const host = `node ${process.version.slice(1)}`;
      const path = this.#name;
      return new LiveStream({ extractor, format, model, settings, setup, path, host, offsetS });
    };
    return { featureSet: id };
  }

  push(channels: Float64Array[]): LiveEvent[] {
    this.#startedAt ??= new Date();
    this.#stream ??= this.#make!(this.#endedS);
    return this.#stream.push(channels);
  }

  /** Ends the stream at hand; the next samples begin a new one where this one ended. */
  end(): LiveEvent[] {
    const stream = this.#stream;
    if (!stream) return [];
    const events = stream.flush();
    this.#endedS = stream.timeS;
    this.#stream = undefined;
    return events;
  }

  /** Time that passed unheard. */
  skip(seconds: number): void {
    // A whole number of samples, so that times stay on the grid of the samples.
    const rateHz = this.#format?.sampleRateHz ?? 1;
    this.#endedS += Math.round(seconds * rateHz) / rateHz;
  }

  /** An arc began; `open` where it was burning already. */
  arcStart(timeS: number, open: boolean): void {
    const { tackS, settings } = this.#options;
    this.#alarmsFromS = timeS + (open ? 0 : Math.max(tackS, settings.ignitionMaskS));
  }

  /** Whether an alarm may be raised by this window. */
  counts({ steady, timeS, hopS }: LiveEvent & { type: 'window' }): boolean {
    return steady && timeS - hopS >= this.#alarmsFromS;
  }
}
