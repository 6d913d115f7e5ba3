import type { Microphone } from './microphone.js';

/** At the device's own rate where the browser tells it and allows it, so that nothing is resampled. */
export function contextFor({ rateHz }: Microphone): AudioContext {
  if (rateHz === undefined) return new AudioContext({ latencyHint: 'playback' });
  try {
    return new AudioContext({ sampleRate: rateHz, latencyHint: 'playback' });
  } catch {
    return new AudioContext({ latencyHint: 'playback' });
  }
}
