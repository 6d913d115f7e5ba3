import type { LocalizedText } from '../view/index.js';
import { escapeHtml } from './escape.js';

/** A text for a page, marked with its language where that is not the language of the words around it. */
export function localizedHtml({ text, lang }: LocalizedText, around: { lang: string }): string {
  const safe = escapeHtml(text);
  return lang === around.lang ? safe : `<span lang="${escapeHtml(lang)}">${safe}</span>`;
}
