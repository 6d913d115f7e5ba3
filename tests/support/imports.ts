import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, sep } from 'node:path';
import ROOMS from './rooms.json' with { type: 'json' };

const src = join(import.meta.dirname, '../../src');

/** An import of one file by another: paths below `src`, or the name of a package. Type imports count. */
export interface Import {
  file: string;
  target: string;
}

/** Every source file, by its path below `src`. */
export const FILES = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'))
  .map((name) => name.split(sep).join('/'));

/** Every import of every file, `import type`, re-exports and `import()` included. */
export const IMPORTS: readonly Import[] = FILES.flatMap(importsOf);

/** Those between files of `src`. */
export const INSIDE = IMPORTS.filter(({ target }) => FILES.includes(target));

/** The room that a file stands in: the longest name of a room that its path begins with; '' above all rooms. */
export function roomOf(file: string): string {
  const inside = ROOMS.map(({ room }) => room).filter((room) => file.startsWith(`${room}/`));
  return inside.sort((a, b) => b.length - a.length)[0] ?? '';
}

export function sourceOf(file: string): string {
  return readFileSync(join(src, file), 'utf8');
}

function importsOf(file: string): Import[] {
  const pattern =
    /^\s*(?:import|export)\s+(?:type\s+)?(?:[^'";]*?\sfrom\s+)?'([^']+)'|\bimport\(\s*'([^']+)'\s*\)/gm;
  return [...sourceOf(file).matchAll(pattern)].map((found) => ({
    file,
    target: resolve(file, found[1] ?? found[2] ?? ''),
  }));
}

/** Relative specifiers become paths below `src`; packages stay as they are. */
function resolve(file: string, specifier: string): string {
  if (!specifier.startsWith('.')) return specifier;
  const path = normalize(join(dirname(file), specifier))
    .split(sep)
    .join('/');
  return path.replace(/\.js$/, '.ts');
}
