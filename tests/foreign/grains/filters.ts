/** Second-order filter in direct form; shapes after the well-known audio cookbook (from memory). */
export class Biquad {
  private z1 = 0;
  private z2 = 0;

  private constructor(
    private readonly b0: number,
    private readonly b1: number,
    private readonly b2: number,
    private readonly a1: number,
    private readonly a2: number,
  ) {}

  private static angle(hz: number, rateHz: number): number {
    return (2 * Math.PI * Math.min(hz, 0.48 * rateHz)) / rateHz;
  }

  /** Passes what lies below a frequency. */
  static low(hz: number, rateHz: number, q = Math.SQRT1_2): Biquad {
    const w = Biquad.angle(hz, rateHz);
    const c = Math.cos(w);
    const s = Math.sin(w) / (2 * q);
    const n = 1 + s;
    return new Biquad((1 - c) / 2 / n, (1 - c) / n, (1 - c) / 2 / n, (-2 * c) / n, (1 - s) / n);
  }

  /** Passes what lies above a frequency. */
  static high(hz: number, rateHz: number, q = Math.SQRT1_2): Biquad {
    const w = Biquad.angle(hz, rateHz);
    const c = Math.cos(w);
    const s = Math.sin(w) / (2 * q);
    const n = 1 + s;
    return new Biquad((1 + c) / 2 / n, -(1 + c) / n, (1 + c) / 2 / n, (-2 * c) / n, (1 - s) / n);
  }

  /** Passes a band; gain 1 in its middle. */
  static band(hz: number, rateHz: number, q: number): Biquad {
    const w = Biquad.angle(hz, rateHz);
    const s = Math.sin(w) / (2 * q);
    const n = 1 + s;
    return new Biquad(s / n, 0, -s / n, (-2 * Math.cos(w)) / n, (1 - s) / n);
  }

  /** Lifts or lowers a band by some decibels. */
  static bell(hz: number, rateHz: number, q: number, gainDb: number): Biquad {
    const w = Biquad.angle(hz, rateHz);
    const g = 10 ** (gainDb / 40);
    const s = Math.sin(w) / (2 * q);
    const c = -2 * Math.cos(w);
    const n = 1 + s / g;
    return new Biquad((1 + s * g) / n, c / n, (1 - s * g) / n, c / n, (1 - s / g) / n);
  }

  /** One sample through the filter. */
  step(x: number): number {
    const y = this.b0 * x + this.z1;
    this.z1 = this.b1 * x - this.a1 * y + this.z2;
    this.z2 = this.b2 * x - this.a2 * y;
    return y;
  }

  /** A whole array, in place; starts at rest. */
  run(samples: Float32Array): Float32Array {
    const { b0, b1, b2, a1, a2 } = this;
    let z1 = 0;
    let z2 = 0;
    for (let k = 0; k < samples.length; k++) {
      const x = samples[k] as number;
      const y = b0 * x + z1;
      z1 = b1 * x - a1 * y + z2;
      z2 = b2 * x - a2 * y;
      samples[k] = y;
    }
    return samples;
  }
}

/** Root of the mean square; 0 for an empty array. */
export function rms(samples: Float32Array, from = 0, to = samples.length): number {
  let sum = 0;
  for (let k = from; k < to; k++) sum += (samples[k] as number) ** 2;
  return to > from ? Math.sqrt(sum / (to - from)) : 0;
}

/** Multiplies an array in place. */
export function scale(samples: Float32Array, gain: number): Float32Array {
  for (let k = 0; k < samples.length; k++) samples[k] = (samples[k] as number) * gain;
  return samples;
}

/**
 * Adds `source` times `gain` to `target`, its first sample at `at`; what falls outside is dropped.
 */
export function mix(target: Float32Array, source: Float32Array, gain = 1, at = 0): void {
  const from = Math.max(0, -at);
  const to = Math.min(source.length, target.length - at);
  for (let k = from; k < to; k++) {
    target[k + at] = (target[k + at] as number) + gain * (source[k] as number);
  }
}
