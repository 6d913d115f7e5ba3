import { type ComponentChild, h } from 'preact';
import type { View } from './view.js';

export function aboutView({ state }: View): ComponentChild {
  const { page } = state.words;
  return h('section', { class: 'about' }, [
    h('h1', null, page.aboutTitle),
    ...page.about.map((text) => h('p', null, text)),
    page.foreign === '' ? null : h('p', null, page.foreign),
  ]);
}
