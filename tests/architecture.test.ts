import { builtinModules } from 'node:module';
import { join, relative } from 'node:path';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { FILES, IMPORTS, type Import, INSIDE, roomOf, sourceOf } from './support/imports.js';
import ROOMS from './support/rooms.json' with { type: 'json' };

const root = join(import.meta.dirname, '..');
const ORDER = ROOMS.map(({ room }) => room);
const floorOf = (room: string): string => ROOMS.find((one) => one.room === room)?.floor ?? '';
const crossing = INSIDE.map((one) => ({
  ...one,
  from: roomOf(one.file),
  to: roomOf(one.target),
})).filter(({ from, to }) => from !== to);
const say = (imports: readonly Import[]): string[] =>
  imports.map(({ file, target }) => `${file} -> ${target}`);

/** Rooms that only run in Node: the type checker gives Node's names to these and to no other. */
const NODE_ROOMS = ['files', 'apps/terminal', 'apps/label', 'apps/watch', 'apps/cli'];

describe('the plan of the rooms', () => {
  it('has a room for every file but the two entries', () => {
    expect(FILES.filter((file) => roomOf(file) === '')).toEqual(['index.ts', 'node.ts']);
  });

  it('finds imports at all', () => {
    // A broken pattern would make every other check here pass.
    expect(INSIDE.length).toBeGreaterThan(FILES.length);
    for (const [file, target] of [
      ['analysis/result/schema.ts', 'core/index.ts'],
      // A type import, an import over several lines and one that is loaded when needed.
      ['files/hash.ts', 'recording/index.ts'],
      ['apps/terminal/judge/shipped-engine.ts', 'analysis/index.ts'],
      ['apps/cli/commands/watch.ts', 'apps/watch/command.ts'],
    ])
      expect(INSIDE).toContainEqual({ file, target });
  });

  it('states for each room what it imports: nothing more, and nothing that is not used', () => {
    for (const { room, imports } of ROOMS) {
      const used = new Set(crossing.filter(({ from }) => from === room).map(({ to }) => to));
      expect({ room, imports: ORDER.filter((one) => used.has(one)) }).toEqual({ room, imports });
    }
  });

  it('lets imports go to rooms above in the list only', () => {
    const up = crossing.filter(({ from, to }) => from !== '' && at(to) > at(from));
    expect(say(up)).toEqual([]);
  });

  it('keeps the floors: the library knows no lab, lab and views no program, only commands the lab', () => {
    const wrong = crossing.filter(({ from, to }) => {
      if (floorOf(to) === 'lab') return floorOf(from) !== 'lab' && from !== 'apps/cli';
      return floorOf(to) === 'apps' && floorOf(from) !== 'apps';
    });
    expect(say(wrong.filter(({ from }) => from !== ''))).toEqual([]);
  });

  it('lets nothing see the stated set-up that names the mode', () => {
    const judges = ['detect', 'features', 'model', 'judge'];
    expect(say(crossing.filter(({ from, to }) => judges.includes(from) && to === 'setup'))).toEqual(
      [],
    );
  });

  it('crosses rooms through an index, but for rooms of Node and schemas', () => {
    const wrong = crossing.filter(
      ({ target, to }) =>
        !target.endsWith('/index.ts') && !target.endsWith('/schema.ts') && !NODE_ROOMS.includes(to),
    );
    expect(say(wrong)).toEqual([]);
  });

  it('leaves every relative import with a file behind it', () => {
    const lost = IMPORTS.filter(({ target }) => target.endsWith('.ts') && !FILES.includes(target));
    expect(say(lost)).toEqual([]);
  });

  it('has no cycle, of types neither', () => {
    expect(cycles(INSIDE)).toEqual([]);
  });
});

describe('the command line', () => {
  it('finds files of the package in one place only; without a file system in another', () => {
    // A path from import.meta.url that holds in dist/apps is lost in the bundles.
    const users = FILES.filter((file) => sourceOf(file).includes('import.meta.url'));
    expect(users).toEqual(['files/package-file.ts', 'model/load-shipped.ts']);
  });
});

describe('what runs in a browser', () => {
  it('imports nothing of Node', () => {
    const builtin = new Set(builtinModules);
    const wrong = IMPORTS.filter(
      ({ file, target }) =>
        !NODE_ROOMS.includes(roomOf(file)) &&
        file !== 'node.ts' &&
        (target.startsWith('node:') || builtin.has(target) || NODE_ROOMS.includes(roomOf(target))),
    );
    expect(say(wrong)).toEqual([]);
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

function at(room: string): number {
  return ORDER.indexOf(room);
}

/** Each cycle once, as `a -> b -> a`. */
function cycles(edges: readonly Import[]): string[] {
  const next = new Map<string, string[]>();
  for (const { file, target } of edges) next.set(file, [...(next.get(file) ?? []), target]);
  const found: string[] = [];
  const done = new Set<string>();
  const visit = (file: string, path: string[]): void => {
    const place = path.indexOf(file);
    if (place >= 0) {
      found.push([...path.slice(place), file].map((one) => relative('', one)).join(' -> '));
      return;
    }
    if (done.has(file)) return;
    for (const target of next.get(file) ?? []) visit(target, [...path, file]);
    done.add(file);
  };
  for (const file of next.keys()) visit(file, []);
  return found;
}
