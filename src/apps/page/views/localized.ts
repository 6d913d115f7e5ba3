import { type ComponentChild, h } from 'preact';
import type { LocalizedText } from '../words/index.js';
import type { View } from './view.js';

/** A sentence marked with its language where that is not the page's. */
export function said({ state }: View, { text, lang }: LocalizedText): ComponentChild {
  return h('span', lang === state.words.lang ? null : { lang }, text);
}
