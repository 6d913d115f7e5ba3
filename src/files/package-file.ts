import { existsSync } from 'node:fs';

/**
 * A file of this package by its path from the package's root, e.g. `dist/apps/label/worker.js`. Holds
 * wherever the asking code has come to stand: in the compiled files, in the bundle, in the sources.
 */
export function packageFile(path: string): URL {
  let folder = new URL('.', import.meta.url);
  while (!existsSync(new URL('package.json', folder))) {
    const above = new URL('..', folder);
    if (above.href === folder.href) throw new Error('The package has lost its package.json.');
    folder = above;
  }
  return new URL(path, folder);
}
