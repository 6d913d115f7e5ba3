import { stat } from 'node:fs/promises';
import { isAbsolute, normalize, resolve, sep } from 'node:path';
import { glob, isDynamicPattern } from 'tinyglobby';
import { ArcError } from '../../core/index.js';
import { listInputs } from '../terminal/inputs.js';
import type { OwnFiles } from './own-files.js';

/** An input before its set-up is known. */
export interface LabelInput {
  path: string;
  origin: 'named' | 'folder';
}

/**
 * Files, folders and patterns as files, each once, in the order given; patterns and folders in order of
 * name. Inputs that are not there stay in the list, so that they get their row. `own` are files and
 * folders of this run that must not be taken as recordings; those of them that were met are in `leftOut`.
 *
 * @throws ArcError `no-match` for a pattern that fits no file.
 */
export async function labelInputs(
  given: readonly string[],
  own: OwnFiles,
): Promise<{ inputs: LabelInput[]; twice: number; leftOut: string[] }> {
  const lists = await Promise.all(given.map(listOne));
  const inputs = new Map<string, LabelInput>();
  const leftOut: string[] = [];
  let twice = 0;
  for (const input of lists.flat()) {
    const key = resolve(input.path);
    if (own.has(key)) {
      leftOut.push(input.path);
      continue;
    }
    if (inputs.has(key)) twice += 1;
    else inputs.set(key, input);
  }
  return { inputs: [...inputs.values()], twice, leftOut };
}

async function listOne(given: string): Promise<LabelInput[]> {
  if (isDynamicPattern(given) && !(await exists(given))) return listPattern(given);
  const found = await listInputs([given]);
  return found.map((one) => ({
    path: normalize(one.path),
    origin: one.origin === 'folder' ? 'folder' : 'named',
  }));
}

/** For shells that do not expand patterns. What a pattern fits is taken as if it had been named. */
async function listPattern(pattern: string): Promise<LabelInput[]> {
  const paths = await glob(sep === '\\' ? pattern.replaceAll('\\', '/') : pattern, {
    onlyFiles: true,
    dot: false,
    expandDirectories: false,
    absolute: isAbsolute(pattern),
  });
  if (paths.length === 0) throw noMatch(pattern);
  return paths
    .map(normalize)
    .sort((a, b) => (a < b ? -1 : 1))
    .map((path) => ({ path, origin: 'named' }));
}

async function exists(path: string): Promise<boolean> {
  return (await stat(path).catch(() => undefined)) !== undefined;
}

function noMatch(pattern: string): ArcError {
  return new ArcError({
    code: 'no-match',
    what: `The pattern ${pattern} fits no file.`,
    expected: 'a pattern such as "runs/**/*.wav"',
    todo: 'Check it, and put it in quotes so that it reaches the program as it is.',
  });
}
