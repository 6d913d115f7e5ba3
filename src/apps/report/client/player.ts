import type { Playback } from '../../view/evidence/index.js';
import { byId, placeLine, type Stage } from './stage.js';
import { wavBlob } from './wav-blob.js';

/** Sound of the run with a line that moves along. */
export class Player {
  readonly #audio: HTMLAudioElement;
  readonly #line: HTMLElement;
  readonly #stage: Stage;
  readonly #startS: number;

  constructor(sound: Playback, stage: Stage) {
    this.#audio = byId('sound') as HTMLAudioElement;
    this.#stage = stage;
    this.#startS = sound.startS;
    this.#line = stage.element.querySelector<HTMLElement>('.player')!;
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
    const left = at > 0 ? this.#stage.placeOf(this.#startS + at) : null;
    placeLine(this.#line, left, this.#stage.width);
  }

  #follow(): void {
    this.place();
    if (!this.#audio.paused) requestAnimationFrame(() => this.#follow());
  }
}
