import type { Result } from '../../../analysis/result/index.js';
import type { Mode, RecordingKind, UnitSystem } from '../../../core/index.js';
import type { Language } from '../../../messages/index.js';
import type { CompareWords, ExpectWords, InspectWords, WatchWords } from './command-words.js';
import type { PictureWords, TimePictureWords } from './picture-words.js';

/** A text with the language it really is in, for screen readers. */
export interface LocalizedText {
  text: string;
  lang: string;
}

/** A headline in two parts, as a terminal shows it, and as one sentence. */
export interface Headline {
  short: string;
  rest: string;
  whole: string;
}

export type RateName = 'shortCircuitRateHz' | 'dropRateHz' | 'pulseRateHz' | 'eventRateHz';
type Answer = 'agrees' | 'disagrees' | 'cannot-tell';

/** What terminal, report and page alike say of a result, beside its sentences. */
export interface ResultWords {
  /** The headline of a run that is answered with a mode. */
  transfer(mode: Mode | 'mixed'): string;
  headlines: Record<Exclude<Result['status'], 'ok'>, Headline>;
  /** For each bound of `CONFIDENCE_BOUNDS`, the highest first. */
  confidence: readonly [string, string, string, string, string];
  kinds: Record<RecordingKind, string>;
  /** `shares` and both ends may be empty or null: ends are null where the recording cuts the arc. */
  where(arc: {
    shares: string;
    length: string;
    count: number;
    from: string | null;
    to: string | null;
  }): string;
  rates: Record<RateName, string>;
  aSecond(value: string, name: string): string;
  leaning(parts: readonly string[]): string;
  /** No single mode is named: alone, and with the modes that remain. */
  noSingle: string;
  noSingleMode(modes: string): string;
  /** How much of the recording a doubt touches. */
  ofIt(share: string): string;
  answers: Record<Answer, string>;
  compared(what: string): string;
  speaksForIt: string;
  speaksAgainstIt: string;
  /** Energy along the seam as codes count it; null for the way that was not asked for. */
  heatInput(without: string | null, within: string | null): string;
}

/** Headings and lines of the terminal. */
export interface TerminalWords {
  why: string;
  more(count: number): string;
  doubts: string;
  assumed: string;
  brief(doubts: number, notes: number): string;
  against: string;
  settings: string;
  wanted: string;
  whatToChange: string;
  checkNext: string;
  caution: string;
  /** How to judge with it known that somebody welded. */
  knownArc: string;
  how: string;
  model(name: string): string;
  settingsUsed(fingerprint: string, values: string): string;
  bar: {
    mode: string;
    sure: string;
    rate: string;
    unclear: string;
    leftOut: string;
    noArc: string;
    rateKey(mostHz: number): string;
  };
  tally: {
    counts(all: number, ok: number, noArc: number, unsure: number, failed: number): string;
    skipped(count: number, names: string): string;
    wrote(file: string): string;
  };
}

/** What stands on the pages of a report around the pictures. */
export interface ReportWords {
  skip: string;
  allRuns: string;
  onThisPage: string;
  links: Record<'next' | 'when' | 'shape' | 'place' | 'why' | 'how', string>;
  madeBy(tool: string): string;
  chances: string;
  questions: string;
  reliable: string;
  nothingAgainst: readonly [answer: string, words: string];
  doubts(count: number): string;
  assumed(count: number): string;
  fits: string;
  noSetup: string;
  wanted: string;
  noWanted: string;
  notStated: string;
  whatToChange: string;
  checkNext: string;
  cautions: string;
  how: {
    heading: string;
    tool: string;
    document(tool: string, host: string, version: string): string;
    input: string;
    hash: string;
    noHash: string;
    channels: string;
    channel(quantity: string, name: string, unit: string): string;
    model: string;
    noModel: string;
    features: string;
    settings: string;
    steps: string;
    card: string;
  };
  index: {
    title(count: number): string;
    tally(ok: number, unsure: number, noArc: number, failed: number): string;
    skip: string;
    heading: string;
    table: string;
    heads: readonly [
      recording: string,
      answer: string,
      confidence: string,
      settings: string,
      doubts: string,
      length: string,
    ];
    answers: Record<Answer, string>;
    notStated: string;
    glance: string;
    glanceOf(run: number): string;
    glanceDescription: string;
    foot: string;
  };
  compare: {
    heading: string;
    time: string;
    levels: string;
    short: string;
    rhythm: string;
    intervals: string;
  };
}

/** Everything that a language says of results beside the sentences of the catalogue. */
export interface Texts extends PictureWords {
  /** The language's own name. */
  own: string;
  result: ResultWords;
  terminal: TerminalWords;
  report: ReportWords;
  compare: CompareWords;
  expect: ExpectWords;
  inspect: InspectWords;
  watch: WatchWords;
}

/** Whether heat input is shown with the thermal efficiency of the process, without it, or both ways. */
export type HeatCount = 'both' | 'efficiency' | 'no-efficiency';

/** A whole language: what stands around the sentences, the sentences, and how its reader counts. */
export interface Words extends Texts {
  sentences: Language;
  units: UnitSystem;
  heat: HeatCount;
}

/** The words of the picture over time with all others: put together by a call, so that a bundle can leave these out. */
export function allTexts(
  time: TimePictureWords,
  others: Omit<Texts, keyof TimePictureWords>,
): Texts {
  return { ...time, ...others };
}
