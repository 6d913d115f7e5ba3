import {
  channelsOf,
  type Samples,
  type SamplesFormat,
  samplesFormat,
} from '../../recording/index.js';
import { type CommonOptions, settled } from '../common-options.js';
import { extractorFor } from '../extractor-for.js';
import { modelFor } from '../model-for.js';
import { UNTOLD_ARC_PRIOR } from '../settings.js';
import { type LiveEvent, LiveStream } from './live-stream.js';

/** How a live signal is to be judged. */
export interface OpenLiveOptions extends SamplesFormat, CommonOptions {
  /** How the signal is called in the results of its welds; `live` unless told. */
  name?: string;
}

/** A live signal that is being judged. Times are s from its first sample. */
export interface Live {
  /** Time up to which samples have come. */
  readonly timeS: number;
  /** Takes the next samples, in pieces of any length, and says what they showed. */
  push(samples: Samples): LiveEvent[];
  /** The signal ends here; an arc that still burns becomes a weld with an open end. */
  flush(): LiveEvent[];
}

/**
 * Opens a signal without an end: the mode while the arc burns, a result document for each weld.
 * Memory does not grow with time.
 *
 * @throws ArcError `bad-samples`, `sample-rate-too-low`; what a set-up or a setting says wrong
 * @example
 * const live = await openLive({ sampleRateHz: 48000, quantity: 'sound' });
 * for (const event of live.push(block)) if (event.type === 'weld') console.log(event.result.mode);
 */
export async function openLive(options: OpenLiveOptions): Promise<Live> {
  const { setup, settings, loadModel } = settled({
    ...options,
    settings: { arcPrior: UNTOLD_ARC_PRIOR, ...options.settings },
  });
  const format = samplesFormat(options);
  const extractor = extractorFor(format, true);
  const model = await modelFor(extractor.featureSet, loadModel);
  const path = options.name ?? 'live';
  const stream = new LiveStream({
    extractor,
    format,
    model,
    settings,
    setup,
    path,
    host: 'library',
    offsetS: 0,
  });
  return {
    get timeS() {
      return stream.timeS;
    },
    push: (samples) =>
      stream.push(channelsOf(samples, options.quantity).map((one) => Float64Array.from(one))),
    flush: () => stream.flush(),
  };
}
