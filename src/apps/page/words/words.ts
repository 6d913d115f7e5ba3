import type { UnitSystem } from '../../../core/index.js';
import type { Words as ViewWords } from '../../view/index.js';
import type { Interruption } from '../capture/interruption.js';
import type { MicrophoneTrouble } from '../capture/microphone.js';
import type { InstrumentWords } from './instrument-words.js';

/** What the page says around a result. Texts are whole sentences or labels; nothing is put together elsewhere. */
export interface PageWords extends InstrumentWords {
  /** Language tag. */
  lang: string;
  language: string;
  title: string;
  offline: string;
  tabs: Record<'record' | 'verdict' | 'runs' | 'listen' | 'files' | 'about', string>;
  languageLabel: string;
  unitsLabel: string;
  /** Names of the systems of units. */
  units: Record<UnitSystem, string>;
  ready: string;
  start: string;
  stop: string;
  starting: string;
  judging: string;
  sounds: string;
  cues: string;
  level: string;
  arcYes: string;
  arcNo: string;
  modeNow(name: string | null, settled: boolean): string;
  usable(seconds: number, enoughS: number): string;
  elapsed(seconds: number): string;
  keptOn(steps: readonly string[]): string;
  notKept: string;
  enough: string;
  interruption: Record<Interruption, string>;
  trouble: Record<MicrophoneTrouble, string>;
  troubleTitle: string;
  useFiles: string;
  unfinishedTitle: string;
  unfinished(seconds: string): string;
  judgeIt: string;
  forgetIt: string;
  setupTitle: string;
  setupHelp: string;
  setupMore: string;
  fields: Record<string, { label: string; hint: string }>;
  student: string;
  booth: string;
  whoHelp: string;
  unknownOption: string;
  choices: Record<string, string>;
  /** What would have been right, as a sentence. */
  expected(what: string): string;
  doubts: string;
  assumed(count: number): string;
  noDoubts: string;
  against: string;
  settings: string;
  wanted: string;
  notStated: string;
  whatToChange: string;
  checkNext: string;
  cautions: string;
  chances: string;
  pictures: string;
  wasWeldHelp: string;
  wasWeld: string;
  picturesLater: string;
  drawPictures: string;
  tryAgain: string;
  share: Record<'wav' | 'result' | 'table', string>;
  noRuns: string;
  noVerdict: string;
  runsTitle: string;
  runsHelp: string;
  latest: string;
  compareTitle: string;
  compareHelp: string;
  comparePick: string;
  compareRow: Record<'mode' | 'confidence' | 'rates' | 'arc' | 'settings' | 'when', string>;
  compareFirst: string;
  compareSecond: string;
  open: string;
  remove: string;
  removed: string;
  deleteAll: string;
  deleteSure: string;
  yesDelete: string;
  keep: string;
  deleted: string;
  room(used: string, all: string): string;
  notSaved: string;
  noStore: string;
  kept: string;
  tooLargeToKeep: string;
  filesTitle: string;
  filesHelp: string;
  dropHere: string;
  choose: string;
  waiting: string;
  working(share: string): string;
  cancel: string;
  cancelled: string;
  done: string;
  readersTitle: string;
  readersHelp: string;
  fetchReaders: string;
  readersReady: string;
  readersFailed: string;
  aboutTitle: string;
  about: readonly string[];
  skip: string;
  foreign: string;
}

/** A language of the page. */
export interface Words {
  lang: string;
  page: PageWords;
  /** What terminal, report and page alike say of a result. */
  view: ViewWords;
}
