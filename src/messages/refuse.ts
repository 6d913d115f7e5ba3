import { ArcError } from '../core/index.js';
import { type Made, message, said } from './message.js';

/** An error whose three parts are sentences of the catalogues; `expected` reads as the end of "Expected …". */
export function refuse(code: string, parts: { what: Made; expected: Made; todo: Made }): ArcError {
  const { what, expected, todo } = parts;
  const all = { what: said(what), expected: said(expected), todo: said(todo) };
  return new ArcError({
    code,
    what: what.text,
    expected: expected.text,
    todo: todo.text,
    said: { ...all, whole: said(message('refusal', all)) },
  });
}
