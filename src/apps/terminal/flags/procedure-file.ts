import { readFile } from 'node:fs/promises';
import { ArcError, isArcError } from '../../../core/index.js';
import type { Procedure } from '../../../procedure/index.js';

type Options = Readonly<Record<string, unknown>>;

/** Read once for the options of a command: a pipe gives its document only once. */
const read = new WeakMap<Options, Promise<Procedure | undefined>>();

/** The procedure of `--procedure`, or undefined. @throws ArcError that names the file */
export function readProcedureFile(options: Options): Promise<Procedure | undefined> {
  const known = read.get(options) ?? procedureOf(options);
  read.set(options, known);
  return known;
}

async function procedureOf(options: Options): Promise<Procedure | undefined> {
  const path = options['procedure'];
  if (typeof path !== 'string') return undefined;
  const { readProcedure } = await import('../../../procedure/index.js');
  const parsed = await parsedFile(path);
  try {
    return readProcedure(parsed);
  } catch (error) {
    if (isArcError(error)) error.message = `${path}: ${error.message}`;
    throw error;
  }
}

async function parsedFile(path: string): Promise<unknown> {
  try {
    return JSON.parse(await readFile(path, 'utf8'));
  } catch (cause) {
    throw new ArcError({
      code: 'bad-procedure',
      what: `The procedure ${path} cannot be read: ${cause instanceof Error ? cause.message : String(cause)}.`,
      expected: 'a JSON document as arc-transfer help procedure shows it',
      todo: 'Correct the file or its path.',
      cause,
    });
  }
}
