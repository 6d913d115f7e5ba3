export { hydrate } from './hydrate.js';
export { wavBlob } from './wav-blob.js';
