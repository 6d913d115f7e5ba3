import { LevelHistory, type LevelStep } from './level-edge.js';

/** Finds where an arc burns from windows of sound. */
export interface ArcTracker {
  push(evidence: ArcEvidence): ArcChange[];
  /** Ends the recording at `durationS`. */
  flush(durationS: number): ArcChange[];
}

/** One window of sound as the tracker sees it: how like an arc it is, and how loud its newest hop. */
export interface ArcEvidence {
  startS: number;
  endS: number;
  /** Log-odds for an arc before calibration. */
  score: number;
  /** Mean squares per 16 ms since the window before. */
  levels: Float64Array;
  /** Log-odds for an arc in short blocks of the window, where a network listens. */
  blocks?: readonly { startS: number; endS: number; score: number }[];
}

/** The arc started or stopped; `open` when it did so beyond the edge of the recording. */
export interface ArcChange {
  type: 'arc-start' | 'arc-stop';
  timeS: number;
  open: boolean;
  /** How far the level leaps there, dB, towards the arc; absent where no leap marks the edge. */
  stepDb?: number;
}

const LEVEL_STEP_S = 0.016;
/** Time between windows of sound. */
const HOP_S = 16 * LEVEL_STEP_S;
const KEPT_S = 6;
// Thresholds, times and ratios without another word are own choice, tried on simulated arcs.

/** Windows averaged before the arc counts as burning, and before it counts as out. */
const ON_WINDOWS = 2;
const OFF_WINDOWS = 4;
const ON_SCORE = 0;
const OFF_SCORE = -1;
/** A leap: 9 dB within 50 ms, to a level that lasts. */
const LEAP_DB = 9;
/** Time that a recorder may take to open or close, s (common practice, no source). */
const OPENING_S = 0.2;
/** Time that must follow a leap before it counts, s. */
const LASTING_S = 0.2;
const LASTING_RATIO = 4;
/** Single windows cannot outvote the others by more than this. */
const SCORE_CUT = 5;
/** A hop this far below the arc's own level (power ratio, −12 dB) ends it at once. */
const LEVEL_GONE = 0.06;
/** Level steps (power ratios) that place an edge: within a recording, and at its open ends. */
const EDGE_STEP = 2;
const EDGE_STEP_AT_START = 4;
const EDGE_STEP_AT_END = 0.1;

/**
 * Two thresholds with hold times on the evidence for an arc; the edges are then put where the level
 * leaps within the window that gave them, since a second-long window alone is blunt.
 */
export class EvidenceTracker implements ArcTracker {
  readonly #levels = new LevelHistory(LEVEL_STEP_S, KEPT_S);
  #recent: ArcEvidence[] = [];
  #on = false;
  #onSinceS = 0;
  /** Score that a leap makes up for. */
  readonly #leapLenience: number;
  /** Score forgiven in the present arc interval because it began with a leap. */
  #lenience = 0;
  #arcLevel = 0;
  #windows = 0;

  /** @param leapLenience what a leap of 9 dB within 50 ms, to a level that lasts, makes up for */
  constructor(leapLenience: number) {
    this.#leapLenience = leapLenience;
  }

  get on(): boolean {
    return this.#on;
  }

  /** Windows by which a change is noticed late at most; later stages wait that long. */
  static readonly delayWindows = OFF_WINDOWS + 1;

  push(evidence: ArcEvidence): ArcChange[] {
    this.#levels.push(evidence.levels);
    this.#windows++;
    const score = Math.max(-SCORE_CUT, Math.min(SCORE_CUT, evidence.score));
    this.#recent.push({ ...evidence, score });
    if (this.#recent.length > OFF_WINDOWS) this.#recent.shift();
    return this.#on ? this.#whileOn(evidence) : this.#whileOff();
  }

  /** Ends the recording at `durationS`. */
  flush(durationS: number): ArcChange[] {
    if (!this.#on) return [];
    this.#on = false;
    return [fallAtEnd(this.#levels, this.#onSinceS, durationS)];
  }

  #whileOff(): ArcChange[] {
    const last = this.#recent.slice(-ON_WINDOWS);
    if (last.length < Math.min(ON_WINDOWS, this.#windows)) return [];
    const leap = this.#leap(last[0]!.startS, last.at(-1)!.endS);
    const lenience = leap ? this.#leapLenience : 0;
    if (this.#meanScore(last) <= ON_SCORE - lenience) return [];
    this.#lenience = lenience;
    const first = last.find((window) => window.score > OFF_SCORE - lenience) ?? last[0]!;
    this.#on = true;
    const change = leap ? startAt(leap) : this.#start(first);
    this.#onSinceS = change.timeS;
    this.#arcLevel = meanOf(this.#recent.at(-1)!.levels);
    return [change];
  }

  #leap(fromS: number, toS: number): LevelStep | null {
    const from = Math.max(this.#onSinceS, fromS);
    const step = this.#levels.sharpest('rise', from, toS - LASTING_S, { settled: true });
    if (step === null || leapDb(step) < LEAP_DB) return null;
    return this.#levels.lastingRatio(step.timeS) >= LASTING_RATIO ? step : null;
  }

  #start(first: ArcEvidence): ArcChange {
    const atBeginning = first.startS < 1e-9;
    const hopS = HOP_S;
    const fromS = Math.max(this.#onSinceS, first.startS - (atBeginning ? 0 : hopS));
    const step = this.#levels.sharpest('rise', fromS, first.endS);
    const needed = atBeginning ? EDGE_STEP_AT_START : EDGE_STEP;
    if (step && step.ratio >= needed) return startAt(step);
    if (atBeginning) return { type: 'arc-start', timeS: 0, open: true };
    const middleS = (first.startS + first.endS) / 2;
    return { type: 'arc-start', timeS: Math.max(fromS, middleS), open: false };
  }

  #whileOn(shortWindow: ArcEvidence): ArcChange[] {
    const level = meanOf(shortWindow.levels);
    const gone = level < LEVEL_GONE * this.#arcLevel;
    if (!gone) this.#arcLevel += (level - this.#arcLevel) * 0.1;
    const doubtful =
      this.#recent.length === OFF_WINDOWS &&
      this.#meanScore(this.#recent) < OFF_SCORE - this.#lenience;
    if (!gone && !doubtful) return [];
    this.#on = false;
    const hopS = HOP_S;
    const firstBad = gone
      ? shortWindow
      : (this.#recent.find((one) => one.score < OFF_SCORE - this.#lenience) ?? shortWindow);
    const fromS = gone ? shortWindow.endS - 3 * hopS : firstBad.startS - hopS;
    const toS = gone ? shortWindow.endS : firstBad.endS;
    const step = this.#levels.sharpest('fall', Math.max(this.#onSinceS, fromS), toS);
    const sharp = step !== null && step.ratio <= 1 / EDGE_STEP;
    const timeS = sharp ? step.timeS : (firstBad.startS + firstBad.endS) / 2;
    this.#recent = [];
    this.#windows = 0;
    const stopS = Math.max(this.#onSinceS, timeS);
    this.#onSinceS = stopS;
    const stepDb = sharp ? fallDb(step) : 0;
    return [{ type: 'arc-stop', timeS: stopS, open: false, stepDb }];
  }

  #meanScore(windows: readonly ArcEvidence[]): number {
    return windows.reduce((sum, window) => sum + window.score, 0) / windows.length;
  }
}

/** The stop of an arc that still burns at the end of a recording: where the level falls in its last second, or open. */
export function fallAtEnd(levels: LevelHistory, onSinceS: number, durationS: number): ArcChange {
  const step = levels.sharpest('fall', Math.max(onSinceS, durationS - 1.3), durationS - 0.05);
  if (step === null || step.ratio >= EDGE_STEP_AT_END)
    return { type: 'arc-stop', timeS: durationS, open: true };
  // What falls at the very end may be the recorder that closes.
  const stepDb = durationS - step.timeS >= OPENING_S ? fallDb(step) : 0;
  return { type: 'arc-stop', timeS: step.timeS, open: false, stepDb };
}

function startAt(step: LevelStep): ArcChange {
  return { type: 'arc-start', timeS: step.timeS, open: false, stepDb: leapDb(step) };
}

/**
 * A leap up in dB; nothing out of what can't be compared with, which proves an edit or a padded clip, nor
 * right after the first sound, when the recorder itself may be opening.
 */
function leapDb({ sharpRatio, heard, sinceFirstS }: LevelStep): number {
  return heard && sinceFirstS >= OPENING_S ? 10 * Math.log10(sharpRatio) : 0;
}

/** A fall in dB, over a longer time, since the room goes on sounding. */
function fallDb({ ratio, heard }: LevelStep): number {
  return heard ? -10 * Math.log10(ratio) : 0;
}

function meanOf(levels: Float64Array): number {
  return levels.reduce((sum, level) => sum + level, 0) / levels.length;
}
