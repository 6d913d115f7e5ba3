import { escapeHtml } from './escape.js';
import type { LocalizedText, PictureWords } from './words.js';

/** A text for a page, marked with its language where that is not the language of the words around it. */
export function localizedHtml({ text, lang }: LocalizedText, words: PictureWords): string {
  const safe = escapeHtml(text);
  return lang === words.lang ? safe : `<span lang="${escapeHtml(lang)}">${safe}</span>`;
}
