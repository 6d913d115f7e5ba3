import { splitHeader, unitOf } from '../header-name.js';
import { parseUnit } from '../units.js';
import { recogniseName } from '../words.js';
import { splitCells } from './cells.js';
import type { TableShape } from './dialect.js';

/** Name and unit of each column as written above the table. */
export interface Header {
  names: (string | undefined)[];
  units: (string | undefined)[];
  /** The lines it was read from, so that a repetition further down is recognised. */
  lines: string[];
}

/** Reads the header (and a units row) from the lines directly above the first row of numbers. */
export function readHeader(lines: readonly string[], shape: TableShape): Header {
  const above = nearNames(
    lines.slice(0, shape.firstRow).filter((line) => line.trim() !== ''),
    shape,
  );
  const last = above.at(-1);
  const empty: Header = { names: blank(shape), units: blank(shape), lines: [] };
  const lastCells = last === undefined ? undefined : headerCells(last, shape);
  if (last === undefined || lastCells === undefined) return empty;
  const before = above.at(-2);
  const beforeCells = before === undefined ? undefined : headerCells(before, shape);
  if (before !== undefined && beforeCells !== undefined && isUnitsRow(lastCells)) {
    const named = beforeCells.map((cell) => splitHeader(cell));
    return {
      names: named.map(({ name }) => name || undefined),
      units: lastCells.map((cell, i) => cell.slice(0, 40) || named[i]?.unit),
      lines: [before, last],
    };
  }
  const named = lastCells.map((cell) => splitHeader(cell));
  return {
    names: named.map(({ name }) => name || undefined),
    units: named.map(({ unit }) => unit),
    lines: [last],
  };
}

/** Lines looked at above the numbers: remarks, rules and types may stand between them and the names. */
const BETWEEN = 6;
const TYPES =
  /^(float|double|real|single|int(eger)?|u?int\d+|float\d+|[iuf][1248]|dbl|sgl|num(ber|eric)?|string|text|datetime|analog|lreal|dint|word)\d*$/i;

/**
 * The lines up to the one that holds the names: from the last line above the numbers upwards, past remarks, rules
 * and rows of types, to one in which a quantity or a unit is known. All of them where there is none such.
 */
function nearNames(above: readonly string[], shape: TableShape): readonly string[] {
  for (let at = above.length - 1; at >= Math.max(0, above.length - BETWEEN); at--) {
    const cells = headerCells(above[at] ?? '', shape);
    if (cells === undefined || cells.every((cell) => cell === '' || TYPES.test(cell))) continue;
    if (isUnitsRow(cells) && at > 0 && headerCells(above[at - 1] ?? '', shape) !== undefined)
      return above.slice(0, at + 1);
    if (cells.some((cell) => isKnown(cell))) return above.slice(0, at + 1);
  }
  return above;
}

function isKnown(cell: string): boolean {
  const { name, unit } = splitHeader(cell);
  return recogniseName(name) !== undefined || unitOf(name, unit) !== undefined;
}

function blank(shape: TableShape): undefined[] {
  return new Array<undefined>(shape.columns).fill(undefined);
}

/** The cells of a header line where their number fits; comment marks are taken off first. */
function headerCells(line: string, shape: TableShape): string[] | undefined {
  const bare = line.replace(/^\s*(#+|%+|\/\/|;(?=\s)|!)\s*/, '');
  const splits = [
    splitCells(bare, shape.dialect.delimiter),
    bare.trim().split(/\s{2,}|\t/),
    splitCells(bare, ','),
    splitCells(bare, ';'),
  ];
  for (const cells of splits) {
    const count = cells.length;
    if (count !== shape.columns && count !== shape.columns - 1) continue;
    if (count === shape.columns - 1 && shape.kinds.at(-1) !== 'e') continue;
    const padded = count === shape.columns ? cells : [...cells, ''];
    if (padded.some((cell) => /\p{L}/u.test(cell))) return padded;
  }
  return undefined;
}

function isUnitsRow(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== '');
  const known = filled.filter((cell) => parseUnit(cell) !== undefined).length;
  const brief = filled.every((cell) => cell.length <= 14 && !/\d{2}/.test(cell));
  return known > 0 && brief && known * 2 >= filled.length;
}
