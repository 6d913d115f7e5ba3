import { ArcError, type Note } from '../core/index.js';
import { note } from '../messages/index.js';
import type { ChannelPick } from './channels.js';

/** Watches samples on their way out of a reader. */
export interface SampleGuard {
  /** Repairs one block in place. `channels` are in the order of the picks, before scaling. */
  check(channels: readonly Float64Array[], startSample: number): void;
  /** Adds what was noticed to the notes, after the last block. */
  finish(): void;
}

/** More than this share of non-finite samples is not a recording with a fault but a broken file. */
const MAX_NON_FINITE_SHARE = 0.01;
const TIMES_SHOWN = 5;

/**
 * Replaces samples that are no numbers: by 0 in sound, by the last good value in an electrical trace
 * (0 V would look like a short circuit). Their times go into a note. Float samples above full scale are
 * kept and their peak is said.
 *
 * @throws ArcError `not-finite` when more than 1 % of the samples are no numbers.
 */
export function createSampleGuard(
  picks: readonly ChannelPick[],
  sampleRateHz: number,
  notes: Note[],
): SampleGuard {
  const lastGood = picks.map(() => 0);
  const holds = picks.map((pick) => pick.channel.quantity !== 'sound');
  const times: number[] = [];
  let bad = 0;
  let seen = 0;
  let peak = 0;
  const repair = (samples: Float64Array, c: number, startSample: number): void => {
    let last = lastGood[c]!;
    for (let i = 0; i < samples.length; i++) {
      if (Number.isFinite(samples[i])) {
        last = samples[i]!;
        continue;
      }
      samples[i] = holds[c] ? last : 0;
      if (times.length < TIMES_SHOWN) times.push((startSample + i) / sampleRateHz);
      bad++;
    }
  };
  const refuseIfTooMany = (): void => {
    if (bad > MAX_NON_FINITE_SHARE * seen) throw tooMany(bad, seen);
  };
  return {
    check(channels, startSample) {
      for (const [c, samples] of channels.entries()) {
        let largest = largestFinite(samples);
        if (Number.isNaN(largest)) {
          repair(samples, c, startSample);
          largest = largestFinite(samples);
        }
        peak = Math.max(peak, largest);
        lastGood[c] = samples.at(-1) ?? lastGood[c]!;
        seen += samples.length;
      }
      if (seen >= sampleRateHz) refuseIfTooMany();
    },
    finish() {
      refuseIfTooMany();
      if (bad > 0) notes.push(nonFiniteNote(bad, times, holds.includes(true)));
      if (peak > 1) {
        notes.push(note('above-full-scale', { peakOverFullScale: peak }));
      }
    },
  };
}

/** Largest magnitude; NaN as soon as one sample is not finite. */
function largestFinite(samples: Float64Array): number {
  let largest = 0;
  let witness = 0;
  for (let i = 0; i < samples.length; i++) {
    const value = samples[i]!;
    // Stays 0 until a NaN or an infinity comes by, and is NaN from then on.
    witness += value * 0;
    const size = value < 0 ? -value : value;
    if (size > largest) largest = size;
  }
  return witness === 0 ? largest : Number.NaN;
}

function nonFiniteNote(bad: number, times: readonly number[], held: boolean): Note {
  const replacedBy = held ? 'last-good' : 'zero';
  return note('not-finite', { samples: bad, firstTimesS: [...times], replacedBy });
}

function tooMany(bad: number, seen: number): ArcError {
  return new ArcError({
    code: 'not-finite',
    what: `${bad} of the first ${seen} samples are not numbers.`,
    expected: `at most ${MAX_NON_FINITE_SHARE * 100} %`,
    todo: 'Export the recording again.',
  });
}
