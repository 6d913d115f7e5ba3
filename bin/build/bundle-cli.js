// Bundles the command line into dist/cli: loading some hundred small files one by one would take half
// of the time of a short run. Packages with WebAssembly, workers or assets stay outside.
import { readFileSync, rmSync } from 'node:fs';
import { build } from 'esbuild';
import { rememberBundled } from './bundled.js';

const BUNDLED = [
  'commander',
  'csv-parse',
  'd3-scale',
  'fast-png',
  'fft.js',
  '@noble/hashes',
  'picocolors',
  'uqr',
  'zod',
];
const { dependencies, devDependencies, optionalDependencies } = JSON.parse(
  readFileSync('package.json', 'utf8'),
);
const packages = Object.keys({ ...dependencies, ...devDependencies, ...optionalDependencies });

rmSync('dist/cli', { recursive: true, force: true });
const { metafile } = await build({
  metafile: true,
  entryPoints: ['src/apps/cli/main.ts'],
  outdir: 'dist/cli',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  minifyWhitespace: true,
  minifySyntax: true,
  external: packages.filter((name) => !BUNDLED.includes(name)),
  // Commander is CommonJS and asks for Node's modules by require.
  banner: {
    js: "import { createRequire as makeRequire } from 'node:module'; const require = makeRequire(import.meta.url);",
  },
  logLevel: 'warning',
});
rememberBundled('cli', metafile);
