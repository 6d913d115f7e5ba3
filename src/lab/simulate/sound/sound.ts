import type { ArcRun } from '../run.js';
import type { AcousticScenario } from './acoustic.js';
import { gatherSound } from './dry-sound.js';
import { eventTimes } from './event-gates.js';

export { MONOPOLE_AT_1M, SOUND_SPEED } from './power-sound.js';

/** Pressure in Pa at the microphone in free air, over the same time as the run's traces. */
export function simulateSound(run: ArcRun, acoustic: AcousticScenario): Float64Array {
  return gatherSound(run, acoustic, eventTimes(run), false).whole();
}
