import { createHash } from 'node:crypto';
import type { Command } from 'commander';
import { modelLoader, readModelText } from '../../../files/model-files.js';
import type { Engine } from '../judge/engine.js';

/** Adds `--model`, which may be given once for each kind of recording. */
export function addModelFlag(command: Command): Command {
  return command.option(
    '--model <file>',
    'judge by this model of `fit --from`; may be given once for each kind of recording',
    (file: string, earlier: string[] | undefined) => [...(earlier ?? []), file],
  );
}

/** The files named with `--model`, in the order given. */
export function modelFiles(options: Readonly<Record<string, unknown>>): string[] {
  const given = options['model'];
  return Array.isArray(given) ? given.map(String) : [];
}

/** The engine of the package, judging by the models named with `--model`. @throws ArcError `bad-model` */
export async function engineOf(options: Readonly<Record<string, unknown>>): Promise<Engine> {
  return engineFor(modelFiles(options));
}

/** The same for files; the shipped models where none is named. */
export async function engineFor(files: readonly string[]): Promise<Engine> {
  const { engineWith, SHIPPED_ENGINE } = await import('../judge/shipped-engine.js');
  return files.length === 0 ? SHIPPED_ENGINE : engineWith(await modelLoader(files));
}

/** Names the content of model files, so that an answer by one is never taken for that by another. */
export async function modelFilesFingerprint(files: readonly string[]): Promise<string> {
  const digest = createHash('sha256');
  for (const file of files) digest.update(await readModelText(file)).update('\0');
  return digest.digest('hex').slice(0, 16);
}
