import { hasAscii, looksLikeText } from '../../sniff.js';
import { tableReader } from '../table-reader.js';
import { detectEncoding } from './encoding.js';
import { openCsvTable } from './table.js';

/** Text tables of any dialect. It takes every text, so it must be asked last. */
export const csvReader = tableReader({
  format: 'csv',
  title: 'CSV or TSV trace',
  sniff: (head) => isText(head) && !hasAscii(head, 0, '<') && !hasAscii(head, 0, '%PDF'),
  openTable: openCsvTable,
});

function isText(head: Uint8Array): boolean {
  return looksLikeText(head) || detectEncoding(head).label.startsWith('utf-16');
}
