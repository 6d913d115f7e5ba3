import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { codecRoundTrip } from '../../src/apps/cli/simulate-codec.js';

const RATE = 44100;
const encoders = spawnSync('ffmpeg', ['-hide_banner', '-encoders']).stdout?.toString() ?? '';
const ready = ['aac', 'libmp3lame', 'libopus'].every((name) => encoders.includes(name));

/** Bursts of a tone, so that a shift in time shows. */
const bursts = Float64Array.from({ length: 2 * RATE }, (_, i) =>
  (i / RATE) % 0.25 < 0.02 ? 0.5 * Math.sin((2 * Math.PI * 1500 * i) / RATE) : 0,
);

/** Lag in samples at which `b` fits `a` best, within ±1200. */
function lag(a: Float64Array, b: Float64Array): number {
  let best = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (let shift = -1200; shift <= 1200; shift += 4) {
    let sum = 0;
    for (let i = 4000; i < a.length - 4000; i += 5) sum += a[i]! * b[i + shift]!;
    if (sum > most) {
      most = sum;
      best = shift;
    }
  }
  return best;
}

describe('codecRoundTrip', () => {
  it('refuses a codec it does not know', () => {
    expect(() => codecRoundTrip(bursts, RATE, 'flac-64')).toThrow(/aac-64/);
  });

  it.skipIf(!ready).each(['aac-64', 'mp3-64', 'opus-24', 'opus-voice-16'])(
    '%s gives the same length back, in time, and changed',
    (codec) => {
      // The encoder's own delay (1105 samples and more for MP3) must be gone; 1 ms of play.
      const back = codecRoundTrip(bursts, RATE, codec);
      expect(back).toHaveLength(bursts.length);
      expect(Math.abs(lag(bursts, back))).toBeLessThan(44);
      expect(back).not.toEqual(bursts);
    },
  );
});
