import { ENGLISH } from './english.js';
import { GERMAN } from './german.js';
import type { Words } from './words.js';

export { chooseUnits, tagOf, unitsOfTag } from './units-of-page.js';
export type { LocalizedText, PageWords, ResultWords, Words } from './words.js';

/** Every language of the page. A new one is one more file here. */
export const LANGUAGES: readonly Words[] = [ENGLISH, GERMAN];

/** The language asked for, or the first of the device's that is known, else English. */
export function chooseWords(asked: string | null, device: readonly string[]): Words {
  const wanted = [asked ?? '', ...device].map((one) => one.toLowerCase().split('-')[0]);
  for (const lang of wanted) {
    const found = LANGUAGES.find((one) => one.lang === lang);
    if (found) return found;
  }
  return ENGLISH;
}
