import { open } from 'node:fs/promises';
import { ArcError } from '../core/index.js';

/** Largest model document that is read; a shipped one has one to two megabytes. */
export const MODEL_MOST_BYTES = 32e6;
/** Deepest nesting of lists and objects; a model needs six. */
const MOST_DEPTH = 40;

/**
 * Loads models from files by feature set. A feature set that none of the files is for is refused, so that
 * no recording is silently judged by another model than the one named.
 *
 * @throws ArcError `bad-model` for a file that is too large, no JSON, or no model document
 */
export async function modelLoader(
  files: readonly string[],
): Promise<(featureSet: string) => Promise<unknown>> {
  const documents = new Map<string, unknown>();
  for (const file of files) {
    const document = parseText(file, await readModelText(file));
    const set = featureSetOf(document);
    if (set === null) throw bad(file, 'it names no feature set');
    if (documents.has(set)) throw bad(file, `another --model is for "${set}" recordings too`);
    documents.set(set, document);
  }
  return async (featureSet) => {
    const document = documents.get(featureSet);
    if (document !== undefined) return document;
    throw new ArcError({
      code: 'model-mismatch',
      what: `The recording gives "${featureSet}" features, and --model is for ${[...documents.keys()].map((one) => `"${one}"`).join(', ')}.`,
      expected: 'a model for each kind of recording',
      todo: 'Give --model once more with a model of that kind, or leave it out.',
    });
  };
}

/** The text of a model file, if it is of a size that a model can have. */
export async function readModelText(file: string): Promise<string> {
  try {
    const handle = await open(file);
    try {
      const { size } = await handle.stat();
      if (size > MODEL_MOST_BYTES)
        throw bad(file, `it has ${(size / 1e6).toFixed(0)} MB, and a model has at most 32`);
      return await handle.readFile('utf8');
    } finally {
      await handle.close();
    }
  } catch (error) {
    if (error instanceof ArcError) throw error;
    throw bad(file, error instanceof Error ? error.message : String(error), error);
  }
}

function parseText(file: string, text: string): unknown {
  if (isTooDeep(text)) throw bad(file, `it is nested more than ${MOST_DEPTH} deep`);
  try {
    return JSON.parse(text);
  } catch (error) {
    throw bad(file, 'it is no JSON', error);
  }
}

/** Brackets in strings count too: a model has few of them, and a bound need not be exact. */
function isTooDeep(text: string): boolean {
  let depth = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === 0x5b || code === 0x7b) depth++;
    else if (code === 0x5d || code === 0x7d) depth--;
    if (depth > MOST_DEPTH) return true;
  }
  return false;
}

function featureSetOf(document: unknown): string | null {
  const set = (document as { featureSet?: { id?: unknown } } | null)?.featureSet?.id;
  return typeof set === 'string' ? set : null;
}

function bad(file: string, why: string, cause?: unknown): ArcError {
  return new ArcError({
    code: 'bad-model',
    what: `The model file ${file} cannot be used: ${why}.`,
    expected: 'a document written by `arc-transfer fit`',
    todo: 'Use the shipped model (leave --model out) or fit again.',
    cause,
  });
}
