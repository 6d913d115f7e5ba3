import type { Result } from '../../analysis/result/index.js';
import type { Mode, Note } from '../../core/index.js';
import type { Evidence } from '../view/evidence/index.js';
import type { LevelState } from './worker/level-watch.js';

/** The set-up as typed, keyed as in `SETUP_OPTIONS`; empty fields are left out. */
export type RawSetup = Readonly<Record<string, string>>;

/** What the page tells the worker that listens to the microphone. */
export type ToLive =
  | {
      type: 'start';
      /** Under this name the samples are kept on the device while they come in. */
      id: string;
      name: string;
      rateHz: number;
      setup: RawSetup;
      notes: Note[];
      /** Language of the pictures. */
      lang: string;
      port: MessagePort;
    }
  | { type: 'stop'; notes: Note[] };

/** Ten times a second: what is heard just now. All of it is provisional. */
export interface LiveState extends LevelState {
  timeS: number;
  /** Loudest sample since the last message, dB of full scale; -Infinity for silence. */
  peakDb: number;
  /** Share of the samples since the last message that stand at the rails. */
  clipped: number;
  arc: boolean;
  mode: Mode | null;
  /** The mode has held long enough to be counted on. */
  settled: boolean;
  /** Seconds of steady arc so far, s. */
  usableS: number;
}

export type FromLive =
  | { type: 'ready' }
  | { type: 'live'; state: LiveState }
  /** The samples can't be kept on the device as they come in; they are still in memory. */
  | { type: 'not-kept'; reason: string }
  /** The answer, as soon as it is known; `done` follows with the pictures. */
  | { type: 'verdict'; wav: Blob | null; result: Result }
  | ({ type: 'done'; wav: Blob | null } & Judged);

/** What the page tells the worker that judges files: to judge one, or to draw in another language. */
export type ToFiles =
  | {
      type: 'judge';
      file: Blob;
      name: string;
      setup: RawSetup;
      notes: Note[];
      lang: string;
      /** How likely it is, before listening, that an arc was recorded; even when left out. */
      arcPrior?: number | undefined;
    }
  | { type: 'draw'; result: Result; evidence: Evidence; setup: RawSetup; lang: string };

export type FromFiles =
  | { type: 'progress'; share: number }
  | ({ type: 'done' } & Judged)
  | { type: 'drawn'; pictures: Drawn };

/** A result with what is drawn beside it. */
export interface Judged {
  result: Result;
  evidence: Evidence | null;
  /** Null for an input that failed. */
  pictures: Drawn | null;
}

/** The pictures with their tables, as markup whose every outside text is escaped. */
export interface Drawn {
  lang: string;
  markup: string;
}
