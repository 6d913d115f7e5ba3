import { firstKnown } from '../../view/index.js';
import { ENGLISH } from './english.js';
import { GERMAN } from './german.js';
import type { Words } from './words.js';

export { chooseUnits, tagOf, unitsOfTag } from './units-of-page.js';
export type { PageWords, Words } from './words.js';

/** Every language of the page. */
export const LANGUAGES: readonly Words[] = [ENGLISH, GERMAN];

/** The language asked for, or the first of the device's that is known, else English. */
export function chooseWords(asked: string | null, device: readonly string[]): Words {
  const { lang } = firstKnown([asked ?? '', ...device]);
  return LANGUAGES.find((one) => one.lang === lang) ?? ENGLISH;
}
