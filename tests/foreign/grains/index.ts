import type { ForeignWorld } from '../world.js';
import { drawArc } from './arc.js';
import { log } from './log.js';
import { drawOther } from './other.js';
import { record } from './record.js';

/**
 * World of grains: sound as overlapping grains of filtered noise, traces as joined oscillogram
 * shapes.
 */
export const grains: ForeignWorld = { name: 'grains', drawArc, record, drawOther, log };
