import { aiffReader } from './aiff/index.js';
import { cafReader } from './caf/index.js';
import { COMPRESSED_READERS } from './compressed/index.js';
import { LOG_READERS } from './logs/index.js';
import type { Reader } from './reader.js';
import { wavReader } from './wav/index.js';

/**
 * Every reader, in the order in which they are asked. Formats with an unmistakable signature come
 * first; electrical logs, whose text dialects have none, come last.
 */
export const READERS: readonly Reader[] = [
  wavReader,
  aiffReader,
  cafReader,
  ...COMPRESSED_READERS,
  ...LOG_READERS,
];
