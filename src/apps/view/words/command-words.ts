import type { Status } from '../../../core/index.js';

/** People by day, in the index of a report. */
export interface ProgressWords {
  heading: string;
  heads: readonly [
    name: string,
    day: string,
    runs: string,
    modeShare: string,
    goodShare: string,
    disturbances: string,
    irregularity: string,
    differing: string,
  ];
  description(names: number): string;
  note: string;
  /** Recordings that neither pattern nor table knows. */
  leftOut(paths: readonly string[]): string;
}

/** What `sweep` says, and `expect` of a machine file. */
export interface SweepWords {
  title(machine: string): string;
  steps(count: number): string;
  heads: readonly [
    step: string,
    from: string,
    mode: string,
    sure: string,
    volts: string,
    amperes: string,
    dial: string,
    feed: string,
    spread: string,
    off: string,
  ];
  best: string;
  bestOf(mode: string, place: string, spread: string): string;
  none: string;
  measured: string;
  published: string;
  noPublished: string;
  /** Means of a step in words, and its dial and feed; each may be null. */
  place(
    volts: string | null,
    amperes: string | null,
    dial: string | null,
    feed: string | null,
  ): string;
  mapTitle: string;
  mapDescription(steps: number): string;
  mostEven: string;
  unclear: string;
  disagrees(count: number, of: number): string;
  fileWritten(machine: string): string;
  first(machine: string): string;
  near(mode: string | null, sure: string, place: string): string;
  notNear(machine: string): string;
  otherWire(machine: string): string;
  setLike(mode: string, place: string): string;
  neverRan(mode: string): string;
  caution: string;
}

/** What `compare` says beside the sentences of the comparison. */
export interface CompareWords {
  /** The two runs: one before and one after, or a run and its reference. */
  heads: Record<'before' | 'reference', readonly [string, string]>;
  title(before: string, after: string): string;
  columns: { figure: string; change: string; chance: string };
  notRated: string;
  sameRatings(same: number, of: number): string;
  mode: string;
  answers: Record<'same' | 'changed' | 'cannot-tell', string>;
  figures(clear: number, judged: number): string;
  noChance: string;
  change(label: string, before: string, after: string, unit: string): string;
  noSpread: string;
  /** `how` says how the spread within a run was found. */
  interval(range: string, level: string, moreThanChance: boolean, p: string, how: string): string;
  range(low: string, high: string, unit: string): string;
  overEachRun: string;
  trend(run: string, clear: boolean, range: string): string;
}

/** What `expect` says beside the sentences of the expectation. */
export interface ExpectWords {
  /** What comes of these settings, likeliest first. */
  likely: string;
  setFor(mode: string): string;
  changeFor(mode: string): string;
  title: string;
  voltage(from: string | null): string;
  current(from: string | null): string;
  permits: Record<'yes' | 'possible' | 'no', string>;
  /** `where` is a sentence that reads as its end; `nowhere` where the mode does not exist in this gas. */
  lies(where: string, nowhere: boolean): string;
  arcEnergy(range: string): string;
  deposited(range: string): string;
  beforeYouAct: string;
}

/** What `inspect` says beside the notes. */
export interface InspectWords {
  problem: string;
  howRead: string;
  goOn: string;
  kinds: Record<'sound' | 'electrical', string>;
  length(seconds: string, samples: number | null): string;
  leftOut: string;
  readAs(quantity: string): string;
  noNumbers: string;
  figures(min: string, mean: string, max: string, count: number, missing: number): string;
  first(values: string): string;
  bytes(count: number): string;
}

/** Lines and picture of `watch`. Modes come in as words; null where none is clear. */
export interface WatchWords {
  noClearMode: string;
  source(name: string, channels: readonly string[], rateHz: number): string;
  arcOn(weld: number, open: boolean): string;
  arcOff(weld: number, open: boolean): string;
  weld(weld: number, answer: string, confidence: string, seconds: string): string;
  /** The mode that was named, `mixed`, or the status where none was. */
  answer(mode: string | null, status: Status): string;
  notAWeld(from: string): string;
  signalLost(why: string): string;
  signalBack: string;
  /** `forTime`: how long, as a clock shows it. */
  noArc(forTime: string): string;
  gap(why: string, seconds: string): string;
  expect(mode: string | null, why: string): string;
  stages: Record<'provisional' | 'confirmed', string>;
  eventRate(rate: string): string;
  slow(seconds: string): string;
  alarm(mode: string, expected: string, seconds: string, since: string): string;
  departed(mode: string, expected: string, seconds: string): string;
  unclear(seconds: string): string;
  ends(alarm: boolean, why: 'mode' | 'arc-end' | 'new-expectation', expected: string): string;
  end(parts: readonly string[]): string;
  counts: {
    welds(count: number): string;
    alarms(count: number): string;
    lost(samples: number, bridged: number): string;
    gaps(count: number): string;
    reconnects(count: number): string;
    badRows(count: number): string;
    looseBytes(count: number): string;
    jitter(ms: string): string;
    clock(ppm: string): string;
  };
  screen: {
    weld(count: number): string;
    /** Names of the four rows, of equal width. */
    rows: Record<'now' | 'minute' | 'watch' | 'line', string>;
    marks: Record<'unclear' | 'off' | 'lost', string>;
    lost: string;
    waiting: string;
    noArc: string;
    listening: string;
    nothingExpected: string;
    expected(mode: string): string;
    alarm: string;
    noAlarm(alarms: number): string;
    losses(lost: number, gaps: number, reconnects: number, badRows: number): string;
  };
  good: {
    recognised(recordings: number, windows: number, wanted: string): string;
    takenFor(
      recordings: number,
      windows: number,
      wanted: string,
      others: readonly string[],
    ): string;
    other(mode: string, share: string): string;
    missed(modes: readonly string[]): string;
    unlike(each: readonly string[]): string;
    each(names: readonly string[], mode: string): string;
  };
  noSafety: string;
  noMicrophone: string;
}
