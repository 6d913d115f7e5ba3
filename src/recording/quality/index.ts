export { ClipCounter } from './clipping.js';
export { ChannelQuality, sampleRateFlags } from './electrical-quality.js';
