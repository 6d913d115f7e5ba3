import { isArcError } from '../../../core/index.js';
import { type LocalizedText, tell } from '../../view/index.js';
import type { Words } from '../words/index.js';

/** An error as sentences one by one: what happened, what was expected, what to do. */
export function sentencesOf(error: unknown, { page, view }: Words): LocalizedText[] {
  if (!isArcError(error)) return [{ text: String(error), lang: 'en' }];
  const { what, expected, todo, sentences } = error;
  const wanted = tell(expected, sentences?.expected, view);
  return [
    tell(what, sentences?.what, view),
    wanted.lang === page.lang
      ? { ...wanted, text: page.expected(wanted.text) }
      : { text: `Expected ${expected}.`, lang: 'en' },
    // The English sentences stand as one text; in another language each is said by its own code.
    ...(sentences && page.lang !== 'en'
      ? sentences.todo.map((one) => tell(todo, one, view))
      : [{ text: todo, lang: 'en' }]),
  ];
}
