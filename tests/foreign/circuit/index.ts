/** World A, the circuit: sound and traces of gas metal arcs from source, wire, drop, bridge and pool. */
import type { ForeignWorld } from '../world.js';
import { drawArc } from './arc.js';
import { log } from './log.js';
import { drawOther } from './other.js';
import { record } from './record.js';

export const circuit: ForeignWorld = { name: 'circuit', drawArc, record, drawOther, log };
