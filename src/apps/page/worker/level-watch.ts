/** What is wrong with how the sound comes in; all of it is guessed from the sound alone. */
export interface LevelState {
  /** Loudness of the last tenth of a second or so, dB of full scale; -Infinity for silence. */
  rmsDb: number;
  /** Rumble far below the arc's sound has been louder than it for a second: wind, or a hand on the device. */
  wind: boolean;
  /** The arc has sunk steadily since it began: a gain control that can't be switched off turns it down. */
  pumping: boolean;
}

/** Below this wind lies, above the other the arc, Hz. This and all bounds below: own choice, no source. */
const RUMBLE_HZ = 100;
const ARC_HZ = 1000;
const WIND_RATIO = 2;
const WIND_LEAST_DB = -45;
const WIND_LASTS_S = 1;
/** A fall of so much over the first seconds of an arc, part by part, is taken for gain control. */
const FALL_DB = 6;
const IGNITION_S = 0.3;
const PART_S = 0.7;
const PARTS = 4;
const LEAST_STEP_DB = 0.7;

/** Watches level and rumble while a recording runs, some tenths of a second at a time. */
export class LevelWatch {
  readonly #rateHz: number;
  readonly #lowStep: number;
  readonly #midStep: number;
  #low = 0;
  #mid = 0;
  #sums = { all: 0, low: 0, high: 0, count: 0 };
  #windS = 0;
  #arcDb: { db: number; lengthS: number }[] = [];
  #arcS = 0;
  #arc = false;
  #pumping = false;

  constructor(rateHz: number) {
    this.#rateHz = rateHz;
    this.#lowStep = 1 - Math.exp((-2 * Math.PI * RUMBLE_HZ) / rateHz);
    this.#midStep = 1 - Math.exp((-2 * Math.PI * ARC_HZ) / rateHz);
  }

  samples(block: Int16Array): void {
    const sums = this.#sums;
    for (const value of block) {
      const sample = value / 32768;
      this.#low += this.#lowStep * (sample - this.#low);
      this.#mid += this.#midStep * (sample - this.#mid);
      const high = sample - this.#mid;
      sums.all += sample * sample;
      sums.low += this.#low * this.#low;
      sums.high += high * high;
    }
    sums.count += block.length;
  }

  /** The state since it was last read. `arc`: whether an arc burns just now. */
  read(arc: boolean): LevelState {
    const { all, low, high, count } = this.#sums;
    this.#sums = { all: 0, low: 0, high: 0, count: 0 };
    const lengthS = count / this.#rateHz;
    const rmsDb = decibels(all, count);
    const windy =
      decibels(low, count) > WIND_LEAST_DB && Math.sqrt(low) > WIND_RATIO * Math.sqrt(high);
    this.#windS = windy ? this.#windS + lengthS : 0;
    this.#followArc(arc, rmsDb, lengthS);
    return { rmsDb, wind: this.#windS >= WIND_LASTS_S, pumping: this.#pumping };
  }

  #followArc(arc: boolean, db: number, lengthS: number): void {
    if (arc && !this.#arc) {
      this.#arcDb = [];
      this.#arcS = 0;
      this.#pumping = false;
    }
    this.#arc = arc;
    if (!arc || this.#pumping || this.#arcS > IGNITION_S + PARTS * PART_S) return;
    this.#arcS += lengthS;
    if (this.#arcS > IGNITION_S) this.#arcDb.push({ db, lengthS });
    const parts = partsOf(this.#arcDb);
    const [first] = parts;
    const last = parts[PARTS - 1];
    if (first === undefined || last === undefined) return;
    const steady = parts.every((one, k) => k === 0 || one <= (parts[k - 1] ?? one) - LEAST_STEP_DB);
    this.#pumping = steady && first - last >= FALL_DB;
  }
}

/** Middle level of each full part, dB. */
function partsOf(levels: readonly { db: number; lengthS: number }[]): number[] {
  const parts: number[][] = [];
  let atS = 0;
  for (const { db, lengthS } of levels) {
    const part = Math.floor(atS / PART_S);
    const list = parts[part] ?? [];
    list.push(db);
    parts[part] = list;
    atS += lengthS;
  }
  const full = Math.floor(atS / PART_S + 1e-6);
  return parts.slice(0, full).map((list) => list.toSorted((a, b) => a - b)[list.length >> 1] ?? 0);
}

function decibels(energy: number, count: number): number {
  return energy === 0 || count === 0 ? Number.NEGATIVE_INFINITY : 10 * Math.log10(energy / count);
}
