import { isArcError } from '../../core/index.js';
import { type ColumnChoice, chooseColumns, type LogTable } from '../logs/index.js';
import type { ReadOptions } from '../types.js';
import { createFigures, type SeriesFigures } from './figures.js';
import type { InspectedSeries } from './inspection.js';

/** More columns than this are listed without figures. */
const MAX_FIGURED = 32;

/** Describes every column of a table, reading all of it once. */
export async function inspectTable(
  table: LogTable,
  options: ReadOptions,
): Promise<{ series: InspectedSeries[]; problem?: unknown }> {
  const numeric = table.columns.flatMap(({ preview }, c) =>
    preview.some((value) => !Number.isNaN(value)) ? [c] : [],
  );
  const figured = numeric.slice(0, MAX_FIGURED);
  const figures = new Map<number, SeriesFigures>();
  let problem: unknown;
  // Binary series may differ in length, so each is read by itself; a text is read in one go.
  const passes = table.rowsOf === undefined ? [figured] : figured.map((c) => [c]);
  for (const wanted of passes) {
    const gatherers = wanted.map(createFigures);
    try {
      for await (const chunk of table.read(wanted)) {
        chunk.columns.forEach((values, i) => {
          gatherers[i]?.push(values.subarray(0, chunk.rows));
        });
      }
    } catch (error) {
      if (!isArcError(error)) throw error;
      problem ??= error;
    }
    wanted.forEach((c, i) => {
      const gathered = gatherers[i]?.finish('means');
      if (gathered) figures.set(c, gathered);
    });
  }
  const roles = columnRoles(table, options);
  const series = table.columns.map((column, c): InspectedSeries => {
    const found = figures.get(c);
    return {
      number: c + 1,
      name: column.name,
      ...(column.unit === undefined ? {} : { unit: column.unit }),
      readAs: roles.get(c) ?? null,
      ...(found === undefined ? {} : { figures: found }),
    };
  });
  return { series, problem };
}

function columnRoles(
  table: LogTable,
  options: ReadOptions,
): Map<number, 'time' | 'voltage' | 'current'> {
  const roles = new Map<number, 'time' | 'voltage' | 'current'>();
  let choice: ColumnChoice;
  try {
    choice = chooseColumns(table, options);
  } catch {
    // The reading itself says what is wrong with the choice.
    return roles;
  }
  for (const quantity of ['time', 'voltage', 'current'] as const) {
    const pick = choice[quantity];
    if (pick !== undefined) roles.set(pick.index, quantity);
  }
  return roles;
}
