export { type ColumnChoice, chooseColumns } from './choose-columns.js';
export { type LineReader, readLinesAs } from './csv/live-lines.js';
export { LOG_READERS } from './readers.js';
export type { LogColumn, LogTable, RowChunk } from './table.js';
export type { TableReader } from './table-reader.js';
