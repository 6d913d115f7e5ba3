import type { ColumnName, Nothing, Quantity } from '../terms.js';

/** How a column was taken for a quantity. */
export type ColumnTaken =
  | { column: ColumnName; by: 'name' | 'unit' }
  | { column: ColumnName; by: 'place' };

/** Notes on a log of columns: which is which, in what unit, on which time base. */
export interface LogParams {
  'scale-stated':
    | { of: 'channel'; channel: number; quantity: 'voltage' | 'current'; atFullScale: number }
    | { of: 'column'; column: string; quantity: 'voltage' | 'current'; perUnit: number };
  'unit-scaled': { column: string; unit: string; quantity: 'voltage' | 'current' };
  /** `statedUnit`: what the file writes, null where it writes nothing. */
  'unit-assumed': { column: string; statedUnit: string | null; quantity: 'voltage' | 'current' };
  'time-column': ColumnTaken;
  'voltage-column': ColumnTaken;
  'current-column': ColumnTaken;
  'other-column': { columns: ColumnName[]; quantity: Quantity };
  /** Columns passed over though their names are those of what is wanted. */
  'column-not-read': { columns: string[]; why: 'complex' | 'not-flat-numbers' };
  filled: { bridged: number; zeroed: number; values: number };
  'rate-stated': { rateHz: number };
  'rate-from-file': { rateHz: number; line: string };
  'rate-from-time': { rateHz: number };
  'coarse-time': { rateHz: number };
  'uneven-time': { shortStepS: number; longStepS: number; rateHz: number };
  /** `unitS`: the unit taken, in seconds. */
  'time-unit-assumed': { column: string; unitS: number; by: 'size' | 'stated-rate' };
  'rate-too-low': { rateHz: number };
  'rate-low': { rateHz: number; samplesPerMs: number; neededSamples: number; shortestMs: number };
  aliasing: { rateHz: number };
  'rows-reordered': { rows: number; largestStepBackS: number };
  gaps: { gaps: number; missingSamples: number; longestS: number; bridgedS: number };
  'crowded-rows': { rows: number };
  'rows-without-time': { rows: number };
  midnight: Nothing;
  'decimal-comma': Nothing;
  'text-encoding': { encoding: string };
  'cut-off-line': { line: number; text: string };
  'text-lines': { lines: number; firstLine: number; firstText: string };
  'thousands-separators': { values: number };
  'many-series': { series: number; used: number };
}
