import { describe, expect, it } from 'vitest';
import { coachingOf } from '../../../../src/apps/page/capture/coaching.js';
import { EndOfArc } from '../../../../src/apps/page/capture/end-of-arc.js';
import type { LiveState } from '../../../../src/apps/page/messages.js';
import { LevelWatch } from '../../../../src/apps/page/worker/level-watch.js';
import { createRandom } from '../../../../src/core/index.js';
import { shippedRecording } from '../../../support/judge.js';

const RATE_HZ = 44_100;
const BLOCK = 4410;

/** What the watch says after each tenth of a second of a sound. */
function follow(sample: (timeS: number) => number, lengthS: number, arc = true) {
  const watch = new LevelWatch(RATE_HZ);
  return Array.from({ length: Math.round(10 * lengthS) }, (_, block) => {
    const samples = Int16Array.from({ length: BLOCK }, (_value, i) => {
      const value = sample((block * BLOCK + i) / RATE_HZ);
      return Math.max(-32768, Math.min(32767, Math.round(32768 * value)));
    });
    watch.samples(samples);
    return watch.read(arc);
  });
}

const hiss = (seed: string, rms: number): (() => number) => {
  const random = createRandom(seed);
  return () => rms * random.normal();
};

describe('the level while it records', () => {
  // Plain maths: a sine of amplitude 0.1 has an rms of 0.1/√2, -23.01 dB of full scale.
  it('is the rms of what came since it was last read', () => {
    const [first] = follow((timeS) => 0.1 * Math.sin(2 * Math.PI * 1000 * timeS), 0.1);
    expect(first?.rmsDb).toBeCloseTo(-23.01, 1);
  });

  it('calls rumble that lasts wind, and neither a hiss nor a short knock', () => {
    const white = hiss('wind', 0.02);
    const windy = (timeS: number): number => 0.2 * Math.sin(2 * Math.PI * 30 * timeS) + white();
    const states = follow(windy, 2);
    expect(states[5]?.wind).toBe(false);
    expect(states.at(-1)?.wind).toBe(true);
    expect(follow(hiss('calm', 0.1), 3).some((one) => one.wind)).toBe(false);
    const knock = (timeS: number): number => (timeS < 0.5 ? windy(timeS) : white());
    expect(follow(knock, 3).some((one) => one.wind)).toBe(false);
  });

  // A gain control as phones have it: down by 12 dB with a time constant of 1.5 s.
  it('calls an arc that sinks steadily gain control, and not one that holds or flutters', () => {
    const white = hiss('arc', 0.2);
    const sinking = (timeS: number): number =>
      white() * 10 ** ((-12 / 20) * (1 - Math.exp(-timeS / 1.5)));
    expect(follow(sinking, 4).at(-1)?.pumping).toBe(true);
    expect(follow(white, 4).some((one) => one.pumping)).toBe(false);
    const flutter = (timeS: number): number =>
      white() * 10 ** (0.2 * Math.sin(2 * Math.PI * timeS));
    expect(follow(flutter, 4).some((one) => one.pumping)).toBe(false);
    expect(follow(sinking, 4, false).some((one) => one.pumping)).toBe(false);
  });

  it.each(['short-circuit', 'globular', 'spray', 'pulsed-spray'])(
    'finds nothing wrong with the demonstration recording of %s',
    async (name) => {
      const { sampleRateHz, channels } = await shippedRecording(`${name}.wav`);
      const samples = channels[0] ?? [];
      const watch = new LevelWatch(sampleRateHz);
      const step = Math.round(sampleRateHz / 10);
      for (let from = 0; from + step <= samples.length; from += step) {
        const block = Array.from(samples.slice(from, from + step));
        watch.samples(Int16Array.from(block, (value) => Math.round(32767 * value)));
        const burning = from > sampleRateHz && from < samples.length - sampleRateHz;
        expect(watch.read(burning)).toMatchObject({ wind: false, pumping: false });
      }
    },
  );
});

const live = (changes: Partial<LiveState>): LiveState => ({
  timeS: 1,
  peakDb: -20,
  clipped: 0,
  arc: true,
  mode: null,
  settled: false,
  usableS: 0,
  rmsDb: -30,
  wind: false,
  pumping: false,
  ...changes,
});

describe('coaching', () => {
  it('says one thing, the worst first', () => {
    expect(coachingOf(live({ clipped: 0.01, wind: true, pumping: true }), -1, [])).toBe('clipped');
    expect(coachingOf(live({ wind: true, pumping: true }), -20, [])).toBe('wind');
    expect(coachingOf(live({ pumping: true }), -20, [])).toBe('gain-control');
    expect(coachingOf(live({}), -20, ['gain control'])).toBe('gain-control');
    expect(coachingOf(live({}), -55, [])).toBe('too-quiet');
    expect(coachingOf(live({}), -20, [])).toBe('good');
  });

  // Rejects a word on the level of a quiet room before anybody welds.
  it('waits in a quiet room, and speaks up for a microphone that hears nothing', () => {
    expect(coachingOf(live({ arc: false }), -55, [])).toBe('waiting');
    expect(coachingOf(live({ arc: false }), Number.NEGATIVE_INFINITY, [])).toBe('too-quiet');
    expect(coachingOf(null, Number.NEGATIVE_INFINITY, [])).toBe('waiting');
  });
});

describe('the end of an arc', () => {
  const over = (arcs: readonly (readonly [arc: boolean, lengthS: number])[]): number | null => {
    const end = new EndOfArc();
    let timeS = 0;
    for (const [arc, lengthS] of arcs)
      for (let k = 0; k < Math.round(10 * lengthS); k++) {
        timeS += 0.1;
        if (end.isOver({ arc, timeS })) return timeS;
      }
    return null;
  };

  it('is three seconds after an arc of a second or more', () => {
    expect(
      over([
        [false, 20],
        [true, 5],
        [false, 10],
      ]),
    ).toBeCloseTo(28, 0);
  });

  it('is not a scratch, a pause between two strikes, or silence', () => {
    expect(over([[false, 30]])).toBeNull();
    expect(
      over([
        [true, 0.5],
        [false, 30],
      ]),
    ).toBeNull();
    expect(
      over([
        [true, 3],
        [false, 2],
        [true, 3],
        [false, 2],
      ]),
    ).toBeNull();
  });
});
