export { type BlockDecoder, blockDecoder } from './decode.js';
export type { PcmData, PcmEncoding, PcmFormat } from './format.js';
export { loadWaveFile } from './load-wavefile.js';
export { openPcm, type PcmFile } from './read.js';
