import { splitHeader } from '../header-name.js';
import { parseUnit } from '../units.js';
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
  const above = lines.slice(0, shape.firstRow).filter((line) => line.trim() !== '');
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
