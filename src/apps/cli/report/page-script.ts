import { readFile } from 'node:fs/promises';
import { ArcError } from '../../../core/index.js';
import { packageFile } from '../../../files/package-file.js';

/**
 * The script of the report page, which the build bundles into `dist/report-page.js`.
 * @throws ArcError `no-page-script` when the package was not built
 */
export async function loadPageScript(): Promise<string> {
  const script = await readFile(packageFile('dist/report-page.js'), 'utf8').catch(() => undefined);
  if (script !== undefined) return script;
  throw new ArcError({
    code: 'no-page-script',
    what: 'The script of the report page is missing from this installation.',
    expected: 'dist/report-page.js in the package',
    todo: 'Build the package (npm run build) or install it again.',
  });
}
