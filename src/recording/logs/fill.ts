import { ArcError } from '../../core/index.js';
import { concat } from '../../dsp/index.js';

/** Up to this length a missing stretch is bridged by a straight line; a longer one is set to 0. */
export const BRIDGED_S = 0.02;
/** A trace that is mostly missing is no evidence. */
const MAX_MISSING_SHARE = 0.5;

/** Replaces values that are missing or not finite, in all channels together. */
export interface GapFiller {
  /** Samples in; as many or fewer out, as long as a stretch is open. The rest comes later. */
  push(channels: Float64Array[]): Float64Array[];
  flush(): Float64Array[];
  readonly bridged: number;
  readonly zeroed: number;
}

/** One channel's open stretch. */
interface ChannelState {
  /** Last good value; NaN before the first. */
  before: number;
  /** True while a stretch is already known to be too long to bridge. */
  long: boolean;
}

/**
 * A short missing stretch is bridged by a straight line (at an edge, by its one neighbour). In a longer
 * one nothing is known: 0 V and 0 A are put in, where no arc is found, instead of a line that would
 * look like a steady arc. Memory is bounded by the longest stretch that is bridged.
 */
export function createGapFiller(count: number, rateHz: number): GapFiller {
  const longest = Math.max(1, Math.round(BRIDGED_S * rateHz));
  const states: ChannelState[] = Array.from({ length: count }, () => ({
    before: Number.NaN,
    long: false,
  }));
  let held: Float64Array[] = Array.from({ length: count }, () => new Float64Array(0));
  const counts = { bridged: 0, zeroed: 0 };

  const fill = (channels: Float64Array[], atEnd: boolean): Float64Array[] => {
    let settled = channels[0]?.length ?? 0;
    channels.forEach((samples, c) => {
      const open = fillChannel(samples, states[c] as ChannelState, longest, atEnd, counts);
      settled = Math.min(settled, open);
    });
    held = channels.map((samples) => samples.slice(settled));
    // What is emitted fixes the value to the left of what is held.
    channels.forEach((samples, c) => {
      if (settled > 0)
        (states[c] as ChannelState).before = lastGood(samples, settled, states[c]?.before);
    });
    return channels.map((samples) => samples.subarray(0, settled));
  };

  return {
    push(channels) {
      if (held[0]?.length === 0 && channels.every(isFiniteArray)) {
        channels.forEach((samples, c) => {
          states[c] = { before: samples.at(-1) ?? Number.NaN, long: false };
        });
        return channels;
      }
      return fill(
        channels.map((samples, c) => concat([held[c] as Float64Array, samples])),
        false,
      );
    },
    flush: () => fill(held, true),
    get bridged() {
      return counts.bridged;
    },
    get zeroed() {
      return counts.zeroed;
    },
  };
}

/** Fills closed stretches in place; gives the start of the open one, or the length. */
function fillChannel(
  samples: Float64Array,
  state: ChannelState,
  longest: number,
  atEnd: boolean,
  counts: { bridged: number; zeroed: number },
): number {
  let i = 0;
  while (i < samples.length) {
    if (Number.isFinite(samples[i])) {
      state.long = false;
      i++;
      continue;
    }
    let end = i;
    while (end < samples.length && !Number.isFinite(samples[end])) end++;
    const closed = end < samples.length || atEnd;
    if (!closed && !state.long && end - i <= longest) return i;
    const before = i > 0 ? (samples[i - 1] as number) : state.before;
    const after = end < samples.length ? (samples[end] as number) : Number.NaN;
    if (state.long || end - i > longest || (Number.isNaN(before) && Number.isNaN(after))) {
      samples.fill(0, i, end);
      counts.zeroed += end - i;
      state.long = true;
    } else {
      bridge(samples, i, end, before, after);
      counts.bridged += end - i;
    }
    i = end;
  }
  return samples.length;
}

function bridge(
  samples: Float64Array,
  start: number,
  end: number,
  before: number,
  after: number,
): void {
  const from = Number.isNaN(before) ? after : before;
  const to = Number.isNaN(after) ? before : after;
  for (let k = start; k < end; k++) {
    samples[k] = from + ((to - from) * (k - start + 1)) / (end - start + 1);
  }
}

function lastGood(samples: Float64Array, end: number, before = Number.NaN): number {
  const last = samples[end - 1] as number;
  return Number.isFinite(last) ? last : before;
}

/** @throws ArcError `mostly-missing` when more than half of the samples had to be filled. */
export function refuseMostlyMissing(fileName: string, missing: number, samples: number): void {
  if (samples === 0 || missing <= MAX_MISSING_SHARE * samples) return;
  throw new ArcError({
    code: 'mostly-missing',
    what: `${fileName}: ${missing} of ${samples} samples are missing or not numbers.`,
    expected: `at most ${MAX_MISSING_SHARE * 100} % missing`,
    todo: 'Check the export, or state other columns.',
  });
}

function isFiniteArray(samples: Float64Array): boolean {
  let sum = 0;
  // Zero times a finite number is 0, times anything else NaN.
  for (let i = 0; i < samples.length; i++) sum += (samples[i] as number) * 0;
  return sum === 0;
}
