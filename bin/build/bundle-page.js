// Bundles the script of the report page into one text that is put into every page.
import { build } from 'esbuild';

await build({
  entryPoints: ['src/apps/report/client/main.ts'],
  outfile: 'dist/report-page.js',
  bundle: true,
  minify: true,
  format: 'iife',
  platform: 'browser',
  target: 'es2022',
  charset: 'ascii',
  legalComments: 'inline',
  logLevel: 'warning',
});
