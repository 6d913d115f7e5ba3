/** A step of the level within a span of time. */
export interface LevelStep {
  timeS: number;
  /** Mean level after over mean level before, 128 ms on either side (power ratio). */
  ratio: number;
  /** The same over 48 ms: large only where the level leaps at once. */
  sharpRatio: number;
}

const SIDE = 8;
const SHARP_SIDE = 3;
const FLOOR = 1e-14;
/** Mean square (−130 dB of full scale) below which nothing was recorded. */
const SILENCE = 1e-13;
const MOST_OVER_MEDIAN = 4;
/** A step of 3 dB. */
const CLEAR_STEP = 2;

/** The last seconds of band levels on a fixed grid, for placing the edges of an arc. */
export class LevelHistory {
  readonly #stepS: number;
  readonly #capacity: number;
  #levels: number[] = [];
  #firstIndex = 0;
  /** Means over whole sides by absolute place, without and with a floor: spans that are sought overlap. */
  readonly #known = [new Map<number, number>(), new Map<number, number>()] as const;

  /** @param stepS time a level spans; @param keepS how far back edges may be sought */
  constructor(stepS: number, keepS: number) {
    this.#stepS = stepS;
    this.#capacity = Math.ceil(keepS / stepS);
  }

  push(levels: Float64Array): void {
    for (const level of levels) this.#levels.push(level);
    const surplus = this.#levels.length - this.#capacity;
    if (surplus <= 0) return;
    this.#levels.splice(0, surplus);
    for (const means of this.#known)
      for (let i = 0; i < surplus; i++) means.delete(this.#firstIndex + i);
    this.#firstIndex += surplus;
  }

  /**
   * The sharpest rise (or fall) between two times: the largest ratio of the means over 128 ms on either
   * side. A step out of (or into) digital silence is taken only where no other of 3 dB stands, since it
   * marks an edit and hides what is next to it. Null where the span holds no level.
   */
  sharpest(direction: 'rise' | 'fall', fromS: number, toS: number): LevelStep | null {
    const from = Math.max(1, Math.round(fromS / this.#stepS) - this.#firstIndex);
    const to = Math.min(this.#levels.length - 1, Math.round(toS / this.#stepS) - this.#firstIndex);
    const steep = (ratio: number) => (direction === 'rise' ? ratio : 1 / ratio);
    let heard = -1;
    let edited = -1;
    let heardHeight = 0;
    let editedHeight = 0;
    for (let i = from; i <= to; i++) {
      const height = steep(this.#ratio(i, SIDE));
      if (height > editedHeight) [edited, editedHeight] = [i, height];
      if (this.#isEdit(i)) continue;
      const clear = steep(this.#ratioHeard(i, SIDE));
      if (clear > heardHeight) [heard, heardHeight] = [i, clear];
    }
    const isHeard = heardHeight >= CLEAR_STEP || edited < 0;
    const best = isHeard ? heard : edited;
    if (best < 0) return null;
    const at = (side: number) => (isHeard ? this.#ratioHeard(best, side) : this.#ratio(best, side));
    return {
      timeS: (this.#firstIndex + best) * this.#stepS,
      ratio: at(SIDE),
      sharpRatio: at(SHARP_SIDE),
    };
  }

  /** Typical level since a time over the typical level just before it: a crack that dies away lifts neither. */
  lastingRatio(timeS: number): number {
    const at = Math.round(timeS / this.#stepS) - this.#firstIndex;
    const before = middle(this.#levels.slice(Math.max(0, at - SIDE), at));
    return (middle(this.#levels.slice(at)) + FLOOR) / (before + FLOOR);
  }

  /** Whether one side is nothing but digital silence. */
  #isEdit(i: number): boolean {
    return this.#mean(i - SIDE, i, SILENCE) === 0 || this.#mean(i, i + SIDE, SILENCE) === 0;
  }

  #ratio(i: number, side: number): number {
    return (this.#mean(i, i + side) + FLOOR) / (this.#mean(i - side, i) + FLOOR);
  }

  #ratioHeard(i: number, side: number): number {
    const [before, after] = [this.#mean(i - side, i, SILENCE), this.#mean(i, i + side, SILENCE)];
    return (after + FLOOR) / (before + FLOOR);
  }

  /**
   * Mean of the levels above a floor, none counting more than 6 dB over their median, so that the crack of
   * an ignition neither moves the edge nor makes a leap of a click; 0 where there are none.
   */
  #mean(from: number, to: number, floor = -1): number {
    const whole = to - from === SIDE && from >= 0 && to <= this.#levels.length;
    if (!whole) return this.#meanOf(from, to, floor);
    const known = this.#known[floor === SILENCE ? 1 : 0];
    const place = this.#firstIndex + from;
    const mean = known.get(place) ?? this.#meanOf(from, to, floor);
    known.set(place, mean);
    return mean;
  }

  #meanOf(from: number, to: number, floor: number): number {
    const levels = this.#levels
      .slice(Math.max(0, from), Math.min(this.#levels.length, to))
      .filter((level) => level > floor);
    if (levels.length === 0) return 0;
    const most = MOST_OVER_MEDIAN * middle(levels);
    return levels.reduce((sum, level) => sum + Math.min(level, most), 0) / levels.length;
  }
}

/** The upper median; 0 for none. */
function middle(levels: readonly number[]): number {
  return [...levels].sort((a, b) => a - b)[levels.length >> 1] ?? 0;
}
