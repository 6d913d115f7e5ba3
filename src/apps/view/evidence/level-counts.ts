import { TimedSums } from './timed-sums.js';
import type { LevelCounts, Plane, PlanePhase } from './types.js';

const PHASES: readonly PlanePhase[] = ['arc', 'short circuit', 'just after'];
/** How long after a short the arc counts as just re-lit. */
const AFTER_S = 0.001;
const LEVELS = 120;
const LEVEL_FROM_V = -5;
const LEVEL_WIDTH_V = 0.5;
const COLUMNS = 60;
const ROWS = 45;

/** Histogram of the voltage and map of voltage over current, by phase of the arc. */
export class PhaseCounts {
  readonly #after: number;
  readonly #slotS: number;
  readonly #levels: TimedSums;
  readonly #plane: TimedSums | null;
  readonly #widthA: number;
  #sinceShort = Number.POSITIVE_INFINITY;

  constructor(options: { rateHz: number; slotS: number; hasCurrent: boolean }) {
    this.#after = AFTER_S * options.rateHz;
    this.#slotS = options.slotS;
    this.#levels = new TimedSums(2 * LEVELS, { slotS: options.slotS, most: 256 });
    const cells = PHASES.length * COLUMNS * ROWS;
    this.#plane = options.hasCurrent
      ? new TimedSums(cells, { slotS: 4 * options.slotS, most: 64 })
      : null;
    this.#widthA = 10;
  }

  /** `ranges`: pairs of first and one-past-last sample in a short within the slot. */
  push(
    index: number,
    volts: Float64Array,
    amps: Float64Array | null,
    ranges: readonly number[],
  ): void {
    const timeS = (index + 0.5) * this.#slotS;
    const levels = this.#levels.at(timeS);
    const plane = this.#plane?.at(timeS);
    let next = 0;
    for (let n = 0; n < volts.length; n++) {
      while (next < ranges.length && n >= ranges[next + 1]!) next += 2;
      const short = next < ranges.length && n >= ranges[next]!;
      this.#sinceShort = short ? 0 : this.#sinceShort + 1;
      const level = cell((volts[n]! - LEVEL_FROM_V) / LEVEL_WIDTH_V, LEVELS);
      if (level >= 0) levels[(short ? LEVELS : 0) + level]!++;
      if (!plane || !amps) continue;
      const phase = short ? 1 : this.#sinceShort <= this.#after ? 2 : 0;
      const column = cell(Math.abs(amps[n]!) / this.#widthA, COLUMNS);
      const row = cell(volts[n]!, ROWS);
      if (column >= 0 && row >= 0) plane[(phase * ROWS + row) * COLUMNS + column]!++;
    }
  }

  levels(arcIntervals: readonly { startS: number; endS: number }[]): LevelCounts | null {
    const sum = this.#levels.within(arcIntervals);
    if (!sum.some((one) => one > 0)) return null;
    return {
      unit: 'V',
      fromValue: LEVEL_FROM_V,
      width: LEVEL_WIDTH_V,
      arc: sum.slice(0, LEVELS),
      short: sum.slice(LEVELS),
    };
  }

  plane(arcIntervals: readonly { startS: number; endS: number }[]): Plane | null {
    const sum = this.#plane?.within(arcIntervals);
    if (!sum?.some((one) => one > 0)) return null;
    const size = ROWS * COLUMNS;
    const phases = PHASES.map((name, k) => ({ name, counts: sum.slice(k * size, (k + 1) * size) }));
    return { columns: COLUMNS, rows: ROWS, widthA: this.#widthA, heightV: 1, phases };
  }
}

/** Bin of a value; −1 outside or for NaN. */
function cell(position: number, count: number): number {
  const index = Math.floor(position);
  return index >= 0 && index < count ? index : -1;
}
