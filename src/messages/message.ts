import { ArcError, type Note, type QualityFlag } from '../core/index.js';
import { ENGLISH } from './english/index.js';
import { say } from './language.js';
import type { MessageCode, ParamsOf } from './params.js';
import type { Message } from './terms.js';

/** The params as arguments: none for a sentence that has none. */
type Given<C extends MessageCode> = keyof ParamsOf<C> extends never ? [] : [params: ParamsOf<C>];

/** A sentence with its English text. */
export interface Made extends Message {
  text: string;
}

/** A sentence: code, params and English text. */
export function message<C extends MessageCode>(code: C, ...given: Given<C>): Made {
  const params = (given[0] ?? {}) as Record<string, unknown>;
  return { code, params, text: say({ code, params }, ENGLISH) };
}

/** A note of a recording. */
export function note<C extends MessageCode>(code: C, ...given: Given<C>): Note {
  const { params, text } = message(code, ...given);
  return { code, message: text, params };
}

/** A doubt about the evidence that touches `share` (0 to 1) of the recording. */
export function flag<C extends MessageCode>(
  code: C,
  share: number,
  ...given: Given<C>
): QualityFlag {
  const { params, text } = message(code, ...given);
  return { code, share, message: text, params };
}

/** An error whose sentences can be said in every language. */
export function refusal(
  code: string,
  what: Made,
  expected: Made,
  ...todo: readonly [Made, ...Made[]]
): ArcError {
  return new ArcError({
    code,
    what: what.text,
    expected: expected.text,
    todo: todo.map(({ text }) => text).join(' '),
    sentences: { what: said(what), expected: said(expected), todo: todo.map(said) },
  });
}

/** Code and params alone, for the field beside a sentence that stands as a string. */
export function said({ code, params }: Made): Message {
  return { code, params };
}

/** The texts of a list, for a field of strings. */
export function textsOf(list: readonly Made[]): string[] {
  return list.map(({ text }) => text);
}

/** Codes and params of a list, for the field of equal length beside it. */
export function messagesOf(list: readonly Made[]): Message[] {
  return list.map(said);
}

/** What was said already, to stand within another sentence; its text alone where it has no params. */
export function again({
  code,
  message: text,
  params,
}: {
  code?: string | undefined;
  message: string;
  params?: Record<string, unknown> | undefined;
}): Message {
  if (code === undefined || params === undefined) return said(message('in-words', { text }));
  return { code, params };
}
