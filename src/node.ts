/** Public interface for Node: everything of the main entry, and files. Re-exports only. */

export { analyseFile, type FileOptions } from './files/analyse-file.js';
export { type FileSource, openFileSource } from './files/file-source.js';
export { loadShippedModel, loadShippedPooling } from './files/shipped-models.js';
export * from './index.js';
