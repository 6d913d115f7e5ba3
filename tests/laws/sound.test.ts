import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRandom, MODES } from '../../src/core/index.js';
import { createSoundExtractor, type ExtractorEvent } from '../../src/features/index.js';
import { atRate } from '../../src/lab/simulate/devices/device.js';
import { beatingNoise } from '../definitions/acoustic/sounds.js';
import { expectByEar, NAMED_BY_EAR } from '../support/by-ear.js';
import { judge, shippedRecording } from '../support/judge.js';

const RATE_HZ = 44_100;
const SEED = 440;

/** Events of a feature extractor for samples pushed in pieces of the given lengths, repeated. */
function eventsOf(
  samples: Float64Array,
  pieces: readonly number[],
  shortWindow = true,
): ExtractorEvent[] {
  const extractor = createSoundExtractor(RATE_HZ, shortWindow);
  const events: ExtractorEvent[] = [];
  for (let at = 0, i = 0; at < samples.length; i++) {
    const end = Math.min(samples.length, at + pieces[i % pieces.length]!);
    events.push(...extractor.push([samples.subarray(at, end)]));
    at = end;
  }
  return [...events, ...extractor.flush()];
}

function valuesOf(event: ExtractorEvent): Float64Array {
  if (event.type === 'window') return event.window.values;
  if (event.type === 'short-window') return event.values;
  throw new Error(`no features in ${event.type}`);
}

describe('laws of sound', () => {
  it.each([true, false])(
    'any split into pushes gives the same windows (newest %s)',
    (shortWindow) => {
      const samples = beatingNoise(RATE_HZ, 1.6, 90, 0.5);
      const whole = eventsOf(samples, [samples.length], shortWindow);
      expect(whole.length).toBeGreaterThan(1);
      fc.assert(
        fc.property(fc.array(fc.integer({ min: 1, max: 30_000 }), { minLength: 1 }), (pieces) => {
          expect(eventsOf(samples, pieces, shortWindow)).toEqual(whole);
        }),
        { seed: SEED, numRuns: 8 },
      );
    },
  );

  it('gain from −24 to +12 dB changes no feature', () => {
    const samples = beatingNoise(RATE_HZ, 1.6, 90, 0.5);
    const plain = eventsOf(samples, [samples.length]);
    fc.assert(
      fc.property(fc.double({ min: -24, max: 12, noNaN: true }), (db) => {
        const gain = 10 ** (db / 20);
        const scaled = eventsOf(
          samples.map((value) => value * gain),
          [samples.length],
        );
        scaled.forEach((event, i) => {
          const other = valuesOf(plain[i]!);
          // Histograms of 1/32 octave let percentiles move by a part of a bin.
          valuesOf(event).forEach((value, k) => {
            expect(Math.abs(value - other[k]!)).toBeLessThan(0.02);
          });
        });
      }),
      { seed: SEED, numRuns: 4 },
    );
  });

  it.each(MODES)(
    '%s keeps its mode at −12 dB, 0.37 s later, and at 22.05 and 48 kHz',
    async (mode) => {
      // One shipped recording a mode. Rejects levels, start times and rates that reach the judgement.
      const { sampleRateHz, channels } = await shippedRecording(`${mode}.wav`);
      const samples = channels[0]!;
      const { verdict } = judge('sound', sampleRateHz, channels);
      expectByEar(verdict, mode);
      const quiet = judge('sound', sampleRateHz, [samples.map((value) => value / 4)]).verdict;
      expectByEar(quiet, mode);
      const shiftS = 0.37;
      const shift = Math.round(shiftS * sampleRateHz);
      // The lead-in is the recording's own background, since digital silence would be an edit.
      const later = new Float64Array(samples.length + shift);
      for (let i = 0; i < shift; i++) later[i] = samples[i % 4000]!;
      later.set(samples, shift);
      const moved = judge('sound', sampleRateHz, [later]).verdict;
      expectByEar(moved, mode);
      expect(moved.arcStretches[0]!.startS - verdict.arcStretches[0]!.startS).toBeCloseTo(
        shiftS,
        1,
      );
      for (const rateHz of [22_050, 48_000]) {
        const resampled = judge('sound', rateHz, [atRate(samples, sampleRateHz, rateHz)]).verdict;
        expectByEar(resampled, mode);
      }
    },
  );

  it.each(MODES)('%s keeps its mode and its edges however a recorder opens', async (mode) => {
    // A room before the arc, entered out of digital silence or by a fade, as recorders begin. Rejects
    // taking the opening for an ignition, and the room after it for the arc.
    const { sampleRateHz, channels } = await shippedRecording(`${mode}.wav`);
    const run = channels[0]!;
    const plain = judge('sound', sampleRateHz, [run]).verdict.arcStretches[0]!;
    const rms = Math.sqrt(run.subarray(0, 4000).reduce((sum, x) => sum + x * x, 0) / 4000);
    const seconds = (least: number, most: number) =>
      fc.double({ min: least, max: most, noNaN: true });
    fc.assert(
      fc.property(seconds(0, 0.3), seconds(0, 0.1), seconds(0.5, 4), (silentS, fadeS, roomS) => {
        const [silent, fade, room] = [silentS, fadeS, roomS].map((s) =>
          Math.round(s * sampleRateHz),
        ) as [number, number, number];
        const random = createRandom('a room');
        const noise = Float64Array.from(
          { length: room },
          (_, i) => rms * random.normal() * Math.min(1, i / Math.max(1, fade)),
        );
        const whole = new Float64Array(silent + room + run.length);
        whole.set(noise, silent);
        whole.set(run, silent + room);
        const { verdict } = judge('sound', sampleRateHz, [whole]);
        expectByEar(verdict, mode);
        // A sound whose mode is left open is hardly told from the hiss of a room.
        if (!NAMED_BY_EAR[mode]) return;
        expect(verdict.arcStretches).toHaveLength(1);
        const startS = verdict.arcStretches[0]!.startS - (silent + room) / sampleRateHz;
        expect(Math.abs(startS - plain.startS)).toBeLessThan(0.1);
      }),
      { seed: SEED, numRuns: 6 },
    );
  });
});
