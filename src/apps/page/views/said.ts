import { type ComponentChild, h } from 'preact';
import type { Said } from '../words/index.js';
import type { View } from './view.js';

/** A sentence marked with its language where that is not the page's. */
export function said({ state }: View, { text, lang }: Said): ComponentChild {
  return h('span', lang === state.words.lang ? null : { lang }, text);
}
