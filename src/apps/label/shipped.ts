import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { packageFile } from '../../files/package-file.js';

export { SHIPPED_ENGINE as ENGINE } from '../terminal/judge/shipped-engine.js';

const MODELS = packageFile('dist/model/shipped/');

/** SHA-256 (first 16 digits) over the names and bytes of all model documents of the package. */
export async function modelsFingerprint(): Promise<string> {
  const digest = createHash('sha256');
  const names = await readdir(MODELS).catch((): string[] => []);
  for (const name of names.filter((one) => one.endsWith('.json')).sort()) {
    const bytes = await readFile(new URL(name, MODELS));
    digest.update(`${name} ${bytes.length}\n`).update(bytes);
  }
  return digest.digest('hex').slice(0, 16);
}
