import { ArcError } from '../../core/index.js';
import { ClipCounter } from '../../recording/quality/index.js';
import type { ExtractorSummary, FeatureExtractor } from '../extractor.js';
import type { ExtractorEvent } from '../vector.js';
import { Background } from './background.js';
import { type EnvelopeFrame, EnvelopeFrames } from './envelope-frames.js';
import { SOUND_FEATURES } from './feature-set.js';
import {
  FRAME_RATE_HZ,
  HOP_FRAMES,
  MINIMUM_RATE_HZ,
  SHORT_WINDOW_FRAMES,
  SHORT_WINDOW_HOP_FRAMES,
  WINDOW_FRAMES,
} from './grid.js';
import { ShortWindow } from './short-window.js';
import { SpectrumFrames } from './spectrum-frames.js';
import { WindowFeatures, type WindowInput } from './window-features.js';

const LEVEL_FRAMES = 64;
/** Where the frames of a new hop begin. */
const HOP_START = WINDOW_FRAMES - HOP_FRAMES;

/**
 * Sound in, one feature window a hop (0.256 s) out, over the whole recording: where an arc burns is
 * decided after the windows have been judged. With `newest` also the features of the newest half second,
 * twice a hop.
 * @throws ArcError `sample-rate-too-low` below 7,600 Hz
 */
export function createSoundExtractor(rateHz: number, shortWindow = false): FeatureExtractor {
  if (!(rateHz >= MINIMUM_RATE_HZ))
    throw new ArcError({
      code: 'sample-rate-too-low',
      what: `The sound has ${rateHz} samples a second.`,
      expected: `at least ${MINIMUM_RATE_HZ}, since the arc is judged by the band above 1.5 kHz`,
      todo: 'Record at 16 kHz or more (44.1 or 48 kHz is usual).',
    });
  return new SoundExtractor(rateHz, shortWindow);
}

class SoundExtractor implements FeatureExtractor {
  readonly featureSet = SOUND_FEATURES;
  readonly windowS = WINDOW_FRAMES / FRAME_RATE_HZ;
  readonly hopS = HOP_FRAMES / FRAME_RATE_HZ;
  readonly #rateHz: number;
  readonly #frames: EnvelopeFrames;
  readonly #spectrumFrames: SpectrumFrames;
  readonly #features: WindowFeatures;
  readonly shortWindowHopS: number | null;
  readonly #shortWindowFeatures: ShortWindow | null;
  readonly #clips = new ClipCounter();
  readonly #background = new Background();
  readonly #full = new Float64Array(WINDOW_FRAMES);
  readonly #low = new Float64Array(WINDOW_FRAMES);
  readonly #high = new Float64Array(WINDOW_FRAMES);
  readonly #fourth = new Float64Array(WINDOW_FRAMES);
  #filled = HOP_START;
  /** Levels that no window has carried yet: three hops have passed before the first one. */
  #untold: number[] = [];
  #samples = 0;
  #steps = 0;

  constructor(rateHz: number, shortWindow: boolean) {
    this.#rateHz = rateHz;
    this.#frames = new EnvelopeFrames(rateHz);
    this.#spectrumFrames = new SpectrumFrames(rateHz);
    this.#features = new WindowFeatures(rateHz);
    this.#shortWindowFeatures = shortWindow ? new ShortWindow(rateHz) : null;
    this.shortWindowHopS = shortWindow ? SHORT_WINDOW_HOP_FRAMES / FRAME_RATE_HZ : null;
  }

  push(channels: readonly Float64Array[]): ExtractorEvent[] {
    const samples = channels[0]!;
    const events: ExtractorEvent[] = [];
    let start = 0;
    // Pieces end where steps end, so that any split into pushes gives the same windows.
    while (start < samples.length) {
      const frames = (this.#steps + 1) * SHORT_WINDOW_HOP_FRAMES;
      const stepEnd = Math.round((frames * this.#rateHz) / FRAME_RATE_HZ);
      const end = Math.min(samples.length, start + stepEnd - this.#samples);
      this.#piece(samples.subarray(start, end));
      start = end;
      if (this.#samples === stepEnd) this.#finishStep(events);
    }
    return events;
  }

  flush(): ExtractorEvent[] {
    return [];
  }

  summary(): ExtractorSummary {
    return { figures: {}, quality: [], notes: [], sourceProgramme: 'unknown' };
  }

  #piece(samples: Float64Array): void {
    this.#clips.push(samples);
    this.#spectrumFrames.push(samples);
    this.#frames.push(samples, this.#store);
    this.#samples += samples.length;
  }

  readonly #store = (frame: EnvelopeFrame): void => {
    const i = this.#filled++;
    this.#full[i] = frame.full;
    this.#low[i] = frame.low;
    this.#high[i] = frame.high;
    this.#fourth[i] = frame.fourth;
  };

  /** Half a hop, or all of it: the newest half second comes before the window that ends with it. */
  #finishStep(events: ExtractorEvent[]): void {
    this.#steps++;
    const hopEnds = this.#steps % (HOP_FRAMES / SHORT_WINDOW_HOP_FRAMES) === 0;
    if (hopEnds) this.#takeLevels();
    const heardFrames = this.#steps * SHORT_WINDOW_HOP_FRAMES;
    if (this.#shortWindowFeatures && heardFrames >= SHORT_WINDOW_FRAMES)
      events.push(this.#shortWindow(this.#shortWindowFeatures));
    if (!hopEnds) return;
    if (heardFrames >= WINDOW_FRAMES) events.push(this.#window());
    this.#nextHop();
  }

  #takeLevels(): void {
    const levels = this.#levels();
    this.#background.hop(levels.reduce((sum, level) => sum + level, 0) / levels.length);
    this.#untold.push(...levels);
  }

  #nextHop(): void {
    for (const ring of [this.#full, this.#low, this.#high, this.#fourth])
      ring.copyWithin(0, HOP_FRAMES);
    this.#filled = HOP_START;
    this.#spectrumFrames.nextHop();
  }

  #window(): ExtractorEvent {
    const levels = Float64Array.from(this.#untold);
    this.#untold = [];
    const values = this.#features.compute(this.#input());
    if (this.#features.line) this.#background.window(this.#features.prominence);
    const endS = this.#endS();
    return {
      type: 'window',
      window: {
        startS: endS - WINDOW_FRAMES / FRAME_RATE_HZ,
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

  #shortWindow(shortWindowFeatures: ShortWindow): ExtractorEvent {
    const hops = SHORT_WINDOW_FRAMES / HOP_FRAMES;
    const values = shortWindowFeatures.compute(this.#input(hops), this.#filled);
    const endS = this.#endS();
    return {
      type: 'short-window',
      startS: endS - SHORT_WINDOW_FRAMES / FRAME_RATE_HZ,
      endS,
      values,
    };
  }

  /** The frames, with the spectrum of the last hops, all unless told. */
  #input(hops?: number): WindowInput {
    return {
      full: this.#full,
      low: this.#low,
      high: this.#high,
      fourth: this.#fourth,
      power: this.#spectrumFrames.average(hops),
      binHz: this.#spectrumFrames.binHz,
      masked: this.#background.mask,
    };
  }

  /** Time at which the newest step ended, s. */
  #endS(): number {
    return (this.#steps * SHORT_WINDOW_HOP_FRAMES) / FRAME_RATE_HZ;
  }

  #levels(): Float64Array {
    const levels = new Float64Array(HOP_FRAMES / LEVEL_FRAMES);
    for (let i = 0; i < HOP_FRAMES; i++) {
      const slot = Math.floor(i / LEVEL_FRAMES);
      levels[slot] = levels[slot]! + this.#full[HOP_START + i]! / LEVEL_FRAMES;
    }
    return levels;
  }
}
