import type { ByteSource } from '../../types.js';
import type { TableShape } from './dialect.js';
import type { Encoding } from './encoding.js';
import type { Header } from './header.js';

/** What is known of a text table before its rows are read. */
export interface CsvLayout {
  source: ByteSource;
  encoding: Encoding;
  shape: TableShape;
  header: Header;
}
