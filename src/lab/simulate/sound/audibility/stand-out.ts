import { BAND_COUNT } from './band-energies.js';

/** How well the events of one kind stand out. */
export interface StandOut {
  /** Events within the sound. */
  count: number;
  /** Distance between the ideal listener's answers with and without them, in standard deviations. */
  dPrime: number;
  /** Their energy over everything else while the arc burns, dB, by listening band; −Infinity for none. */
  overRestDb: number[];
}

/** Frames from `from` on and before `to`. */
export interface Range {
  from: number;
  to: number;
}

/** Longest way to the microphone that is looked for, frames of 1 ms. */
const MOST_DELAY = 30;
const MOST_REACH = 20;
/** Medians to which an energy is held. */
const MOST_MEDIANS = 10;

/**
 * How far the events of one kind stand out of everything else, by the measure that `audibility` describes: `own` and
 * `others` are energies by frame and band, `events` the frames of the events.
 */
export function standOut(
  own: Float64Array | undefined,
  others: Float64Array,
  events: readonly number[],
  burning: Range,
): StandOut {
  const none = new Array<number>(BAND_COUNT).fill(Number.NEGATIVE_INFINITY);
  const silent = { count: events.length, dPrime: 0, overRestDb: none };
  if (own === undefined) return silent;
  const overRestDb = energyRatioDb(own, others, burning);
  if (overRestDb.every((db) => db === Number.NEGATIVE_INFINITY)) return silent;
  const { rest, signal, variance } = inMedians(own, others, burning);
  const delay = delayOf(signal, events);
  const reach = Math.max(1, Math.min(MOST_REACH, Math.floor(medianGap(events) / 2)));
  const lags = 2 * reach + 1;
  const [one, two] = halves(events).map((half) => meanAt(signal, half, delay - reach, lags));
  const byOne = contrast(one!, lags, variance);
  const byTwo = contrast(two!, lags, variance);
  const added = 0.5 * (product(byOne, two!) + product(byTwo, one!));
  const deviation = Math.hypot(
    Math.SQRT1_2 * deviationOf(rest, byOne, lags, burning),
    Math.SQRT1_2 * deviationOf(rest, byTwo, lags, burning),
  );
  const dPrime = added > 0 && deviation > 0 ? (added * Math.sqrt(events.length)) / deviation : 0;
  return { count: events.length, dPrime, overRestDb };
}

/** Every other event; a single one in both. */
function halves(events: readonly number[]): [readonly number[], readonly number[]] {
  if (events.length < 2) return [events, events];
  return [events.filter((_, k) => k % 2 === 0), events.filter((_, k) => k % 2 === 1)];
}

function product(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

function energyRatioDb(own: Float64Array, others: Float64Array, { from, to }: Range): number[] {
  return Array.from({ length: BAND_COUNT }, (_, b) => {
    let signal = 0;
    let noise = 0;
    for (let f = from; f < to; f++) {
      signal += own[f * BAND_COUNT + b]!;
      noise += others[f * BAND_COUNT + b]!;
    }
    return 10 * Math.log10(signal / Math.max(noise, Number.MIN_VALUE));
  });
}

/** Energies over the median of everything else, held; and the variance of everything else by band. */
function inMedians(own: Float64Array, others: Float64Array, { from, to }: Range) {
  const rest = new Float64Array(others.length);
  const signal = new Float64Array(others.length);
  const variance = new Array<number>(BAND_COUNT).fill(0);
  const every = Math.ceil((to - from) / MEDIAN_FRAMES);
  const column = new Float64Array(Math.ceil((to - from) / every));
  for (let b = 0; b < BAND_COUNT; b++) {
    for (let k = 0; k < column.length; k++)
      column[k] = others[(from + k * every) * BAND_COUNT + b]!;
    // Digital silence has no median; then anything at all stands out.
    const median = Math.max(column.sort()[column.length >> 1] ?? 0, 1e-300);
    let sum = 0;
    let squares = 0;
    for (let i = b; i < others.length; i += BAND_COUNT) {
      const before = Math.min(MOST_MEDIANS, others[i]! / median);
      rest[i] = before;
      signal[i] = Math.min(MOST_MEDIANS, (others[i]! + own[i]!) / median) - before;
      const f = (i - b) / BAND_COUNT;
      if (f < from || f >= to) continue;
      sum += before;
      squares += before * before;
    }
    const n = to - from;
    variance[b] = Math.max(squares / n - (sum / n) ** 2, LEAST_VARIANCE);
  }
  return { rest, signal, variance };
}

/** A median is taken over about so many frames: 2 % in white noise. */
const MEDIAN_FRAMES = 1000;

/** Where everything else is the same in all frames, the listener's own noise remains: 1 % of the level. */
const LEAST_VARIANCE = 1e-4;

/** Frames from the events to where most of their energy arrives. */
function delayOf(signal: Float64Array, events: readonly number[]): number {
  const profile = meanAt(signal, events, -2, MOST_DELAY + 3);
  let best = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (let l = 0; l < MOST_DELAY + 3; l++) {
    let energy = 0;
    for (let b = 0; b < BAND_COUNT; b++) energy += profile[l * BAND_COUNT + b]!;
    if (energy > most) {
      most = energy;
      best = l;
    }
  }
  return best - 2;
}

function medianGap(events: readonly number[]): number {
  const sorted = [...events].sort((a, b) => a - b);
  const gaps = sorted.slice(1).map((f, i) => f - sorted[i]!);
  gaps.sort((a, b) => a - b);
  return gaps[gaps.length >> 1] ?? 2 * MOST_REACH;
}

/** Mean over the events, by lag and band; frames outside of the sound count as nothing. */
function meanAt(
  series: Float64Array,
  events: readonly number[],
  firstLag: number,
  lags: number,
): Float64Array {
  const out = new Float64Array(lags * BAND_COUNT);
  for (const event of events) {
    const start = (event + firstLag) * BAND_COUNT;
    for (let i = 0; i < out.length; i++) out[i]! += series[start + i] ?? 0;
  }
  for (let i = 0; i < out.length; i++) out[i]! /= events.length;
  return out;
}

/** Mean over the lags taken away, and divided by the variance of the band. */
function contrast(mean: Float64Array, lags: number, variance: readonly number[]): Float64Array {
  const out = new Float64Array(mean.length);
  for (let b = 0; b < BAND_COUNT; b++) {
    let sum = 0;
    for (let l = 0; l < lags; l++) sum += mean[l * BAND_COUNT + b]!;
    for (let l = 0; l < lags; l++) {
      const i = l * BAND_COUNT + b;
      out[i] = (mean[i]! - sum / lags) / variance[b]!;
    }
  }
  return out;
}

/** Standard deviation of the weighted energy over all places where the window fits. */
function deviationOf(
  rest: Float64Array,
  weights: Float64Array,
  lags: number,
  { from, to }: Range,
): number {
  let count = 0;
  let sum = 0;
  let squares = 0;
  // The weights have no sum in any band, so their number for a quiet listener is the noise of `LEAST_VARIANCE`.
  let own = 0;
  for (const w of weights) own += LEAST_VARIANCE * w * w;
  // Windows that overlap by more than nine tenths say nothing new.
  const every = Math.max(1, Math.floor(lags / 10));
  for (let f = from; f + lags <= to; f += every) {
    const start = f * BAND_COUNT;
    let y = 0;
    for (let i = 0; i < weights.length; i++) y += weights[i]! * rest[start + i]!;
    count++;
    sum += y;
    squares += y * y;
  }
  const variance = count > 1 ? squares / count - (sum / count) ** 2 : 0;
  return Math.sqrt(Math.max(variance, own));
}
