import type { ForeignWorld } from '../world.js';
import { drawArc } from './arc.js';
import { log } from './log.js';
import { drawOther } from './other.js';
import { record } from './record.js';

/**
 * World B: an arc as a marked point process. Every event has its time, its step in the trace and
 * its sound.
 */
export const events: ForeignWorld = {
  name: 'events',
  drawArc,
  record,
  drawOther,
  log,
};
