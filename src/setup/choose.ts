import { type ChoiceName, message, refuse } from '../messages/index.js';

/** The word that `text` stands for. @throws ArcError `bad-choice` with what was probably meant */
export function choose<T extends string>(
  name: ChoiceName,
  raw: string,
  text: string,
  words: Readonly<Record<string, T>>,
): T {
  const found = Object.hasOwn(words, text) ? words[text] : undefined;
  if (found !== undefined) return found;
  const known = [...new Set(Object.values(words))];
  const near = Object.keys(words).find(
    (word) => text.length > 2 && word.startsWith(text.slice(0, 3)),
  );
  const meant = near === undefined ? undefined : words[near];
  throw refuse('bad-choice', {
    what: message('choice-not-known', { choice: name, stated: raw }),
    expected: message('expected-choice', { choices: known }),
    todo:
      meant === undefined
        ? message('choose-one')
        : message('did-you-mean', { meanings: [meant], hint: null }),
  });
}
