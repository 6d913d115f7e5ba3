import type { ProgressRow } from '../../analysis/compare/index.js';
import { csvCell } from './csv.js';
import type { Words } from './words/words.js';

/** Cells of a row in the order of the heads. */
export function progressCells(row: ProgressRow, { numbers }: Words): string[] {
  const percent = (share: number | null): string => (share === null ? '–' : numbers.percent(share));
  const fixed = (value: number | null, digits: number): string =>
    value === null ? '–' : numbers.decimal(value.toFixed(digits));
  const { differing } = row;
  return [
    row.name,
    row.day,
    String(row.runs),
    percent(row.modeShare),
    percent(row.goodShare),
    fixed(row.disturbancesPerMin, 1),
    fixed(row.irregularity, 2),
    differing === null ? '–' : `${fixed(differing.mean, 1)} / ${differing.of}`,
  ];
}

const COLUMNS = [
  'name',
  'day',
  'runs',
  'runs_with_a_mode',
  'mode_share',
  'good_share',
  'disturbances_per_min',
  'irregularity',
  'differing_figures',
  'compared_figures',
] as const;

/** The same as CSV; its words and numbers are those of all CSV of the tool, whatever the language. */
export function progressCsv(rows: readonly ProgressRow[]): string {
  const number = (value: number | null): string =>
    value === null ? '' : String(Number(value.toPrecision(6)));
  const lines = rows.map((row) =>
    [
      csvCell(row.name),
      csvCell(row.day),
      String(row.runs),
      String(row.named),
      number(row.modeShare),
      number(row.goodShare),
      number(row.disturbancesPerMin),
      number(row.irregularity),
      number(row.differing?.mean ?? null),
      number(row.differing?.of ?? null),
    ].join(','),
  );
  return `${[COLUMNS.join(','), ...lines].join('\n')}\n`;
}
