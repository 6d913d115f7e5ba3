/** Public interface for Node: everything of the main entry, and files. Re-exports only. */
export * from './index.js';
export { type FileSource, openFileSource } from './node/file-source.js';
export { loadShippedModel, loadShippedPooling } from './node/shipped-models.js';
