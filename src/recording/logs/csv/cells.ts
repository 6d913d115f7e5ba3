/** How one text table is written. */
export interface Dialect {
  /** A space stands for any run of spaces and tabs. */
  delimiter: ',' | ';' | '\t' | ' ' | '|';
  decimal: '.' | ',';
}

/** Splits a line. Quotes keep a delimiter inside a cell; a doubled quote stands for one. */
export function splitCells(line: string, delimiter: Dialect['delimiter']): string[] {
  if (delimiter === ' ') return splitOnSpace(line);
  if (!line.includes('"')) return line.split(delimiter).map((cell) => cell.trim());
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (let i = 0; i < line.length; i++) {
    const c = line[i] as string;
    if (quoted && c === '"' && line[i + 1] === '"') {
      cell += '"';
      i++;
    } else if (c === '"') quoted = !quoted;
    else if (c === delimiter && !quoted) {
      cells.push(cell.trim());
      cell = '';
    } else cell += c;
  }
  cells.push(cell.trim());
  return cells;
}

function splitOnSpace(line: string): string[] {
  const found = line.match(/"[^"]*"|[^\s"]+/g);
  return found === null ? [''] : found.map((cell) => cell.replace(/^"|"$/g, ''));
}

/** Words with which loggers say that there is no value. */
const MISSING =
  /^(nan|[+-]?1\.#(qnan|ind|snan).*|n\/a|#n\/a|na|null|none|nul|-+|\?+|\*+|ol|o\.l|overload|overflow|#(div\/0|num|value)!|err(or)?|\.)$/i;
const INFINITE = /^([+-]?)(inf(inity)?|1\.#inf.*|∞)$/i;
const PLAIN = /^[+-]?(\d+\.?\d*|\.\d+)([eEdD][+-]?\d+)?$/;
const GROUPED = {
  '.': /^[+-]?[1-9]\d{0,2}([,'’ \u00a0\u202f_])\d{3}(\1\d{3})*(\.\d+)?$/,
  ',': /^[+-]?[1-9]\d{0,2}([.'’ \u00a0\u202f_])\d{3}(\1\d{3})*(,\d+)?$/,
} as const;

/** No number, clock or date is longer, characters: what is, is text, and is not searched for patterns. */
export const LONGEST_CELL = 100;

/** What a cell holds: a number (possibly not finite), no value, or something that is no number. */
export type Cell =
  | { kind: 'number'; value: number; grouped?: true }
  | { kind: 'missing' }
  | { kind: 'text' };

/** Reads one cell with care; the fast row parser hands over what it does not know. */
export function readCell(text: string, decimal: '.' | ','): Cell {
  const cell = text.trim().replace('\u2212', '-');
  if (cell.length > LONGEST_CELL) return { kind: 'text' };
  if (cell === '' || MISSING.test(cell)) return { kind: 'missing' };
  const infinite = INFINITE.exec(cell);
  if (infinite !== null) {
    return { kind: 'number', value: infinite[1] === '-' ? -Infinity : Infinity };
  }
  const pointed = decimal === ',' ? cell.replace(',', '.') : cell;
  const clash = decimal === ',' && cell.includes('.');
  if (!clash && PLAIN.test(pointed)) {
    return { kind: 'number', value: Number(pointed.replace(/[dD]/, 'e')) };
  }
  if (GROUPED[decimal].test(cell)) {
    const digits = cell.replace(
      decimal === ',' ? /[.'’ \u00a0\u202f_]/g : /[,'’ \u00a0\u202f_]/g,
      '',
    );
    return { kind: 'number', value: Number(digits.replace(',', '.')), grouped: true };
  }
  return { kind: 'text' };
}
