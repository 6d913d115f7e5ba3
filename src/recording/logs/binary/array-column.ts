import type { ByteStream } from './byte-stream.js';
import { type NumberType, readNumbers, sizeOf } from './numbers.js';

/** Numbers in order. */
export interface NumberStream {
  /** The next numbers, in an array of their own; fewer only at the end. */
  read(count: number): Promise<Float64Array>;
  /** Frees what it holds. */
  close?(): void;
}

/** One series of numbers in a binary file. */
export interface ArrayColumn {
  name: string;
  /** True when the file gives no name. */
  unnamed?: boolean;
  unit?: string;
  rows: number;
  open(): Promise<NumberStream>;
}

/** Where the numbers of a column lie within a stream of bytes. */
export interface ColumnLayout {
  type: NumberType;
  little: boolean;
  /** Bytes from one number to the next. */
  stride: number;
  rows: number;
}

/** Numbers from a stream of bytes that stands at the first of them. */
export function numbersFrom(stream: ByteStream, layout: ColumnLayout): NumberStream {
  const { type, little, stride } = layout;
  const size = sizeOf(type);
  let left = layout.rows;
  return {
    async read(count) {
      const wanted = Math.min(count, left);
      if (wanted === 0) return new Float64Array(0);
      // After the last number of a stride the stream may end.
      const bytes = await stream.read((wanted - 1) * stride + size);
      const found = Math.max(0, Math.min(wanted, Math.floor((bytes.length - size) / stride) + 1));
      const numbers = readNumbers(bytes, type, little, found, 0, stride);
      left = found < wanted ? 0 : left - found;
      if (left > 0) await stream.skip(stride - size);
      return numbers;
    },
  };
}
