export { hasClearLine, hasClearOnsets } from './clear-events.js';
export { EnvelopeFrames } from './envelope-frames.js';
export { SOUND_FEATURES } from './feature-set.js';
export { FRAME_RATE_HZ, WINDOW_FRAMES } from './grid.js';
export { MODULATION_BIN_HZ, ModulationAnalyser } from './modulation.js';
export { OnsetFinder } from './onsets.js';
export { createSoundExtractor } from './sound-extractor.js';
