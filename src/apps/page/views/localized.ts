import { type ComponentChild, h } from 'preact';
import type { LocalizedText } from '../../view/index.js';
import type { View } from './view.js';

/** A sentence marked with its language where that is not the page's. */
export function said({ state }: View, { text, lang }: LocalizedText): ComponentChild {
  return h('span', lang === state.words.lang ? null : { lang }, text);
}

/** A list of sentences, each so marked. */
export function saidList(view: View, list: readonly LocalizedText[]): ComponentChild {
  return h(
    'ul',
    null,
    list.map((one) => h('li', null, said(view, one))),
  );
}
