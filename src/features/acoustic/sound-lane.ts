import { ArcError } from '../../core/index.js';
import { ClipCounter } from '../../recording/quality/index.js';
import type { Lane, LaneSummary } from '../lane.js';
import type { LaneEvent } from '../vector.js';
import { Background } from './background.js';
import { type EnvelopeCell, EnvelopeCells } from './envelope-cells.js';
import { SOUND_FEATURES } from './feature-set.js';
import {
  CELL_RATE_HZ,
  HOP_CELLS,
  MINIMUM_RATE_HZ,
  NEWEST_CELLS,
  NEWEST_HOP_CELLS,
  WINDOW_CELLS,
} from './grid.js';
import { NewestHalf } from './newest-half.js';
import { SpectrumFrames } from './spectrum-frames.js';
import { WindowFeatures, type WindowInput } from './window-features.js';

const LEVEL_CELLS = 64;
/** Where the cells of a new hop begin. */
const HOP_START = WINDOW_CELLS - HOP_CELLS;

/**
 * Sound in, one feature window a hop (0.256 s) out, over the whole recording: where an arc burns is
 * decided after the windows have been judged. With `newest` also the features of the newest half second,
 * twice a hop.
 * @throws ArcError `sample-rate-too-low` below 7,600 Hz
 */
export function createSoundLane(rateHz: number, newest = false): Lane {
  if (!(rateHz >= MINIMUM_RATE_HZ))
    throw new ArcError({
      code: 'sample-rate-too-low',
      what: `The sound has ${rateHz} samples a second.`,
      expected: `at least ${MINIMUM_RATE_HZ}, since the arc is judged by the band above 1.5 kHz`,
      todo: 'Record at 16 kHz or more (44.1 or 48 kHz is usual).',
    });
  return new SoundLane(rateHz, newest);
}

class SoundLane implements Lane {
  readonly featureSet = SOUND_FEATURES;
  readonly windowS = WINDOW_CELLS / CELL_RATE_HZ;
  readonly hopS = HOP_CELLS / CELL_RATE_HZ;
  readonly #rateHz: number;
  readonly #cells: EnvelopeCells;
  readonly #frames: SpectrumFrames;
  readonly #features: WindowFeatures;
  readonly newestHopS: number | null;
  readonly #newestHalf: NewestHalf | null;
  readonly #clips = new ClipCounter();
  readonly #background = new Background();
  readonly #full = new Float64Array(WINDOW_CELLS);
  readonly #low = new Float64Array(WINDOW_CELLS);
  readonly #high = new Float64Array(WINDOW_CELLS);
  readonly #fourth = new Float64Array(WINDOW_CELLS);
  #filled = HOP_START;
  /** Levels that no window has carried yet: three hops have passed before the first one. */
  #untold: number[] = [];
  #samples = 0;
  #steps = 0;

  constructor(rateHz: number, newest: boolean) {
    this.#rateHz = rateHz;
    this.#cells = new EnvelopeCells(rateHz);
    this.#frames = new SpectrumFrames(rateHz);
    this.#features = new WindowFeatures(rateHz);
    this.#newestHalf = newest ? new NewestHalf(rateHz) : null;
    this.newestHopS = newest ? NEWEST_HOP_CELLS / CELL_RATE_HZ : null;
  }

  push(channels: readonly Float64Array[]): LaneEvent[] {
    const samples = channels[0]!;
    const events: LaneEvent[] = [];
    let start = 0;
    // Pieces end where steps end, so that any split into pushes gives the same windows.
    while (start < samples.length) {
      const cells = (this.#steps + 1) * NEWEST_HOP_CELLS;
      const stepEnd = Math.round((cells * this.#rateHz) / CELL_RATE_HZ);
      const end = Math.min(samples.length, start + stepEnd - this.#samples);
      this.#piece(samples.subarray(start, end));
      start = end;
      if (this.#samples === stepEnd) this.#finishStep(events);
    }
    return events;
  }

  flush(): LaneEvent[] {
    return [];
  }

  summary(): LaneSummary {
    return { figures: {}, quality: [], notes: [], sourceProgramme: 'unknown' };
  }

  #piece(samples: Float64Array): void {
    this.#clips.push(samples);
    this.#frames.push(samples);
    this.#cells.push(samples, this.#store);
    this.#samples += samples.length;
  }

  readonly #store = (cell: EnvelopeCell): void => {
    const i = this.#filled++;
    this.#full[i] = cell.full;
    this.#low[i] = cell.low;
    this.#high[i] = cell.high;
    this.#fourth[i] = cell.fourth;
  };

  /** Half a hop, or all of it: the newest half second comes before the window that ends with it. */
  #finishStep(events: LaneEvent[]): void {
    this.#steps++;
    const hopEnds = this.#steps % (HOP_CELLS / NEWEST_HOP_CELLS) === 0;
    if (hopEnds) this.#takeLevels();
    const heardCells = this.#steps * NEWEST_HOP_CELLS;
    if (this.#newestHalf && heardCells >= NEWEST_CELLS) events.push(this.#newest(this.#newestHalf));
    if (!hopEnds) return;
    if (heardCells >= WINDOW_CELLS) events.push(this.#window());
    this.#nextHop();
  }

  #takeLevels(): void {
    const levels = this.#levels();
    this.#background.hop(levels.reduce((sum, level) => sum + level, 0) / levels.length);
    this.#untold.push(...levels);
  }

  #nextHop(): void {
    for (const ring of [this.#full, this.#low, this.#high, this.#fourth])
      ring.copyWithin(0, HOP_CELLS);
    this.#filled = HOP_START;
    this.#frames.nextHop();
  }

  #window(): LaneEvent {
    const levels = Float64Array.from(this.#untold);
    this.#untold = [];
    const values = this.#features.compute(this.#input());
    if (this.#features.line) this.#background.window(this.#features.prominence);
    const endS = this.#endS();
    return {
      type: 'window',
      window: {
        startS: endS - WINDOW_CELLS / CELL_RATE_HZ,
        endS,
        values,
        sound: {
          levels,
          lineHz: this.#features.line?.frequencyHz ?? NaN,
          lineProminence: this.#features.line?.prominence ?? NaN,
          onsetHz: this.#features.onsets?.rateHz ?? NaN,
          onsetStrength: this.#features.onsets?.strength ?? NaN,
          clippedShare: this.#clips.take(),
        },
      },
    };
  }

  #newest(newestHalf: NewestHalf): LaneEvent {
    const hops = NEWEST_CELLS / HOP_CELLS;
    const values = newestHalf.compute(this.#input(hops), this.#filled);
    const endS = this.#endS();
    return { type: 'newest', startS: endS - NEWEST_CELLS / CELL_RATE_HZ, endS, values };
  }

  /** The cells, with the spectrum of the last hops, all unless told. */
  #input(hops?: number): WindowInput {
    return {
      full: this.#full,
      low: this.#low,
      high: this.#high,
      fourth: this.#fourth,
      power: this.#frames.average(hops),
      binHz: this.#frames.binHz,
      masked: this.#background.mask,
    };
  }

  /** Time at which the newest step ended, s. */
  #endS(): number {
    return (this.#steps * NEWEST_HOP_CELLS) / CELL_RATE_HZ;
  }

  #levels(): Float64Array {
    const levels = new Float64Array(HOP_CELLS / LEVEL_CELLS);
    for (let i = 0; i < HOP_CELLS; i++) {
      const slot = Math.floor(i / LEVEL_CELLS);
      levels[slot] = levels[slot]! + this.#full[HOP_START + i]! / LEVEL_CELLS;
    }
    return levels;
  }
}
