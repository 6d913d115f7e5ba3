export { EnvelopeCells } from './envelope-cells.js';
export { SOUND_FEATURES } from './feature-set.js';
export { CELL_RATE_HZ, WINDOW_CELLS } from './grid.js';
export { MODULATION_BIN_HZ, ModulationAnalyser } from './modulation.js';
export { OnsetFinder } from './onsets.js';
export { createSoundLane } from './sound-lane.js';
