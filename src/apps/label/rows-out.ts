import type { Row } from './columns.js';

/** Rows in, bytes out, in the order they come; memory does not grow with their number. */
export interface RowWriter {
  begin(): Promise<void>;
  rows(rows: readonly Row[]): Promise<void>;
  end(): Promise<void>;
}

export type WriteBytes = (bytes: Uint8Array) => Promise<void>;
