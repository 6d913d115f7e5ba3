import { describe, expect, it } from 'vitest';
import { createSoundExtractor, SOUND_FEATURES } from '../../../src/features/index.js';
import { beatingNoise, whiteNoise } from './sounds.js';

const RATE_HZ = 16_000;
/** Length of the newest half of a window by definition (two hops of four), s. */
const HALF_S = 0.512;

function listen(samples: Float64Array) {
  const events = createSoundExtractor(RATE_HZ, true).push([samples]);
  return {
    windows: events.flatMap((event) => (event.type === 'window' ? [event.window] : [])),
    shortWindow: events.flatMap((event) => (event.type === 'short-window' ? [event] : [])),
  };
}

describe('the newest half second', () => {
  it('comes twice a hop, and never without being asked for', () => {
    // By hand: 0.512 s at first, then every 0.128 s; 3 s hold (3 − 0.512) / 0.128 = 19 more, and the first.
    const { shortWindow } = listen(whiteNoise(RATE_HZ, 3));
    expect(shortWindow).toHaveLength(20);
    expect(shortWindow[0]).toMatchObject({ startS: 0, endS: HALF_S });
    expect(shortWindow[1]!.endS - shortWindow[0]!.endS).toBeCloseTo(0.128, 12);
    const unasked = createSoundExtractor(RATE_HZ).push([whiteNoise(RATE_HZ, 3)]);
    expect(unasked.some((event) => event.type === 'short-window')).toBe(false);
  });

  // A sound that repeats itself every half second is the same laid down twice: then half a window and the
  // whole must agree. Rejects a half that is padded, turned round, or cut at the wrong frame.
  it('says of a sound that repeats itself what the whole window says', () => {
    const half = beatingNoise(RATE_HZ, HALF_S, 93.75, 0.6);
    const samples = Float64Array.from(
      { length: 16 * half.length },
      (_, i) => half[i % half.length]!,
    );
    const { windows, shortWindow } = listen(samples);
    const window = windows.at(-1)!;
    const same = shortWindow.find((event) => event.endS === window.endS)!;
    const apart = SOUND_FEATURES.features.flatMap(({ id }, k) => {
      const [one, other] = [window.values[k]!, same.values[k]!];
      const near = Number.isNaN(one) ? Number.isNaN(other) : Math.abs(one - other) < 0.02;
      return near ? [] : [`${id}: ${one} against ${other}`];
    });
    expect(apart).toEqual([]);
  });

  // Rejects the older half of the window, or one that still holds what was before.
  it('has left the old beat half a second after a change, when the window still holds it', () => {
    const [oldHz, newHz] = [156.25, 62.5];
    const samples = new Float64Array(6 * RATE_HZ);
    samples.set(beatingNoise(RATE_HZ, 3, oldHz, 0.8, 1));
    samples.set(beatingNoise(RATE_HZ, 3, newHz, 0.8, 2), 3 * RATE_HZ);
    const line = SOUND_FEATURES.features.findIndex(({ id }) => id === 'lineRate');
    const after = listen(samples).shortWindow.filter(({ startS }) => startS >= 3 && startS < 3.5);
    expect(after.length).toBeGreaterThanOrEqual(4);
    for (const { values } of after) expect(values[line]).toBeCloseTo(Math.log2(newHz), 1);
  });
});
