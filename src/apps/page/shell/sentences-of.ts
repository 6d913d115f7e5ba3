import { isArcError } from '../../../core/index.js';
import { type LocalizedText, tell } from '../../view/index.js';
import type { Words } from '../words/index.js';

/** An error as sentences one by one: what happened, what was expected, what to do. */
export function sentencesOf(error: unknown, { page, view }: Words): LocalizedText[] {
  if (!isArcError(error)) return [{ text: String(error), lang: 'en' }];
  const { said } = error;
  const expected = tell(error.expected, said?.expected, view);
  return [
    tell(error.what, said?.what, view),
    expected.lang === page.lang
      ? { ...expected, text: page.expected(expected.text) }
      : { text: `Expected ${expected.text}.`, lang: 'en' },
    tell(error.todo, said?.todo, view),
  ];
}
