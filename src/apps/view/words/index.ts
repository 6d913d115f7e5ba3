import { ArcError, didYouMean } from '../../../core/index.js';
import {
  ENGLISH as ENGLISH_SENTENCES,
  GERMAN as GERMAN_SENTENCES,
} from '../../../messages/index.js';
import { ENGLISH_TEXTS } from './english.js';
import { GERMAN_TEXTS } from './german.js';
import type { Words } from './words.js';

const COUNTED = { units: 'metric', heat: 'both' } as const;
export const ENGLISH: Words = { ...ENGLISH_TEXTS, ...COUNTED, sentences: ENGLISH_SENTENCES };
export const GERMAN: Words = { ...GERMAN_TEXTS, ...COUNTED, sentences: GERMAN_SENTENCES };

/** Every language; the first is that of result documents. */
export const LANGUAGES: readonly Words[] = [ENGLISH, GERMAN];

/** The language of a tag such as `de`, `de-AT` or `de_DE.UTF-8`; undefined where there is none. */
export function languageOf(tag: string): Words | undefined {
  const lang = tag.toLowerCase().split(/[-_.@]/)[0];
  return LANGUAGES.find((one) => one.lang === lang);
}

/** The first of several tags that is known, else English. */
export function firstKnown(tags: readonly string[]): Words {
  return tags.map(languageOf).find((one) => one !== undefined) ?? ENGLISH;
}

/** @throws ArcError `bad-language` */
export function languageNamed(tag: string): Words {
  const found = languageOf(tag);
  if (found) return found;
  const known = LANGUAGES.map(({ lang }) => lang);
  throw new ArcError({
    code: 'bad-language',
    what: `There is no language "${tag}".${didYouMean(tag, known)}`,
    expected: `one of ${LANGUAGES.map(({ lang, own }) => `${lang} (${own})`).join(', ')}`,
    todo: 'Name one of these with --language.',
  });
}
export { type Reader, wordsFor } from './reader.js';
export type { HeatCount, LocalizedText, Words } from './words.js';
