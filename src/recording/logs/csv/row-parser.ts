import type { Dialect } from './cells.js';
import { ClockBytes } from './clock-bytes.js';
import { scaled } from './scaled.js';

const NEWLINE = 10;
const RETURN = 13;
const SPACE = 32;
const QUOTE = 34;
const PLUS = 43;
const MINUS = 45;

/**
 * Turns rows of digits into numbers, byte by byte, without making strings. It knows plain numbers
 * only; at anything else it stops at the start of that line so that a careful reader can look.
 *
 * Numbers of up to 15 digits come out correctly rounded, the same as `Number(text)`; longer ones
 * within 5e-16 of it, relative.
 */
export class RowParser {
  /** Where the last call stopped. */
  position = 0;
  /** True when it stopped because of a line it does not understand. */
  stuck = false;
  private readonly delimiter: number;
  private readonly decimal: number;
  private readonly spaced: boolean;
  private readonly clock = new ClockBytes();
  private at = 0;

  /**
   * @param wanted indexes of the columns to read, rising
   * @param slots for each wanted column, the index of its output array
   * @param clocks for each wanted column, whether it holds clock text
   */
  constructor(
    dialect: Dialect,
    private readonly wanted: readonly number[],
    private readonly slots: readonly number[],
    private readonly clocks: readonly boolean[] = [],
  ) {
    this.delimiter = dialect.delimiter.charCodeAt(0);
    this.decimal = dialect.decimal.charCodeAt(0);
    this.spaced = dialect.delimiter === ' ';
  }

  /**
   * Parses whole lines of `bytes[from..to)` (the last byte a line end) into `out` from row `row` on,
   * up to the length of the arrays.
   *
   * @returns the number of rows filled in all
   */
  parse(
    bytes: Uint8Array,
    from: number,
    to: number,
    out: readonly Float64Array[],
    row: number,
  ): number {
    const { wanted, slots } = this;
    const count = wanted.length;
    const capacity = out[0]?.length ?? 0;
    let filled = row;
    let start = from;
    this.stuck = false;
    while (start < to && filled < capacity) {
      let column = 0;
      this.at = this.spaced ? skipBlanks(bytes, start) : start;
      for (let k = 0; k < count; k++) {
        const target = wanted[k] as number;
        while (column < target && this.nextColumn(bytes)) column++;
        const value = column === target ? this.cell(bytes, k) : Number.NaN;
        if (Number.isNaN(value) || !this.atCellEnd(bytes)) {
          this.position = start;
          this.stuck = true;
          return filled;
        }
        (out[slots[k] as number] as Float64Array)[filled] = value;
      }
      let p = this.at;
      while (bytes[p] !== NEWLINE) p++;
      start = p + 1;
      filled++;
    }
    this.position = start;
    return filled;
  }

  /** The value of the cell at the current place, quoted or not; NaN for anything unknown. */
  private cell(bytes: Uint8Array, k: number): number {
    const quoted = bytes[this.at] === QUOTE;
    if (quoted) this.at++;
    let value: number;
    if (this.clocks[k] === true) {
      value = this.clock.read(bytes, this.at, this.delimiter);
      this.at = this.clock.at;
    } else value = this.number(bytes);
    if (quoted && bytes[this.at++] !== QUOTE) return Number.NaN;
    return value;
  }

  /** Moves past the next delimiter; false at the line end. */
  private nextColumn(bytes: Uint8Array): boolean {
    let p = this.at;
    let c = bytes[p] as number;
    while (c !== this.delimiter && c !== NEWLINE && !(this.spaced && c === 9)) {
      if (c === QUOTE) {
        do c = bytes[++p] as number;
        while (c !== QUOTE && c !== NEWLINE);
        if (c === NEWLINE) break;
      }
      c = bytes[++p] as number;
    }
    if (c === NEWLINE) {
      this.at = p;
      return false;
    }
    this.at = this.spaced ? skipBlanks(bytes, p + 1) : p + 1;
    return true;
  }

  /** After a number only blanks may stand before the delimiter or the line end. */
  private atCellEnd(bytes: Uint8Array): boolean {
    let p = this.at;
    let c = bytes[p] as number;
    if (c === this.delimiter || c === NEWLINE) return true;
    if (this.spaced) return c === 9 || (c === RETURN && bytes[p + 1] === NEWLINE);
    while (c === SPACE || c === RETURN) c = bytes[++p] as number;
    this.at = p;
    return c === this.delimiter || c === NEWLINE;
  }

  /** The number at the current place; NaN (and any place) where there is none. */
  private number(bytes: Uint8Array): number {
    let p = this.at;
    let c = bytes[p] as number;
    while (c === SPACE) c = bytes[++p] as number;
    const negative = c === MINUS;
    if (negative || c === PLUS) c = bytes[++p] as number;
    const first = p;
    let mantissa = 0;
    let scale = 0;
    let digit = c - 48;
    while (digit >= 0 && digit <= 9) {
      if (mantissa < 1e16) mantissa = mantissa * 10 + digit;
      else scale++;
      c = bytes[++p] as number;
      digit = c - 48;
    }
    let digits = p - first;
    if (c === this.decimal) {
      const point = p;
      c = bytes[++p] as number;
      digit = c - 48;
      while (digit >= 0 && digit <= 9) {
        if (mantissa < 1e16) {
          mantissa = mantissa * 10 + digit;
          scale--;
        }
        c = bytes[++p] as number;
        digit = c - 48;
      }
      digits += p - point - 1;
    }
    if (digits === 0) return Number.NaN;
    this.at = p;
    if (c === 101 || c === 69) scale += this.exponent(bytes);
    const size = scaled(mantissa, scale);
    return negative ? -size : size;
  }

  /** The exponent at an `e`; NaN where no digit follows. */
  private exponent(bytes: Uint8Array): number {
    let p = this.at + 1;
    let c = bytes[p] as number;
    const negative = c === MINUS;
    if (negative || c === PLUS) c = bytes[++p] as number;
    const first = p;
    let value = 0;
    while (c >= 48 && c <= 57) {
      if (value < 10_000) value = value * 10 + c - 48;
      c = bytes[++p] as number;
    }
    this.at = p;
    if (p === first) return Number.NaN;
    return negative ? -value : value;
  }
}

function skipBlanks(bytes: Uint8Array, from: number): number {
  let p = from;
  while (bytes[p] === SPACE || bytes[p] === 9) p++;
  return p;
}
