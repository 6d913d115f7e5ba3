import { Component, type ComponentChild, createRef, h } from 'preact';
import type { Result } from '../../../analysis/result/index.js';
import { hydrate } from '../../report/client/index.js';

import type { Evidence } from '../../view/evidence/index.js';
import type { TimePictureWords } from '../../view/index.js';

interface Props {
  evidence: Evidence;
  result: Result;
  /** From the worker; every text of the recording in it is escaped there. */
  markup: string;
  /** Those of the markup. */
  words: TimePictureWords;
}

/** The pictures of a run, with zoom and playback; drawn once and then left to their own script. */
export class Pictures extends Component<Props> {
  readonly #place = createRef<HTMLDivElement>();
  #end: (() => void) | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;

  override componentDidMount(): void {
    // The words of the verdict are on the screen before the pictures are begun.
    requestAnimationFrame(() => {
      this.#timer = setTimeout(() => this.#draw());
    });
  }

  #draw(): void {
    const { evidence, result, markup, words } = this.props;
    const place = this.#place.current;
    if (!place) return;
    place.innerHTML = markup;
    for (const one of place.querySelectorAll<HTMLElement>('.scroll')) reachable(one);
    if (!place.querySelector('#stage')) return;
    const { arcStretches, segments } = result;
    this.#end = hydrate({ arcStretches, segments, evidence }, words);
  }

  override shouldComponentUpdate(): boolean {
    return false;
  }

  override componentWillUnmount(): void {
    clearTimeout(this.#timer);
    this.#end?.();
  }

  render(): ComponentChild {
    return h('div', { ref: this.#place, class: 'live pictures' });
  }
}

/** A table that is wider than a phone can be scrolled by keyboard, too. */
function reachable(table: HTMLElement): void {
  table.tabIndex = 0;
  table.setAttribute('role', 'group');
  const name = table.closest('details')?.querySelector('summary')?.textContent;
  if (name) table.setAttribute('aria-label', name);
}
