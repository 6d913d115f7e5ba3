import { ArcError } from '../core/index.js';
import {
  createElectricalExtractor,
  createSoundExtractor,
  type FeatureExtractor,
} from '../features/index.js';
import type { Recording } from '../recording/index.js';

/**
 * The feature extractor that fits what was recorded; `live` for a signal without an end: figures of each arc interval apart, and
 * of sound the newest half second by itself.
 */
export function extractorFor(
  recording: Pick<Recording, 'kind' | 'sampleRateHz' | 'channels'>,
  live = false,
): FeatureExtractor {
  if (recording.kind === 'sound') return createSoundExtractor(recording.sampleRateHz, live);
  const hasVoltage = recording.channels.some((channel) => channel.quantity === 'voltage');
  const hasCurrent = recording.channels.some((channel) => channel.quantity === 'current');
  if (!hasVoltage && !hasCurrent)
    throw new ArcError({
      code: 'no-electrical-channel',
      what: 'The recording holds neither a voltage nor a current.',
      expected: 'a voltage channel, a current channel, or both',
      todo: 'Name the channels with --channel voltage=1,current=2 and state their --scale.',
    });
  return createElectricalExtractor({
    sampleRateHz: recording.sampleRateHz,
    hasVoltage,
    hasCurrent,
    perArcInterval: live,
  });
}
