import { arcTimeOf, type Result } from '../../analysis/result/index.js';
import { MODES } from '../../core/index.js';

type Cell = string | number | null;
interface Column {
  name: string;
  of(result: Result): Cell;
}

const snake = (mode: string): string => mode.replaceAll('-', '_');

/**
 * One row a run. Units stand in the names; an empty cell means "not shown by this recording". Columns
 * only get added, at the end of their group's list or of the table.
 */
export const CSV_COLUMNS: readonly Column[] = [
  { name: 'file', of: (r) => r.source.path },
  { name: 'status', of: (r) => r.status },
  { name: 'mode', of: (r) => r.mode },
  { name: 'confidence', of: (r) => r.confidence },
  { name: 'reason', of: (r) => r.statusReason },
  { name: 'source_programme', of: (r) => r.sourceProgramme },
  ...MODES.map((mode) => ({
    name: `probability_${snake(mode)}`,
    of: (r: Result) => r.probabilities?.[mode] ?? null,
  })),
  ...[...MODES, 'undetermined' as const].map((mode) => ({
    name: `arc_share_${snake(mode)}`,
    of: (r: Result) => r.shareOfArcTime?.[mode] ?? null,
  })),
  { name: 'arc_time_s', of: arcTimeOf },
  { name: 'arc_start_s', of: (r) => r.arcStretches[0]?.startS ?? null },
  { name: 'arc_end_s', of: (r) => r.arcStretches.at(-1)?.endS ?? null },
  { name: 'event_rate_hz', of: (r) => r.features['eventRateHz'] ?? null },
  { name: 'short_circuit_rate_hz', of: (r) => r.features['shortCircuitRateHz'] ?? null },
  { name: 'drop_rate_hz', of: (r) => r.features['dropRateHz'] ?? null },
  { name: 'pulse_rate_hz', of: (r) => r.features['pulseRateHz'] ?? null },
  { name: 'mean_voltage_v', of: (r) => r.features['meanVoltageV'] ?? null },
  { name: 'mean_current_a', of: (r) => r.features['meanCurrentA'] ?? null },
  { name: 'quality', of: (r) => r.quality.map((one) => one.code).join(' ') },
  { name: 'settings_check', of: (r) => r.crossCheck?.settings.answer ?? null },
  { name: 'wanted_mode_check', of: (r) => r.crossCheck?.intended?.answer ?? null },
  { name: 'error_code', of: (r) => r.error?.code ?? null },
  { name: 'kind', of: (r) => r.source.kind },
  { name: 'format', of: (r) => r.source.format },
  { name: 'sample_rate_hz', of: (r) => r.source.sampleRateHz },
  { name: 'duration_s', of: (r) => r.source.durationS },
  { name: 'sha256', of: (r) => r.source.sha256 },
  { name: 'tool_version', of: (r) => r.tool.version },
  { name: 'model', of: (r) => (r.model ? `${r.model.id} ${r.model.fingerprint}` : null) },
  { name: 'settings_fingerprint', of: (r) => r.settings.fingerprint },
  { name: 'schema_version', of: (r) => r.schemaVersion },
];

/** `excel` adds a byte-order mark and keeps cells that begin like a formula from being run as one. */
export type CsvFlavour = 'plain' | 'excel';

/** The header line, RFC 4180 (comma, CRLF). */
export function csvHeader(flavour: CsvFlavour = 'plain'): string {
  const mark = flavour === 'excel' ? '\uFEFF' : '';
  return `${mark}${CSV_COLUMNS.map((column) => column.name).join(',')}\r\n`;
}

/** One result as one row, RFC 4180. */
export function csvRow(result: Result, flavour: CsvFlavour = 'plain'): string {
  return `${CSV_COLUMNS.map((column) => csvCell(column.of(result), flavour)).join(',')}\r\n`;
}

/** One cell, quoted where it must be. Null and numbers that are none give an empty cell. */
export function csvCell(value: Cell, flavour: CsvFlavour = 'plain', separator = ','): string {
  if (value === null) return '';
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : '';
  const text = flavour === 'excel' && /^[=+\-@\t\r\n]/.test(value) ? `'${value}` : value;
  const quoted = /["\r\n]/.test(text) || text.includes(separator);
  return quoted ? `"${text.replaceAll('"', '""')}"` : text;
}
