export { enliven } from './enliven.js';
export { wavBlob } from './wav-blob.js';
