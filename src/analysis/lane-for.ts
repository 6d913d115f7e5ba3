import { ArcError } from '../core/index.js';
import { createElectricalLane, createSoundLane, type Lane } from '../features/index.js';
import type { Recording } from '../recording/index.js';

/**
 * The lane that fits what was recorded; `live` for a signal without an end: figures of each stretch apart, and
 * of sound the newest half second by itself.
 */
export function laneFor(
  recording: Pick<Recording, 'kind' | 'sampleRateHz' | 'channels'>,
  live = false,
): Lane {
  if (recording.kind === 'sound') return createSoundLane(recording.sampleRateHz, live);
  const hasVoltage = recording.channels.some((channel) => channel.quantity === 'voltage');
  const hasCurrent = recording.channels.some((channel) => channel.quantity === 'current');
  if (!hasVoltage && !hasCurrent)
    throw new ArcError({
      code: 'no-electrical-channel',
      what: 'The recording holds neither a voltage nor a current.',
      expected: 'a voltage channel, a current channel, or both',
      todo: 'Name the channels with --channel voltage=1,current=2 and state their --scale.',
    });
  return createElectricalLane({
    sampleRateHz: recording.sampleRateHz,
    hasVoltage,
    hasCurrent,
    perStretch: live,
  });
}
