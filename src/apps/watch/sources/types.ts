import type { LiveFormat } from '../../../analysis/index.js';
import type { Mode } from '../../../core/index.js';
import type { Made } from '../../../messages/index.js';

/** What comes from a live source, in order. */
export type LiveItem =
  /** Before the first samples, and again where a source comes back with another format. */
  | { type: 'format'; format: LiveFormat }
  /** One array a channel; may be kept. */
  | { type: 'samples'; channels: Float64Array[] }
  /** The time base is broken: what came before and what follows do not join. `lostS` where it is known. */
  | { type: 'gap'; lostS: number | null; why: Made }
  /** Something is told in the stream itself: another mode is expected from here on, or none. */
  | { type: 'expect'; mode: Mode | null }
  | { type: 'program'; name: string }
  /** For the log of the run. */
  | { type: 'note'; text: Made };

/** What was not as it should be; told at the end and on the way, never hidden. */
export interface Losses {
  /** Samples known to be missing, and those of them that were bridged by a straight line. */
  lostSamples: number;
  bridgedSamples: number;
  /** Breaks of the time base. */
  gaps: number;
  reconnects: number;
  /** Rows that could not be read. */
  badRows: number;
  /** Bytes of an unfinished sample at the end. */
  looseBytes: number;
  /** Largest deviation of a row from its place on the even time base, s. */
  worstJitterS: number;
  /** Rate of the source against the stated one, parts in a million; null until known. */
  driftPpm: number | null;
}

export interface LiveSource {
  /** How the source is called in results and on the screen. */
  readonly name: string;
  readonly losses: Losses;
  /** Ends when the source does, or soon after `signal` says so. */
  items(signal: AbortSignal): AsyncIterable<LiveItem>;
}

export function noLosses(): Losses {
  return {
    lostSamples: 0,
    bridgedSamples: 0,
    gaps: 0,
    reconnects: 0,
    badRows: 0,
    looseBytes: 0,
    worstJitterS: 0,
    driftPpm: null,
  };
}
