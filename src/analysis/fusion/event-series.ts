import { BiquadCascade, butterworth } from '../../dsp/index.js';
import { FrameMeans } from './bins.js';

const BAND_HZ = [1500, 12_000] as const;

/** Power of the arc's band (1.5 to 12 kHz, or what the rate can hold) in frames. */
export class SoundSeries {
  readonly #filter: BiquadCascade;
  readonly #bins: FrameMeans;
  #band = new Float64Array(0);

  constructor(rateHz: number) {
    this.#filter = new BiquadCascade([
      ...butterworth('high-pass', 2, Math.min(BAND_HZ[0], 0.2 * rateHz), rateHz),
      ...butterworth('low-pass', 2, Math.min(BAND_HZ[1], 0.45 * rateHz), rateHz),
    ]);
    this.#bins = new FrameMeans(rateHz);
  }

  push(samples: Float64Array): void {
    if (this.#band.length < samples.length) this.#band = new Float64Array(samples.length);
    this.#filter.process(samples, this.#band);
    for (let i = 0; i < samples.length; i++) this.#bins.push(this.#band[i]! ** 2);
  }

  finish(): Float32Array {
    return this.#bins.finish();
  }
}

/** Arc power in frames: voltage times current, or the one of them that was recorded. */
export class TraceSeries {
  readonly #bins: FrameMeans;

  constructor(rateHz: number) {
    this.#bins = new FrameMeans(rateHz);
  }

  push(channels: readonly Float64Array[]): void {
    const [first, second] = channels as [Float64Array, Float64Array?];
    for (let i = 0; i < first.length; i++)
      this.#bins.push(second ? first[i]! * second[i]! : first[i]!);
  }

  finish(): Float32Array {
    return this.#bins.finish();
  }
}

/** Loudness of a sound's frames: logarithmic, so that neither gain nor one crack rules it. */
export function loudnessOf(bins: Float32Array): Float32Array {
  return overFloor(bins);
}

/** How fast the frames of a trace change, whichever way, logarithmic. */
export function changesOf(bins: Float32Array): Float32Array {
  const step = (i: number): number => Math.abs((bins[i] ?? 0) - (bins[i - 1] ?? bins[i] ?? 0));
  return overFloor(bins.map((_, i) => Math.max(step(i), i + 1 < bins.length ? step(i + 1) : 0)));
}

/** Logarithm over a floor of a tenth of the mean, so that silence has no depth without end. */
function overFloor(values: Float32Array): Float32Array {
  let sum = 0;
  let count = 0;
  for (const one of values) {
    if (!(one > 0)) continue;
    sum += one;
    count++;
  }
  if (count === 0) return new Float32Array(values.length);
  const floor = (FLOOR * sum) / count;
  return values.map((one) => Math.log(one + floor));
}

const FLOOR = 0.1;
