import type { State } from './state.js';

/** Holds the state of the page and draws it after each change, at most once a frame. */
export class Store {
  #state: State;
  #draw: (state: State) => void = () => {};
  #waiting = false;

  constructor(state: State) {
    this.#state = state;
  }

  get state(): State {
    return this.#state;
  }

  /** From now on every change is drawn. */
  show(draw: (state: State) => void): void {
    this.#draw = draw;
    draw(this.#state);
  }

  set(change: Partial<State>): void {
    this.#state = { ...this.#state, ...change };
    if (this.#waiting) return;
    this.#waiting = true;
    // A timer, not a frame: a page in the background must still be up to date when it is seen again.
    setTimeout(() => {
      this.#waiting = false;
      this.#draw(this.#state);
    }, 16);
  }
}
