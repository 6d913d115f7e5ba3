import { readFile } from 'node:fs/promises';
import { packageFile } from './package-file.js';

const loaded = new Map<string, Promise<unknown>>();

/** The model document that comes with the package for a feature set, read once. It must not be changed. */
export function loadShippedModel(featureSet: string): Promise<unknown> {
  const earlier = loaded.get(featureSet);
  if (earlier) return earlier;
  const document = read(featureSet);
  loaded.set(featureSet, document);
  // What failed once, for want of a free handle say, may go well the next time.
  document.catch(() => loaded.delete(featureSet));
  return document;
}

async function read(featureSet: string): Promise<unknown> {
  const file = packageFile(`dist/model/shipped/${featureSet}.json`);
  return JSON.parse(await readFile(file, 'utf8'));
}

/** The document that comes with the package for weighing sound and trace of one run. */
export async function loadShippedPooling(): Promise<unknown> {
  return loadShippedModel('pooling');
}
