import type { LiveState } from '../messages.js';

/** What the person at the device can be told while it listens. */
export type Coaching = 'waiting' | 'gain-control' | 'clipped' | 'wind' | 'too-quiet' | 'good';

/** Share of samples at the rails from which the sound counts as cut off. */
const CLIPPED = 0.001;
/** An arc whose loudest moments stay below this is too far away, dB of full scale (own choice). */
const QUIET_DB = -40;
/** Without an arc only a microphone that hears nothing at all is worth a word, dB of full scale (own choice). */
const DEAF_DB = -75;

/** One thing at a time, the worst first. `peakDb`: the loudest of the last second. */
export function coachingOf(
  live: LiveState | null,
  peakDb: number,
  keptOn: readonly string[],
): Coaching {
  if (!live) return 'waiting';
  if (live.clipped > CLIPPED) return 'clipped';
  if (live.wind) return 'wind';
  if (live.pumping || keptOn.includes('gain control')) return 'gain-control';
  if (peakDb < (live.arc ? QUIET_DB : DEAF_DB)) return 'too-quiet';
  return live.arc ? 'good' : 'waiting';
}
