import { type ComponentChild, h } from 'preact';
import type { View } from './view.js';

/** Plays a sound, or ends it while it plays. */
export function playButton(
  { app, state }: View,
  id: string,
  label: string,
  play: () => Promise<void>,
): ComponentChild {
  const on = state.playing === id;
  return h(
    'button',
    { type: 'button', class: 'play', onClick: () => (on ? app.ears.stop() : void play()) },
    [
      h('span', { class: `sign ${on ? 'square' : 'triangle'}`, 'aria-hidden': 'true' }),
      h('span', null, on ? state.words.page.hear.playing : label),
    ],
  );
}
