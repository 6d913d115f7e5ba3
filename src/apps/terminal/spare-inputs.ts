import { fstat } from 'node:fs';
import { stat } from 'node:fs/promises';
import { promisify } from 'node:util';
import { ArcError } from '../../core/index.js';

/** Files looked at side by side. */
const AT_ONCE = 64;

/**
 * Refuses to write to any of `outs` that is one of the files that are read, by whatever path or link: also with
 * `--overwrite`, since the answer would take the place of what it was made from.
 *
 * @throws ArcError `output-is-input`
 */
export async function spareInputs(
  outs: readonly string[],
  inputs: readonly string[],
): Promise<void> {
  await refuseSame(await identities(outs), inputs);
}

/** The same for stdout, where the shell sends it to a file. */
export async function spareInputsOfStdout(inputs: readonly string[]): Promise<void> {
  const stats = await promisify(fstat)(1, { bigint: true }).catch(() => undefined);
  if (stats?.isFile())
    await refuseSame(new Map([[`${stats.dev} ${stats.ino}`, 'Standard output']]), inputs);
}

async function refuseSame(
  outs: ReadonlyMap<string, string>,
  inputs: readonly string[],
): Promise<void> {
  if (outs.size === 0) return;
  for (const [key, input] of await identities(inputs)) {
    const out = outs.get(key);
    if (out !== undefined) throw outputIsInput(out, input);
  }
}

/** What names a file whatever path leads to it, with that path; of files that are there. */
async function identities(paths: readonly string[]): Promise<Map<string, string>> {
  const found = new Map<string, string>();
  for (let at = 0; at < paths.length; at += AT_ONCE) {
    const some = paths.slice(at, at + AT_ONCE);
    await Promise.all(
      some.map(async (path) => {
        const stats = await stat(path, { bigint: true }).catch(() => undefined);
        if (stats?.isFile()) found.set(`${stats.dev} ${stats.ino}`, path);
      }),
    );
  }
  return found;
}

/** Files that options name to be read: set-up, set-ups, procedure, identifiers, models, a trace beside a sound. */
export function filesOfOptions(options: Readonly<Record<string, unknown>>): string[] {
  return [
    'setup',
    'setups',
    'procedure',
    'ids',
    'withTrace',
    'model',
    'reference',
    'progress',
    'steps',
    'machine',
  ]
    .flatMap((key) => options[key])
    .filter((one) => typeof one === 'string');
}

/** For an output that would take the place of `input`. */
export function outputIsInput(out: string, input: string): ArcError {
  return new ArcError({
    code: 'output-is-input',
    what:
      out === input
        ? `${out} is read and was to be written over.`
        : `${out} is the input ${input}.`,
    expected: 'an output with a name of its own; --overwrite does not reach inputs',
    todo: 'Choose another name for the output.',
  });
}
