import { createInterface } from 'node:readline';
import type { Readable } from 'node:stream';
import { ArcError } from '../../core/index.js';
import type { RawSetup } from './plan.js';

/** A path from stdin, with the set-up stated beside it. */
export interface ListedInput {
  path: string;
  setup: RawSetup;
}

/**
 * Paths from a pipe, one a line: plain text, a JSON string, or a JSON object with `file` and set-up
 * keys. Empty lines are passed over. Lines are read only as they are asked for.
 *
 * @throws ArcError `bad-list-line`.
 */
export async function* listedInputs(stream: Readable): AsyncGenerator<ListedInput> {
  const lines = createInterface({ input: stream, crlfDelay: Number.POSITIVE_INFINITY });
  let number = 0;
  for await (const line of lines) {
    number += 1;
    if (line.trim() !== '') yield parseLine(line, number);
  }
}

function parseLine(line: string, number: number): ListedInput {
  const text = line.trim();
  if (!text.startsWith('{') && !text.startsWith('"')) return { path: line, setup: {} };
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    throw badLine(line, number);
  }
  if (typeof value === 'string' && value !== '') return { path: value, setup: {} };
  const { file, ...rest } = value as Record<string, unknown>;
  const stated = Object.entries(rest).filter(([, one]) => one !== null && one !== '');
  const plain = stated.every(([, one]) => typeof one === 'string' || typeof one === 'number');
  if (typeof file !== 'string' || file === '' || !plain) throw badLine(line, number);
  return { path: file, setup: Object.fromEntries(stated) as RawSetup };
}

function badLine(line: string, number: number): ArcError {
  return new ArcError({
    code: 'bad-list-line',
    what: `Line ${number} of stdin is ${JSON.stringify(line.slice(0, 120))}.`,
    expected: 'a path, a JSON string, or an object such as {"file":"a.wav","gas":"Ar+18CO2"}',
    todo: 'With label, - stands for a list of paths; classify - takes a recording from stdin.',
  });
}
