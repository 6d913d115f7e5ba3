import type { TimeWindow } from '../run-view.js';

/** What part of the run is seen, never beyond its ends and never shorter than a millisecond. */
export class View {
  readonly #durationS: number;
  fromS = 0;
  toS: number;

  constructor(durationS: number) {
    this.#durationS = durationS;
    this.toS = durationS;
  }

  get window(): TimeWindow {
    return { fromS: this.fromS, toS: this.toS };
  }

  get spanS(): number {
    return this.toS - this.fromS;
  }

  /** Shows `[fromS, toS)`, moved or cut to lie within the run. */
  show(fromS: number, toS: number): void {
    const span = Math.min(this.#durationS, Math.max(0.001, toS - fromS));
    this.fromS = Math.max(0, Math.min(fromS, this.#durationS - span));
    this.toS = this.fromS + span;
  }

  /** `factor` below 1 shows less; the moment `aboutS` stays where it is. */
  zoom(factor: number, aboutS = (this.fromS + this.toS) / 2): void {
    const span = Math.min(this.#durationS, Math.max(0.001, this.spanS * factor));
    const share = (aboutS - this.fromS) / this.spanS;
    this.show(aboutS - share * span, aboutS - share * span + span);
  }

  /** Moves by a share of what is seen. */
  move(share: number): void {
    this.show(this.fromS + share * this.spanS, this.toS + share * this.spanS);
  }

  whole(): void {
    this.show(0, this.#durationS);
  }
}
