import type { Result } from '../../analysis/result/index.js';
import { MODES } from '../../core/index.js';
import { CSV_COLUMNS } from '../view/index.js';
import { type LabelRecord, likeliest, type WindowRecord } from './record.js';

export type Cell = string | number | boolean | null;
export type Row = readonly Cell[];
export type RowKind = 'runs' | 'segments' | 'windows';

/** A column of a table; names carry the unit. */
export interface TableColumn {
  name: string;
  kind: 'text' | 'number' | 'flag';
}

/** A table: its columns, and the rows that a record gives, at least one for every recording. */
export interface Table {
  columns: readonly TableColumn[];
  rowsOf(record: LabelRecord): Row[];
}

interface Part {
  start: { startS: number; endS: number } | null;
  cells: Cell[];
}

const text = (name: string): TableColumn => ({ name, kind: 'text' });
const number = (name: string): TableColumn => ({ name, kind: 'number' });
const flag = (name: string): TableColumn => ({ name, kind: 'flag' });

/** Where a row comes from and how its run ended: on every row, so that any part of a table stands alone. */
const PROVENANCE = [
  'status',
  'reason',
  'error_code',
  'sha256',
  'tool_version',
  'model',
  'settings_fingerprint',
  'schema_version',
];

/**
 * The table of a kind. `carried` names columns of the user's own set-up table; `labelFirst` puts start,
 * end and label in front, as programs that show labels beside sound expect.
 */
export function tableOf(
  kind: RowKind,
  options: { labelFirst: boolean; carried: readonly string[] },
  carriedOf: (path: string) => Readonly<Record<string, string>>,
): Table {
  const inner =
    kind === 'runs' ? runs() : kind === 'segments' ? segments(options.labelFirst) : windows();
  const { carried } = options;
  return {
    columns: [...inner.columns, ...carried.map((name) => text(`given_${name}`))],
    rowsOf: (record) => {
      const own = carriedOf(record.path);
      const more = carried.map((name) => own[name] ?? null);
      return inner.rowsOf(record).map((row) => [...row, ...more]);
    },
  };
}

function runs(): Table {
  return {
    columns: CSV_COLUMNS.map(({ name }) => (isFigure(name) ? number(name) : text(name))),
    rowsOf: ({ result }) => (result ? [CSV_COLUMNS.map((column) => column.of(result))] : []),
  };
}

/** By the rule for names: figures end in their unit, or are shares and probabilities. */
function isFigure(name: string): boolean {
  return /^(confidence$|probability_|arc_share_)|_(s|hz|v|a)$/.test(name);
}

function segments(labelFirst: boolean): Table {
  const times = [number('start_s'), number('end_s'), text('label')];
  const rest = [number('segment'), number('confidence')];
  return table(times, rest, labelFirst, ({ segments: all }) =>
    all.map((one, index) => ({
      start: one,
      cells: [one.mode ?? 'undetermined', index + 1, one.confidence],
    })),
  );
}

function windows(): Table {
  const times = [number('start_s'), number('end_s'), text('label')];
  const shares = MODES.map((mode) => number(`probability_${mode.replaceAll('-', '_')}`));
  const rest = [flag('arc_on'), ...shares, number('novelty')];
  const cells = (one: WindowRecord): Cell[] => [
    one.arcOn ? likeliest(one) : 'no-arc',
    one.arcOn,
    ...one.probabilities,
    one.novelty,
  ];
  return table(times, rest, false, (_, record) =>
    (record.windows ?? []).map((one) => ({ start: one, cells: cells(one) })),
  );
}

function table(
  times: readonly TableColumn[],
  rest: readonly TableColumn[],
  labelFirst: boolean,
  partsOf: (result: Result, record: LabelRecord) => Part[],
): Table {
  const file = text('file');
  const lead = labelFirst ? [...times, file] : [file, ...times];
  const empty: Cell[] = Array(1 + rest.length).fill(null);
  return {
    columns: [...lead, ...rest, ...PROVENANCE.map(text)],
    rowsOf: (record) => {
      const { result } = record;
      if (!result) return [];
      const parts = partsOf(result, record);
      const all = parts.length > 0 ? parts : [{ start: null, cells: empty }];
      const provenance = provenanceOf(result);
      return all.map(({ start, cells }) => {
        const [label = null, ...others] = cells;
        const when = [start?.startS ?? null, start?.endS ?? null, label];
        const name = result.source.path;
        const front = labelFirst ? [...when, name] : [name, ...when];
        return [...front, ...others, ...provenance];
      });
    },
  };
}

function provenanceOf(result: Result): Cell[] {
  return PROVENANCE.map((name) => {
    const column = CSV_COLUMNS.find((one) => one.name === name);
    return column ? column.of(result) : null;
  });
}
