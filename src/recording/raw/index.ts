export { parseRawFormat, type RawFormat } from './format.js';
export { openRaw } from './open.js';
