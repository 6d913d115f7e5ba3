export { recordCsvHeader, recordCsvRow } from './csv.js';
export { type RecordEntry, recordEntry, recordIndex } from './index-page.js';
export { recordPage, weldName } from './page.js';
