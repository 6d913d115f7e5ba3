// Bundles the script of the report page into one text that is put into every page.
import { build } from 'esbuild';
import { rememberBundled } from './bundled.js';

const { metafile } = await build({
  metafile: true,
  entryPoints: ['src/apps/report/client/main.ts'],
  outfile: 'dist/report-page.js',
  bundle: true,
  minify: true,
  format: 'iife',
  platform: 'browser',
  target: 'es2022',
  charset: 'ascii',
  // The page judges nothing, so that no model is loaded in it.
  external: ['#shipped-models'],
  legalComments: 'inline',
  logLevel: 'warning',
});
rememberBundled('report', metafile);
