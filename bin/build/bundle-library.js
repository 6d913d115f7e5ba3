// Bundles the public entries into dist/lib, so that a program that imports the package loads a few files
// and not some hundreds, and puts the models that come with the package into dist/model/shipped.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { build } from 'esbuild';
import { rememberBundled } from './bundled.js';

const MODELS = 'src/model/shipped';
const BUNDLED = ['zod', '@noble/hashes', 'fft.js'];
const { dependencies, optionalDependencies } = JSON.parse(readFileSync('package.json', 'utf8'));
const packages = Object.keys({ ...dependencies, ...optionalDependencies });

rmSync('dist/lib', { recursive: true, force: true });
const { metafile } = await build({
  metafile: true,
  entryPoints: ['src/index.ts', 'src/node.ts'],
  outdir: 'dist/lib',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'neutral',
  mainFields: ['module', 'main'],
  target: 'es2022',
  external: ['node:*', '#shipped-models', ...packages.filter((name) => !BUNDLED.includes(name))],
  legalComments: 'inline',
  logLevel: 'warning',
});

rmSync('dist/model/shipped', { recursive: true, force: true });
mkdirSync('dist/model/shipped', { recursive: true });
// Written anew without its blanks, with the fingerprint that every result names.
const { fingerprint } = await import('../../dist/core/index.js');
for (const name of readdirSync(MODELS).filter((one) => one.endsWith('.json'))) {
  const document = JSON.parse(readFileSync(`${MODELS}/${name}`, 'utf8'));
  const named = name === 'pooling.json' ? {} : { fingerprint: fingerprint(document) };
  writeFileSync(`dist/model/shipped/${name}`, JSON.stringify({ ...named, ...document }));
}
rememberBundled('library', metafile);
