import { hannWindow, RealFft, windowEnergy } from '../../../dsp/index.js';
import type { Series, Spectrogram } from './types.js';

const SIZE = 512;
const MOST_COLUMNS = 1600;
const TOP_HZ = 16_000;
const ROWS = 80;
const RANGE_DB = 70;
const SILENT_DB = -120;

/**
 * Power over time and frequency, and the level, of sound of unknown length: columns join in pairs when
 * there are too many, so that memory stays bounded.
 */
export class SpectrumColumns {
  readonly #rateHz: number;
  readonly #fft = new RealFft(SIZE);
  readonly #window = hannWindow(SIZE);
  readonly #power = new Float64Array(SIZE / 2 + 1);
  readonly #frame = new Float64Array(SIZE);
  readonly #rows: number;
  readonly #binsPerRow: number;
  #columns: Float64Array[] = [];
  #framesPerColumn = 1;
  #frames = 0;
  #filled = 0;

  constructor(rateHz: number) {
    this.#rateHz = rateHz;
    const bins = Math.floor((Math.min(TOP_HZ, rateHz / 2) * SIZE) / rateHz);
    this.#binsPerRow = Math.max(1, Math.floor(bins / ROWS));
    this.#rows = Math.floor(bins / this.#binsPerRow);
  }

  push(samples: Float64Array): void {
    for (let from = 0; from < samples.length; ) {
      const take = Math.min(SIZE - this.#filled, samples.length - from);
      this.#frame.set(samples.subarray(from, from + take), this.#filled);
      this.#filled += take;
      from += take;
      if (this.#filled === SIZE) this.#transform();
    }
  }

  spectrogram(): Spectrogram | null {
    if (this.#columns.length === 0) return null;
    const db = this.#columns.map((column) =>
      column.subarray(0, this.#rows).map((power) => decibels(power / this.#framesPerColumn)),
    );
    const loudest = db.reduce((top, column) => Math.max(top, ...column), SILENT_DB);
    const floorDb = loudest - RANGE_DB;
    const cells = new Uint8Array(this.#columns.length * this.#rows);
    db.forEach((column, k) => {
      for (let r = 0; r < this.#rows; r++)
        cells[k * this.#rows + r] = Math.max(0, (255 * (column[r]! - floorDb)) / RANGE_DB);
    });
    const rowHz = (this.#binsPerRow * this.#rateHz) / SIZE;
    return { columnS: this.#columnS, rows: this.#rows, rowHz, floorDb, topDb: loudest, cells };
  }

  /** Mean square per column in dB of full scale (0 dB: a full-scale square wave). */
  level(): Series | null {
    if (this.#columns.length === 0) return null;
    const values = Float64Array.from(this.#columns, (column) =>
      decibels(column[this.#rows]! / this.#framesPerColumn),
    );
    return { startS: 0, stepS: this.#columnS, values };
  }

  get #columnS(): number {
    return (this.#framesPerColumn * SIZE) / this.#rateHz;
  }

  #transform(): void {
    this.#filled = 0;
    const column = this.#column();
    this.#fft.transform(this.#frame, 0, this.#window);
    this.#power.fill(0);
    this.#fft.addPower(this.#power);
    const scale = 2 / (SIZE * windowEnergy(this.#window));
    for (let r = 0; r < this.#rows; r++) {
      let sum = 0;
      for (let k = 0; k < this.#binsPerRow; k++) sum += this.#power[r * this.#binsPerRow + k]!;
      column[r] = column[r]! + sum * scale;
    }
    let square = 0;
    for (const value of this.#frame) square += value * value;
    column[this.#rows] = column[this.#rows]! + square / SIZE;
    this.#frames++;
  }

  #column(): Float64Array {
    if (this.#frames === MOST_COLUMNS * this.#framesPerColumn) this.#join();
    const index = Math.floor(this.#frames / this.#framesPerColumn);
    this.#columns[index] ??= new Float64Array(this.#rows + 1);
    return this.#columns[index]!;
  }

  #join(): void {
    const joined: Float64Array[] = [];
    for (let k = 0; k + 1 < this.#columns.length; k += 2)
      joined.push(this.#columns[k]!.map((value, n) => value + this.#columns[k + 1]![n]!));
    this.#columns = joined;
    this.#framesPerColumn *= 2;
  }
}

function decibels(power: number): number {
  return power > 1e-12 ? 10 * Math.log10(power) : SILENT_DB;
}
