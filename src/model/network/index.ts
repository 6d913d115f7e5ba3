export {
  type FrontEndSpec,
  type Layer,
  type LayerSpec,
  NETWORK_FORMAT,
  type Network,
  type NetworkHeader,
  readNetwork,
} from './document.js';
export { FrontEnd } from './front-end.js';
export { HeardSums, type IntervalOutput, outputOf } from './interval-pooling.js';
export { Resampler } from './resampler.js';
export { StreamingNetwork } from './streaming-network.js';
