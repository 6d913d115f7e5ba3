export { CONFIDENCE_BOUNDS } from './confidence.js';
export { CSV_COLUMNS, type CsvFlavour, csvCell, csvHeader, csvRow } from './csv.js';
export { eitherOf, type GlanceView, viewGlance, type WantedAnswer } from './glance.js';
export { jsonText } from './json.js';
export { type Look, NO_PAINT, type Paint, wrap } from './layout.js';
export { plain } from './plain.js';
export { MAP_HUES } from './process-map/hues.js';
export { type FeedScale, mapInLetters } from './process-map/terminal-map.js';
export type { MapWords } from './process-map/words.js';
export {
  type CheckView,
  type ReasonView,
  type ResultView,
  rankReasons,
  sayConfidence,
  type VerdictView,
  viewCautions,
  viewReason,
  viewResult,
  viewVerdict,
} from './result-view.js';
export { cautionLines } from './sections.js';
export { type Coded, tell, tellAll } from './tell.js';
export { type TerminalOptions, terminalText } from './terminal.js';
export type { EventRates } from './timeline-bar.js';
export { visible, visibleWithin } from './visible.js';
export { ENGLISH_TIME } from './words/english.js';
export { GERMAN_TIME } from './words/german.js';
export type { GlanceKind } from './words/glance-words.js';
export {
  ENGLISH,
  firstKnown,
  GERMAN,
  type HeatCount,
  LANGUAGES,
  type LocalizedText,
  languageNamed,
  languageOf,
  type Reader,
  type Words,
  wordsFor,
} from './words/index.js';
export type * from './words/picture-words.js';
