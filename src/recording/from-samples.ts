import { ArcError } from '../core/index.js';
import { createSampleGuard } from './guard.js';
import type { Channel, Recording, SampleBlock } from './types.js';

/** What samples in memory are samples of. */
export type Quantity = 'sound' | 'voltage' | 'current' | 'voltage-current';

/** Samples of one channel, oldest first: sound with full scale 1, volts, or amperes. */
export type ChannelSamples = ArrayLike<number>;

/** One channel, or voltage and current in this order for `voltage-current`. */
export type Samples = ChannelSamples | readonly ChannelSamples[];

/** How samples in memory are to be read. */
export interface SamplesFormat {
  /** Samples a second, the same for all channels. */
  sampleRateHz: number;
  quantity: Quantity;
}

const CHANNELS: Record<Quantity, readonly Channel[]> = {
  sound: [{ name: 'sound', quantity: 'sound', unit: 'full-scale' }],
  voltage: [{ name: 'voltage', quantity: 'voltage', unit: 'V' }],
  current: [{ name: 'current', quantity: 'current', unit: 'A' }],
  'voltage-current': [
    { name: 'voltage', quantity: 'voltage', unit: 'V' },
    { name: 'current', quantity: 'current', unit: 'A' },
  ],
};
const BLOCK = 1 << 16;

/** What is known of such samples before the first one. @throws ArcError `bad-samples` */
export function samplesFormat({
  sampleRateHz,
  quantity,
}: SamplesFormat): Omit<Recording, 'blocks' | 'close'> {
  if (!(Number.isFinite(sampleRateHz) && sampleRateHz > 0))
    throw badSamples(
      `The sample rate was given as ${String(sampleRateHz)}.`,
      'samples a second, such as sampleRateHz: 44100',
    );
  const channels = CHANNELS[quantity];
  if (!channels)
    throw badSamples(
      `The quantity was given as ${JSON.stringify(quantity)}.`,
      `one of ${Object.keys(CHANNELS).join(', ')}`,
    );
  return {
    kind: quantity === 'sound' ? 'sound' : 'electrical',
    format: 'samples',
    sampleRateHz,
    channels: channels.map((one) => ({ ...one })),
    notes: [],
  };
}

/**
 * The channels of samples that came in any form; nothing is copied.
 * @throws ArcError `bad-samples` when their number does not fit the quantity or their lengths differ
 */
export function channelsOf(samples: Samples, quantity: Quantity): readonly ChannelSamples[] {
  const wanted = CHANNELS[quantity].length;
  const list = isList(samples) ? samples : [samples];
  const lengths = list.map((one) => one?.length);
  if (list.length === wanted && lengths.every((one) => one !== undefined && one === lengths[0]))
    return list;
  throw badSamples(
    `${list.length} ${list.length === 1 ? 'channel' : 'channels'} of ${lengths.join(' and ')} samples came for ${quantity}.`,
    wanted === 1
      ? 'one array of numbers'
      : 'two arrays of equal length: [volts, amperes], in this order',
  );
}

function isList(samples: Samples): samples is readonly ChannelSamples[] {
  return Array.isArray(samples) && typeof samples[0] === 'object';
}

/**
 * Samples in memory as a recording. Samples that are no numbers are repaired and noted as in a file.
 *
 * @param samples one array, or `[volts, amperes]`; they are not changed
 * @throws ArcError `bad-samples`, `not-finite` (while reading)
 */
export function samplesRecording(samples: Samples, format: SamplesFormat): Recording {
  const head = samplesFormat(format);
  const channels = channelsOf(samples, format.quantity);
  const length = channels[0]!.length;
  if (length === 0) throw badSamples('There are no samples.', 'at least one sample');
  const picks = head.channels.map((channel, index) => ({ channel, index, factor: 1 }));
  const guard = createSampleGuard(picks, head.sampleRateHz, head.notes);
  return {
    ...head,
    expectedSamples: length,
    async *blocks(): AsyncGenerator<SampleBlock> {
      for (let at = 0; at < length; at += BLOCK) {
        const end = Math.min(length, at + BLOCK);
        const block = channels.map((one) =>
          Float64Array.from({ length: end - at }, (_, i) => one[at + i]!),
        );
        guard.check(block, at);
        yield { startSample: at, channels: block };
      }
      guard.finish();
    },
  };
}

function badSamples(what: string, expected: string): ArcError {
  return new ArcError({ code: 'bad-samples', what, expected, todo: 'Correct the call.' });
}
