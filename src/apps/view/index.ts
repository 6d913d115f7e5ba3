export { CSV_COLUMNS, type CsvFlavour, csvCell, csvHeader, csvRow } from './csv.js';
export { jsonText } from './json.js';
export { type Look, NO_PAINT, type Paint, wrap } from './layout.js';
export { type FeedScale, mapInLetters } from './process-map/terminal-map.js';
export { ENGLISH_MAP, type MapWords } from './process-map/words.js';
export { sayLeaning, sayRates, sayWhere } from './sentences.js';
export { cautionLines, cautionsOf, type TerminalOptions, terminalText } from './terminal.js';
export type { EventRates } from './timeline-bar.js';
export {
  CONFIDENCE_WORDS,
  figure,
  MODE_WORDS,
  percent,
  plain,
  sayConfidence,
  sayRate,
  sayTime,
} from './words.js';
