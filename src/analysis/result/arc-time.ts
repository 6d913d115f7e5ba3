import { totalS } from '../../core/index.js';
import type { Result } from './schema.js';

/** Seconds of arc of a run; null where it was not judged. */
export const arcTimeOf = ({ status, arcStretches }: Result): number | null =>
  status === 'failed' ? null : totalS(arcStretches);
