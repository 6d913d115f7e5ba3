import { readdir, readFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ArcError } from '../../../core/index.js';
import { packageFile } from '../../../files/package-file.js';

/** Every file of the browser page by its address below the page, e.g. `models/sound.json`. */
export type Site = ReadonlyMap<string, Buffer>;

/**
 * The browser page as the build left it. Read as a whole once, so that no request ever becomes a path.
 * @throws ArcError `no-site` when the package was not built
 */
export async function loadSite(): Promise<Site> {
  const root = fileURLToPath(packageFile('dist/site'));
  const entries = await readdir(root, { recursive: true, withFileTypes: true }).catch(() => []);
  const site = new Map<string, Buffer>();
  for (const entry of entries) {
    if (!entry.isFile()) continue;
    const path = join(entry.parentPath, entry.name);
    site.set(relative(root, path).split(sep).join('/'), await readFile(path));
  }
  if (site.has('index.html')) return site;
  throw new ArcError({
    code: 'no-site',
    what: 'The browser page is missing from this installation.',
    expected: 'dist/site in the package',
    todo: 'Build the package (npm run build) or install it again.',
  });
}
