import FFT from 'fft.js';
import { BIN_RATE_HZ } from './bins.js';
import { changesOf, loudnessOf } from './event-series.js';
import { lagScores, whiten } from './whiten.js';

/** Recorders may have been started this far apart, s. */
export const MOST_LAG_S = 30;
/**
 * Score from which a peak stands out. Measured on simulated arcs: of 160 sounds with the trace of another
 * arc none came above 6.3; see the fusion part of the model card for what it finds.
 */
export const LEAST_SCORE = 7;
/** The same where one clock is stated: only the few lags of sound's way through the air come into question. */
export const LEAST_SCORE_SHARED = 4.5;
/** The next best lag may reach this share of the peak, else an even beat leaves the lag open. */
const MOST_RIVAL = 0.8;
/** Lags this close to the peak belong to it (contact and re-ignition of one short circuit), s. */
const SAME_PEAK_S = 0.008;
/** With one clock the sound comes after the trace by at most this (20 m of air), s. */
const LONGEST_WAY_S = 0.06;
/** Part of the trace that is correlated at a time, s; clocks that drift by 50 ppm stay within 1.5 ms. */
const PIECE_S = 30;
/** Least time between the middles of two pieces for a drift: 0.2 ms over it are 20 ppm. */
const DRIFT_APART_S = 10;

/** How a sound lies against a trace. */
export interface Alignment {
  /** Whether the peak stands out enough to say that both are of one run. */
  found: boolean;
  /** Sound time minus trace time of the same event, s; null for nothing to correlate. */
  delayS: number | null;
  /** Height of the peak over the rms of all lags. */
  score: number;
  /** Height of the next best peak over that of the best, 0 to 1. */
  rival: number;
  /** How much faster the sound's clock runs than the trace's, parts per million; null where not to be told. */
  driftPpm: number | null;
}

interface Peak {
  lag: number;
  score: number;
  rival: number;
}

/**
 * Finds the delay between the frames of a sound and of a trace (see `event-series.ts`): the arc's sound
 * follows the rate of change of its power (Drouet & Nadeau, IEEE Trans. PAS-98 (1979) 1632) and its hiss the power.
 * Short, silent or constant series are not found, with `delayS` null.
 */
export function align(
  sound: Float32Array,
  power: Float32Array,
  options: { sharedClock: boolean },
): Alignment {
  const [low, high] = options.sharedClock ? [-0.005, LONGEST_WAY_S] : [-MOST_LAG_S, MOST_LAG_S];
  const loud = loudnessOf(sound);
  const active = firstChange(power);
  const main = peakOf(loud, power, active, low, high);
  if (!main) return { found: false, delayS: null, score: 0, rival: 1, driftPpm: null };
  const least = options.sharedClock ? LEAST_SCORE_SHARED : LEAST_SCORE;
  const found = main.score >= least && (options.sharedClock || main.rival <= MOST_RIVAL);
  const delayS = main.lag / BIN_RATE_HZ;
  return {
    found,
    delayS,
    score: main.score,
    rival: main.rival,
    driftPpm: found ? driftOf(loud, power, active, delayS) : null,
  };
}

/** Best lag (frames, sound minus trace) of a piece of the trace from frame `from`. */
function peakOf(
  loud: Float32Array,
  power: Float32Array,
  from: number,
  lowS: number,
  highS: number,
  lengthS = PIECE_S,
): Peak | null {
  const piece = power.subarray(from, from + lengthS * BIN_RATE_HZ);
  if (piece.length < BIN_RATE_HZ || loud.length < BIN_RATE_HZ) return null;
  const size = 2 ** Math.ceil(Math.log2(loud.length + piece.length));
  const fft = new FFT(size);
  const heard = whiten(loud, fft, size);
  const levels = whiten(piece, fft, size);
  const changes = whiten(changesOf(piece), fft, size);
  if (!heard || !levels || !changes) return null;
  const byLevel = lagScores(heard, levels, fft, size);
  const byChange = lagScores(heard, changes, fft, size);
  const both = byLevel.map((one, k) => one + byChange[k]!);
  const low = Math.max(lowS * BIN_RATE_HZ, -piece.length - from);
  const high = Math.min(highS * BIN_RATE_HZ, loud.length - from);
  return highest(both, from, low, high);
}

function highest(scores: Float64Array, from: number, low: number, high: number): Peak | null {
  const size = scores.length;
  const rms = rmsOfSome(scores);
  if (!(rms > 0)) return null;
  const at = (lag: number): number => scores[(Math.round(lag) + from + 2 * size) % size]!;
  const [first, last] = [Math.ceil(low), Math.floor(high)];
  let best = first;
  for (let lag = first; lag <= last; lag++) if (at(lag) > at(best)) best = lag;
  let second = 0;
  for (let lag = first; lag <= last; lag++)
    if (Math.abs(lag - best) > SAME_PEAK_S * BIN_RATE_HZ) second = Math.max(second, at(lag));
  const [left, top, right] = [at(best - 1), at(best), at(best + 1)];
  const bend = left - 2 * top + right;
  const offset = bend < 0 ? Math.max(-0.5, Math.min(0.5, (left - right) / (2 * bend))) : 0;
  return { lag: best + offset, score: top / rms, rival: top > 0 ? Math.min(1, second / top) : 1 };
}

/** Root mean square of the lags with a score. */
function rmsOfSome(scores: Float64Array): number {
  let sum = 0;
  let count = 0;
  for (const one of scores) {
    if (one === 0) continue;
    sum += one * one;
    count++;
  }
  return count > 0 ? Math.sqrt(sum / count) : 0;
}

/** Delays of the first and of the last piece against each other. */
function driftOf(
  loud: Float32Array,
  power: Float32Array,
  from: number,
  delayS: number,
): number | null {
  const end = Math.min(power.length, loud.length - Math.round(delayS * BIN_RATE_HZ));
  const pieceS = Math.min(PIECE_S, Math.floor((end - from) / BIN_RATE_HZ / 2));
  const last = end - pieceS * BIN_RATE_HZ;
  const apartS = (last - from) / BIN_RATE_HZ;
  if (apartS < DRIFT_APART_S) return null;
  const [a, b] = [from, last].map((start) =>
    peakOf(loud, power, start, delayS - 0.05, delayS + 0.05, pieceS),
  );
  if (!a || !b || Math.min(a.score, b.score) < LEAST_SCORE_SHARED) return null;
  return (1e6 * (b.lag - a.lag)) / BIN_RATE_HZ / apartS;
}

/** First frame that is not as the one before: dead time before the arc carries nothing. */
function firstChange(power: Float32Array): number {
  const largest = power.reduce((most, one) => Math.max(most, Math.abs(one)), 0);
  for (let i = 1; i < power.length; i++)
    if (Math.abs(power[i]! - power[i - 1]!) > 0.05 * largest)
      return Math.max(0, i - BIN_RATE_HZ / 10);
  return 0;
}
