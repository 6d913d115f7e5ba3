import { readdirSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { dirname, join, normalize, relative, sep } from 'node:path';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { ALLOWED } from './support/folders.js';

/** Files over 200 lines, each with the reason why it is not split. */
const LONG_FILES: Record<string, string> = {};

interface Import {
  file: string;
  target: string;
  typeOnly: boolean;
}

const root = join(import.meta.dirname, '..');
const files = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'))
  .map((name) => name.split(sep).join('/'));
const imports = files.flatMap(importsOf);
const folderOf = (file: string): string => (file.includes('/') ? (file.split('/')[0] ?? '') : '');

function sourceOf(file: string): string {
  return readFileSync(join(root, 'src', file), 'utf8');
}

function importsOf(file: string): Import[] {
  const text = sourceOf(file);
  const found: Import[] = [];
  const pattern =
    /^\s*(import|export)\s+(type\s+)?(?:[^'";]*?\sfrom\s+)?'([^']+)'|\bimport\(\s*'([^']+)'\s*\)/gm;
  for (const match of text.matchAll(pattern)) {
    found.push({
      file,
      target: resolve(file, match[3] ?? match[4] ?? ''),
      typeOnly: Boolean(match[2]),
    });
  }
  return found;
}

/** Relative specifiers become paths below src; packages stay as they are. */
function resolve(file: string, specifier: string): string {
  if (!specifier.startsWith('.')) return specifier;
  const path = normalize(join(dirname(file), specifier))
    .split(sep)
    .join('/');
  return path.replace(/\.js$/, '.ts');
}

const inside = imports.filter((one) => files.includes(one.target));

describe('the plan of the folders', () => {
  it('names every folder of src', () => {
    const folders = new Set(files.map(folderOf).filter((folder) => folder !== ''));
    expect([...folders].filter((folder) => !(folder in ALLOWED))).toEqual([]);
  });

  it('finds imports at all', () => {
    // A broken pattern above would make every other check here pass.
    expect(inside.length).toBeGreaterThan(files.length / 2);
    expect(inside).toContainEqual({
      file: 'result/schema.ts',
      target: 'core/index.ts',
      typeOnly: false,
    });
  });

  it('is obeyed by every import', () => {
    const broken = inside.filter(({ file, target }) => {
      const [from, to] = [folderOf(file), folderOf(target)];
      return from !== '' && from !== to && !ALLOWED[from]?.includes(to);
    });
    expect(broken.map(({ file, target }) => `${file} -> ${target}`)).toEqual([]);
  });

  it('crosses folders through their index only', () => {
    const broken = inside.filter(({ file, target }) => {
      const [from, to] = [folderOf(file), folderOf(target)];
      const entry = from === '' && to === 'node';
      return from !== to && !entry && !target.endsWith('/index.ts') && !contract(target);
    });
    expect(broken.map(({ file, target }) => `${file} -> ${target}`)).toEqual([]);
  });

  it('leaves every relative import with a file behind it', () => {
    const lost = imports.filter(({ target }) => target.endsWith('.ts') && !files.includes(target));
    expect(lost.map(({ file, target }) => `${file} -> ${target}`)).toEqual([]);
  });

  it('has no cycle', () => {
    expect(cycles(inside.filter((one) => !one.typeOnly))).toEqual([]);
  });

  it('has no long file without a reason', () => {
    const long = files.filter((file) => lines(file) > 200);
    expect(long.filter((file) => !(file in LONG_FILES))).toEqual([]);
    expect(Object.keys(LONG_FILES).filter((file) => !long.includes(file))).toEqual([]);
  });
});

describe('the command line', () => {
  it('finds files of the package in one place only', () => {
    // A path from import.meta.url that holds in dist/node is lost in the bundle (dist/cli).
    const users = files.filter((file) => sourceOf(file).includes('import.meta.url'));
    expect(users).toEqual(['node/package-file.ts']);
  });
});

describe('the core', () => {
  it('imports nothing of Node', () => {
    const builtin = new Set(builtinModules);
    const broken = imports.filter(
      ({ file, target }) =>
        folderOf(file) !== 'node' &&
        file !== 'node.ts' &&
        (target.startsWith('node:') || builtin.has(target)),
    );
    expect(broken.map(({ file, target }) => `${file} -> ${target}`)).toEqual([]);
  });

  it('bundles for a browser', async () => {
    const result = await build({
      entryPoints: [join(root, 'src/index.ts')],
      bundle: true,
      splitting: true,
      outdir: 'out',
      format: 'esm',
      platform: 'browser',
      write: false,
      metafile: true,
      logLevel: 'silent',
    });
    const external = Object.values(result.metafile.outputs).flatMap((output) =>
      output.imports.filter((one) => one.external).map((one) => one.path),
    );
    expect(external).toEqual([]);
    expect(result.errors).toEqual([]);
  });
});

/** Schemas that stand beside the code they describe and would make their folder's index a cycle. */
function contract(target: string): boolean {
  return target === 'cross-check/schema.ts';
}

function lines(file: string): number {
  return sourceOf(file).split('\n').length - 1;
}

/** Each cycle once, as `a -> b -> a`. */
function cycles(edges: readonly Import[]): string[] {
  const next = new Map<string, string[]>();
  for (const { file, target } of edges) next.set(file, [...(next.get(file) ?? []), target]);
  const found: string[] = [];
  const done = new Set<string>();
  const visit = (file: string, path: string[]): void => {
    const at = path.indexOf(file);
    if (at >= 0) {
      found.push([...path.slice(at), file].map((one) => relative('', one)).join(' -> '));
      return;
    }
    if (done.has(file)) return;
    for (const target of next.get(file) ?? []) visit(target, [...path, file]);
    done.add(file);
  };
  for (const file of next.keys()) visit(file, []);
  return found;
}
