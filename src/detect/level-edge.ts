/** A step of the level within a span of time. */
export interface LevelStep {
  timeS: number;
  /** Mean level after over mean level before, 128 ms on either side (power ratio). */
  ratio: number;
  /** The same over 48 ms: large only where the level leaps at once. */
  sharpRatio: number;
  /** False where one side holds too little sound to compare with: an edit, or a recorder that opens. */
  heard: boolean;
  /** Time since the first sound of the recording, s; 0 where there was none before. */
  sinceFirstS: number;
}

// Lengths in steps of 16 ms and all ratios here are own choice, tried on simulated arcs.
const SIDE = 8;
const SHARP_SIDE = 3;
const FLOOR = 1e-14;
/** Mean square (−130 dB of full scale) below which nothing was recorded. */
const SILENCE = 1e-13;
const MOST_OVER_MEDIAN = 4;
/** A step of 3 dB. */
const CLEAR_STEP = 2;

/** What one side of a place holds. */
interface Side {
  /** Mean of all its levels. */
  mean: number;
  /** Mean of those that were heard, and how many they are. */
  heardMean: number;
  heard: number;
}

/** The last seconds of band levels on a fixed grid, for placing the edges of an arc. */
export class LevelHistory {
  readonly #stepS: number;
  readonly #capacity: number;
  #levels: number[] = [];
  #firstIndex = 0;
  /** Absolute place of the first level that was heard at all. */
  #firstHeard = Infinity;
  /** Whole sides by absolute place: spans that are sought overlap. */
  readonly #known = new Map<number, Side>();

  /** @param stepS time a level spans; @param keepS how far back edges may be sought */
  constructor(stepS: number, keepS: number) {
    this.#stepS = stepS;
    this.#capacity = Math.ceil(keepS / stepS);
  }

  push(levels: Float64Array): void {
    for (const level of levels) {
      if (level > SILENCE && this.#firstHeard === Infinity)
        this.#firstHeard = this.#firstIndex + this.#levels.length;
      this.#levels.push(level);
    }
    const surplus = this.#levels.length - this.#capacity;
    if (surplus <= 0) return;
    this.#levels.splice(0, surplus);
    for (let i = 0; i < surplus; i++) this.#known.delete(this.#firstIndex + i);
    this.#firstIndex += surplus;
  }

  /**
   * The sharpest rise (or fall) between two times: the largest ratio of the means over 128 ms on either
   * side. A step out of (or into) digital silence, or with less than 48 ms (128 ms after `settled`) of
   * sound before it or 48 ms after it, is taken only where no other of 3 dB stands: it marks an edit or a
   * recorder that is just opening, and hides what is next to it. Null where the span holds no level.
   */
  sharpest(
    direction: 'rise' | 'fall',
    fromS: number,
    toS: number,
    { settled = false } = {},
  ): LevelStep | null {
    const from = Math.max(1, Math.round(fromS / this.#stepS) - this.#firstIndex);
    const to = Math.min(this.#levels.length - 1, Math.round(toS / this.#stepS) - this.#firstIndex);
    const leastBefore = settled ? SIDE : SHARP_SIDE;
    const steep = (ratio: number) => (direction === 'rise' ? ratio : 1 / ratio);
    let heard = -1;
    let edited = -1;
    let heardHeight = 0;
    let editedHeight = 0;
    for (let i = from; i <= to; i++) {
      const [before, after] = this.#sides(i, SIDE);
      const height = steep(ratioOf(after.mean, before.mean));
      if (height > editedHeight) [edited, editedHeight] = [i, height];
      if (before.heard < leastBefore || after.heard < SHARP_SIDE) continue;
      const clear = steep(ratioOf(after.heardMean, before.heardMean));
      if (clear > heardHeight) [heard, heardHeight] = [i, clear];
    }
    const isHeard = heardHeight >= CLEAR_STEP || edited < 0;
    const best = isHeard ? heard : edited;
    if (best < 0) return null;
    const place = this.#firstIndex + best;
    return {
      timeS: place * this.#stepS,
      sinceFirstS: Math.max(0, place - this.#firstHeard) * this.#stepS,
      ratio: this.#ratio(best, SIDE, isHeard),
      sharpRatio: this.#ratio(best, SHARP_SIDE, isHeard),
      heard: isHeard,
    };
  }

  /** Typical level since a time over the typical level just before it: a crack that dies away lifts neither. */
  lastingRatio(timeS: number): number {
    const at = Math.round(timeS / this.#stepS) - this.#firstIndex;
    return ratioOf(middle(this.#levels.slice(at)), middle(this.#heard(at - SIDE, at)));
  }

  #ratio(i: number, side: number, heardOnly: boolean): number {
    const [before, after] = this.#sides(i, side);
    if (!heardOnly) return ratioOf(after.mean, before.mean);
    const comparable = before.heard > 0 && after.heard > 0;
    return comparable ? ratioOf(after.heardMean, before.heardMean) : 1;
  }

  #sides(i: number, side: number): readonly [Side, Side] {
    return [this.#side(i - side, i), this.#side(i, i + side)];
  }

  #side(from: number, to: number): Side {
    // The level after the last one, still to come, may tell that the last one was silent in part.
    const whole = to - from === SIDE && from >= 0 && to < this.#levels.length;
    if (!whole) return this.#sideOf(from, to);
    const place = this.#firstIndex + from;
    const side = this.#known.get(place) ?? this.#sideOf(from, to);
    this.#known.set(place, side);
    return side;
  }

  #sideOf(from: number, to: number): Side {
    const heard = this.#heard(from, to);
    return {
      mean: meanOf(this.#levels.slice(Math.max(0, from), Math.max(0, to))),
      heardMean: meanOf(heard),
      heard: heard.length,
    };
  }

  /** The levels of a span but for digital silence and what borders on it, which is silent in part. */
  #heard(from: number, to: number): number[] {
    const silent = (i: number) => (this.#levels[i] ?? Infinity) <= SILENCE;
    return this.#levels.slice(Math.max(0, from), Math.max(0, to)).filter((_, k) => {
      const i = Math.max(0, from) + k;
      return !silent(i - 1) && !silent(i) && !silent(i + 1);
    });
  }
}

function ratioOf(after: number, before: number): number {
  return (after + FLOOR) / (before + FLOOR);
}

/**
 * Mean of levels, none counting more than 6 dB over their median, so that the crack of an ignition
 * neither moves the edge nor makes a leap of a click; 0 for none.
 */
function meanOf(levels: readonly number[]): number {
  if (levels.length === 0) return 0;
  const most = MOST_OVER_MEDIAN * middle(levels);
  return levels.reduce((sum, level) => sum + Math.min(level, most), 0) / levels.length;
}

/** The upper median; 0 for none. */
function middle(levels: readonly number[]): number {
  return [...levels].sort((a, b) => a - b)[levels.length >> 1] ?? 0;
}
