import type { Playback } from '../../view/evidence/index.js';
import { byId, placeLine, type TimeView } from './time-view.js';
import { wavBlob } from './wav-blob.js';

/** Sound of the run with a line that moves along. */
export class Player {
  readonly #audio: HTMLAudioElement;
  readonly #line: HTMLElement;
  readonly #timeView: TimeView;
  readonly #startS: number;

  constructor(sound: Playback, timeView: TimeView) {
    this.#audio = byId('sound') as HTMLAudioElement;
    this.#timeView = timeView;
    this.#startS = sound.startS;
    this.#line = timeView.element.querySelector<HTMLElement>('.player')!;
    this.#audio.src = URL.createObjectURL(wavBlob([sound.samples], sound.rateHz));
    this.#audio.addEventListener('play', () => this.#follow());
    this.#audio.addEventListener('seeked', () => this.place());
  }

  toggle(): void {
    if (this.#audio.paused) void this.#audio.play();
    else this.#audio.pause();
  }

  seek(timeS: number): void {
    const at = timeS - this.#startS;
    if (at >= 0 && at <= (this.#audio.duration || 0)) this.#audio.currentTime = at;
  }

  /** Silences it and gives the sound free. */
  stop(): void {
    this.#audio.pause();
    URL.revokeObjectURL(this.#audio.src);
  }

  place(): void {
    const at = this.#audio.currentTime;
    const left = at > 0 ? this.#timeView.placeOf(this.#startS + at) : null;
    placeLine(this.#line, left, this.#timeView.width);
  }

  #follow(): void {
    this.place();
    if (!this.#audio.paused) requestAnimationFrame(() => this.#follow());
  }
}
