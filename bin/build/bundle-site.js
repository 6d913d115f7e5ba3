// Builds the browser page into dist/site: scripts, style, models, manifest, icons, and the service worker
// that keeps them. `node bin/build/bundle-site.js [folder]`.
import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { encode } from 'fast-png';
import { noticesOf, rememberBundled } from './bundled.js';

const OUT = process.argv[2] ?? 'dist/site';
/** Drops of the icon: middle and radius, of 100. */
const DROPS = [
  [50, 48, 5],
  [50, 62, 7],
  [50, 80, 9],
];
const SOUNDS = 'src/apps/page/sounds';
const MODELS = ['sound', 'voltage', 'current', 'voltage-current'];
const POLICY = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "worker-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  'media-src blob:',
  // The decoders carry their WebAssembly as data within their own script.
  "connect-src 'self' data:",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

rmSync(OUT, { recursive: true, force: true });
mkdirSync(join(OUT, 'models'), { recursive: true });
mkdirSync(join(OUT, 'sounds'), { recursive: true });

/** The page loads its models itself: those of the package stay out of its scripts. */
const ownModels = {
  name: 'own-models',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^#shipped-models$/ }, () => ({ path: 'none', namespace: 'own-models' }));
    onLoad({ filter: /.*/, namespace: 'own-models' }, () => ({
      contents: 'export const loadShippedModel = undefined;',
    }));
  },
};

const common = {
  bundle: true,
  minify: true,
  platform: 'browser',
  target: 'es2022',
  charset: 'utf8',
  plugins: [ownModels],
  legalComments: 'linked',
  logLevel: 'warning',
};

const { metafile } = await build({
  ...common,
  entryPoints: {
    main: 'src/apps/page/main.ts',
    live: 'src/apps/page/worker/live.ts',
    files: 'src/apps/page/worker/files.ts',
    worklet: 'src/apps/page/capture/worklet.ts',
  },
  outdir: OUT,
  format: 'esm',
  splitting: true,
  chunkNames: 'part-[hash]',
  metafile: true,
});

rememberBundled('site', metafile);
write('notices.txt', noticesOf(['site']));
await writeStyle();
// Written anew without its blanks.
for (const name of MODELS)
  write(`models/${name}.json`, JSON.stringify(JSON.parse(read(`src/model/shipped/${name}.json`))));
write(
  'index.html',
  read('src/apps/page/index.html').replace(
    '<!-- policy -->',
    `<meta http-equiv="Content-Security-Policy" content="${POLICY}">`,
  ),
);
// Written anew without its blanks.
write('sounds/examples.json', JSON.stringify(JSON.parse(read(`${SOUNDS}/examples.json`))));
writeFileSync(join(OUT, 'sounds/examples.bin'), readFileSync(`${SOUNDS}/examples.bin`));
write('icon.svg', icon());
for (const size of [180, 512]) writeFileSync(join(OUT, `icon-${size}.png`), picture(size));
write(
  'manifest.webmanifest',
  JSON.stringify({
    name: 'Arc transfer',
    short_name: 'Arc transfer',
    description: 'Listen to a weld, hear how the metal crosses, try again.',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: '#faf9f5',
    theme_color: '#23313b',
    icons: [
      { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
      { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any maskable' },
    ],
  }),
);
writeFileSync(join(OUT, 'files.json'), JSON.stringify({ files: files() }));
await writeServiceWorker();

function read(path) {
  return readFileSync(path, 'utf8');
}

function write(path, text) {
  writeFileSync(join(OUT, path), text);
}

/** All files that a browser may ask for, by their place below the page. */
function files() {
  return readdirSync(OUT, { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile() && !one.name.endsWith('.LEGAL.txt'))
    .map((one) => join(one.parentPath, one.name).slice(join(OUT, '/').length).replaceAll('\\', '/'))
    .sort();
}

/** The style of the report, whose pictures the page shows, then the page's own. */
async function writeStyle() {
  const { outputFiles } = await build({
    ...common,
    entryPoints: ['src/apps/report/page-style.ts'],
    format: 'esm',
    write: false,
    legalComments: 'none',
  });
  const code = `data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString('base64')}`;
  const { PAGE_STYLE } = await import(code);
  write('page.css', `${PAGE_STYLE}\n${read('src/apps/page/page.css')}`);
}

/** What the first view and a recording need; the readers of other formats come when first used. */
function core() {
  const found = new Set();
  const visit = (path) => {
    if (found.has(path)) return;
    found.add(path);
    for (const one of metafile.outputs[path].imports)
      if (one.kind === 'import-statement') visit(one.path);
  };
  const entries = ['main', 'live', 'files', 'worklet'];
  for (const entry of entries) visit(join(OUT, `${entry}.js`));
  // Loaded by itself, but with every model.
  for (const [path, { inputs }] of Object.entries(metafile.outputs))
    if ('src/model/parse/index.ts' in inputs) visit(path);
  const scripts = [...found].map((path) => path.slice(join(OUT, '/').length));
  const models = MODELS.map((name) => `models/${name}.json`);
  const sounds = ['sounds/examples.json', 'sounds/examples.bin'];
  return ['./', 'page.css', 'manifest.webmanifest', 'icon.svg', ...scripts, ...models, ...sounds];
}

async function writeServiceWorker() {
  const hash = createHash('sha256');
  for (const file of files()) hash.update(file).update(readFileSync(join(OUT, file)));
  const BUILD = { version: hash.digest('hex').slice(0, 16), core: core() };
  await build({
    ...common,
    entryPoints: ['src/apps/page/service-worker.ts'],
    outfile: join(OUT, 'service-worker.js'),
    format: 'iife',
    define: { BUILD: JSON.stringify(BUILD) },
  });
}

/** Drops that fall from a wire: three sizes in a row. */
function icon() {
  const drops = DROPS.map(([x, y, r]) => `<circle cx="${x}" cy="${y}" r="${r}" fill="#faf9f5"/>`);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100"><rect width="100" height="100" fill="#23313b"/><rect x="46" y="14" width="8" height="26" fill="#faf9f5"/>${drops.join('')}</svg>`;
}

/** The same as icon.svg, for systems that take no SVG. */
function picture(size) {
  const data = new Uint8Array(3 * size * size);
  for (let y = 0; y < size; y++)
    for (let x = 0; x < size; x++)
      data.set(inside(x, y, size) ? [250, 249, 245] : [35, 49, 59], 3 * (y * size + x));
  return encode({ width: size, height: size, data, channels: 3 });
}

function inside(x, y, size) {
  const [px, py] = [(100 * (x + 0.5)) / size, (100 * (y + 0.5)) / size];
  const wire = px >= 46 && px < 54 && py >= 14 && py < 40;
  return wire || DROPS.some(([cx, cy, r]) => Math.hypot(px - cx, py - cy) <= r);
}
