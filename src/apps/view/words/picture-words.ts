import type { Mode } from '../../../core/index.js';
import type { MapWords } from '../process-map/words.js';

/** Names of the pictures, as on the command line. */
export type FigureName =
  | 'time'
  | 'map'
  | 'place'
  | 'reasons'
  | 'levels'
  | 'plane'
  | 'short-voltage'
  | 'short-current'
  | 'rhythm'
  | 'intervals';

/** Numbers as a language writes them. */
export interface NumberWords {
  /** Three significant digits, thousands kept whole; a dash for what was not measured. */
  figure(value: number | null): string;
  /** Whole per cent; a share that is neither none nor all is never shown as 0 or 100. */
  percent(share: number): string;
  /** A time or duration: `0.42 s`, `12.4 s`, `3 min 05 s`, `2 h 10 min`. */
  time(seconds: number): string;
  /** A rate with a unit that suits it: `44.1 kHz`, `124 Hz`. */
  rate(hz: number): string;
  /** Digits that are already chosen (`0.25`), with the decimal mark of the language. */
  decimal(digits: string): string;
  /** From one written number to another. */
  range(low: string, high: string): string;
}

/** What the picture over time says, which a page draws anew at every zoom. */
export interface TimePictureWords {
  /** Language tag of these words. */
  lang: string;
  numbers: NumberWords;
  /** A mode as said to a person. */
  mode(mode: Mode): string;
  /** Of a part for which no mode is named. */
  notClear: string;
  /** What the evidence names in English: quantities, units, kinds of events, phases of the arc. */
  name(english: string): string;
  titles: Record<FigureName, string>;
  time: TimeWords;
}

/**
 * Everything that the pictures of a run and their tables say beside the sentences of the result. Texts are
 * whole sentences or labels; nothing is put together elsewhere. Values come in already written by `numbers`
 * unless they are numbers here.
 */
export interface PictureWords extends TimePictureWords {
  shape: ShapeWords;
  place: PlaceWords;
  /** Words of the process map. */
  map: MapWords;
  reasons: ReasonWords;
}

/** The run over time: picture, what a cursor reads, controls, table. */
export interface TimeWords {
  heading: string;
  toolbar: string;
  zoomIn: string;
  zoomOut: string;
  earlier: string;
  later: string;
  whole: string;
  goTo: string;
  choose: string;
  zoomable: string;
  readHint: string;
  help: string;
  tracks: string;
  partFrom(name: string, time: string): string;
  closeUpAt(time: string): string;
  parts: string;
  closeUps: string;
  playback: string;
  playFrom: string;
  onlyFirst(time: string): string;
  closeUpNote(binMs: string, count: number): string;
  tableTitle(count: number): string;
  tableCaption: string;
  tableFirst(count: number): string;
  from: string;
  to: string;
  mode: string;
  confidence: string;
  noArc: string;
  axisMs: string;
  axisS: string;
  frequency: string;
  perSecond(events: string): string;
  marksInView(what: string, count: number): string;
  keptUpTo(time: string, total: number): string;
  /** `ms` is empty for what has no length. */
  markAt(what: string, seconds: string, ms: string): string;
  block(name: string, from: string, to: string, confidence: string): string;
  part(mode: Mode | null, from: string, to: string): string;
  description(from: string, to: string, parts: readonly string[], more: number): string;
  readout: ReadoutWords;
}

/** All values at a moment. */
export interface ReadoutWords {
  at(moment: string, parts: readonly string[]): string;
  judged(name: string, confidence: string): string;
  modeNotClear: string;
  notJudged: string;
  notRecorded(quantity: string): string;
  level(db: string): string;
  noRate: string;
  rate(value: string, events: string): string;
  inMark(what: string, ms: string): string;
}

/** What the arc looks like: heaps, planes, single shorts, rhythm, intervals. */
export interface ShapeWords {
  heading: string;
  /** Why a picture is worth a look, in a line below it. */
  captions: Record<Exclude<FigureName, 'time' | 'map' | 'place' | 'reasons'>, string>;
  asNumbers: string;
  levelHeads: readonly [volts: string, inShorts: string, inArc: string];
  intervalHeads: readonly [milliseconds: string, count: string, share: string];
  figuresTitle(count: number): string;
  figuresCaption: string;
  figureHeads: readonly [figure: string, value: string];
  voltageAxis: string;
  currentAxis: string;
  levelsAxis: string;
  levelsHint(from: string, to: string, ofTime: string, inShorts: string): string;
  levelsKey: readonly [inShorts: string, arc: string];
  levelsDescription(inShorts: string): string;
  shortAxis: string;
  shortDescription(count: number): string;
  shortKey(count: number): string;
  intervalsTitle(events: string): string;
  intervalsAxis: string;
  intervalsShare: string;
  intervalsHint(from: string, to: string, share: string, total: number): string;
  intervalsDescription(total: number): string;
  rhythmTitle(quantity: string): string;
  rhythmAxis: string;
  rhythmPower(unit: string): string;
  /** `hz` is null where no rhythm was found. */
  rhythmDescription(hz: string | null): string;
  mains: string;
  planeDescription(parts: readonly string[]): string;
}

/** The run among published windows. */
export interface PlaceWords {
  heading: string;
  intro(scope: string): string;
  taken(from: readonly string[]): string;
  map: string;
  tableTitle(count: number): string;
  heads: readonly [mode: string, about: string, source: string];
  currentAxis: string;
  voltageAxis: string;
  dipZone: string;
  sprayZone: string;
  transition: string;
  thisRun: string;
  feeds(unit: string): string;
  noVoltage: string;
  noCurrent: string;
  windows(count: number, mode: string): string;
  description(at: readonly string[], windows: readonly string[]): string;
}

/** What spoke for and against. */
export interface ReasonWords {
  heading: string;
  asList: string;
  /** Of a reason that speaks for no single mode. */
  anyMode: string;
  /** Of the axis where no mode leads. */
  any: string;
  side(against: boolean, mode: string): string;
  axis(against: boolean, mode: string): string;
  description: string;
}
