import type { TimePictureWords } from '../../view/index.js';
import { TIME_LEFT, TIME_RIGHT, timeFigure } from '../charts/time-figure.js';
import type { TimeRun } from '../run-view.js';
import { readoutAt } from './readout.js';
import type { View } from './view.js';

/** The picture over time in the page: draws what is seen, shows cursor and values. */
export class TimeView {
  readonly element: HTMLElement;
  cursorS: number | null = null;
  readonly #run: TimeRun;
  readonly #view: View;
  readonly #words: TimePictureWords;
  readonly #picture: HTMLElement;
  readonly #cursor: HTMLElement;
  readonly #range: HTMLElement;
  readonly #readout: HTMLElement;
  readonly #spectrogramHref: string | undefined;
  #waiting = false;
  #printing = false;

  constructor(run: TimeRun, view: View, words: TimePictureWords) {
    this.#run = run;
    this.#view = view;
    this.#words = words;
    this.element = byId('stage');
    this.#picture = byId('time-picture');
    this.#readout = byId('readout');
    this.#cursor = this.element.querySelector<HTMLElement>('.cursor')!;
    this.#range = this.element.querySelector<HTMLElement>('.range')!;
    this.#spectrogramHref = this.#picture.querySelector('image')?.getAttribute('href') ?? undefined;
  }

  /** Draws once before the next frame, however often it is asked. */
  draw(): void {
    if (this.#waiting) return;
    this.#waiting = true;
    requestAnimationFrame(() => {
      this.#waiting = false;
      this.drawNow();
    });
  }

  drawNow(): void {
    const width = this.#printing ? 720 : this.width;
    this.#picture.innerHTML = timeFigure(this.#run, {
      width,
      window: this.#view.window,
      words: this.#words,
      ...(this.#spectrogramHref ? { spectrogramHref: this.#spectrogramHref } : {}),
    });
    this.#placeCursor();
  }

  /** Paper has its own width. */
  print(on: boolean): void {
    this.#printing = on;
    this.drawNow();
  }

  get width(): number {
    return Math.max(280, this.element.clientWidth);
  }

  /** Seconds at a horizontal place in the window. */
  timeAt(clientX: number): number {
    const left = this.element.getBoundingClientRect().left + TIME_LEFT;
    const share = (clientX - left) / (this.width - TIME_LEFT - TIME_RIGHT);
    return this.#view.fromS + Math.min(1, Math.max(0, share)) * this.#view.spanS;
  }

  /** Pixels from the left edge of the time view; beyond it where the moment is not seen. */
  placeOf(timeS: number): number {
    const share = (timeS - this.#view.fromS) / this.#view.spanS;
    return TIME_LEFT + share * (this.width - TIME_LEFT - TIME_RIGHT);
  }

  setCursor(timeS: number | null): void {
    this.cursorS = timeS;
    this.#placeCursor();
    if (timeS !== null)
      this.#readout.textContent = readoutAt(this.#run, timeS, this.#view.spanS, this.#words);
  }

  /** Tints the part that is being chosen; null takes the tint away. */
  setRange(part: [number, number] | null): void {
    const { style } = this.#range;
    style.display = part ? 'block' : 'none';
    if (!part) return;
    const [a, b] = part.map((timeS) => this.placeOf(timeS)).sort((x, y) => x - y);
    style.left = `${a}px`;
    style.width = `${b! - a!}px`;
  }

  #placeCursor(): void {
    placeLine(this.#cursor, this.cursorS === null ? null : this.placeOf(this.cursorS), this.width);
  }
}

/** Moves an upright line; hidden where its place is not within the picture. */
export function placeLine(line: HTMLElement, left: number | null, width: number): void {
  const seen = left !== null && left >= TIME_LEFT - 1 && left <= width - TIME_RIGHT + 1;
  line.style.display = seen ? 'block' : 'none';
  if (seen) line.style.left = `${left}px`;
}

export function byId(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (!found) throw new Error(`The page has no part "${id}".`);
  return found;
}
