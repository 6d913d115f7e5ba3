/** A second-order section in transposed direct form II. */
export class Section {
  private s1 = 0;
  private s2 = 0;

  constructor(
    private readonly b0: number,
    private readonly b1: number,
    private readonly b2: number,
    private readonly a1: number,
    private readonly a2: number,
  ) {}

  /** Next output sample. */
  next(x: number): number {
    // The tiny constant keeps the states out of the denormal range, where arithmetic is slow.
    const y = this.b0 * x + this.s1 + 1e-30;
    this.s1 = this.b1 * x - this.a1 * y + this.s2;
    this.s2 = this.b2 * x - this.a2 * y;
    return y;
  }

  /** Starts as if `x` had been there for ever (for unit gain at zero frequency). */
  settle(x: number): void {
    this.s2 = (this.b2 - this.a2) * x;
    this.s1 = (this.b1 - this.a1) * x + this.s2;
  }

  /** Filters in place. */
  run<T extends Float64Array | Float32Array>(samples: T): T {
    const { b0, b1, b2, a1, a2 } = this;
    let { s1, s2 } = this;
    for (let i = 0; i < samples.length; i++) {
      const x = samples[i]!;
      const y = b0 * x + s1 + 1e-30;
      s1 = b1 * x - a1 * y + s2;
      s2 = b2 * x - a2 * y;
      samples[i] = y;
    }
    this.s1 = s1;
    this.s2 = s2;
    return samples;
  }
}

type Kind = 'low' | 'high' | 'band' | 'peak';

/**
 * Section by the bilinear recipes of R. Bristow-Johnson's cookbook. `gainDb` matters for `peak` only.
 * A corner above 0.45 of the rate is set to that: the band simply ends there.
 */
export function section(
  kind: Kind,
  rateHz: number,
  hz: number,
  q = Math.SQRT1_2,
  gainDb = 0,
): Section {
  const w = 2 * Math.PI * Math.min(hz / rateHz, 0.45);
  const c = Math.cos(w);
  const alpha = Math.sin(w) / (2 * q);
  const amp = 10 ** (gainDb / 40);
  const a0 = kind === 'peak' ? 1 + alpha / amp : 1 + alpha;
  const a2 = kind === 'peak' ? 1 - alpha / amp : 1 - alpha;
  const b: [number, number, number] =
    kind === 'low'
      ? [(1 - c) / 2, 1 - c, (1 - c) / 2]
      : kind === 'high'
        ? [(1 + c) / 2, -(1 + c), (1 + c) / 2]
        : kind === 'band'
          ? [alpha, 0, -alpha]
          : [1 + alpha * amp, -2 * c, 1 - alpha * amp];
  return new Section(b[0] / a0, b[1] / a0, b[2] / a0, (-2 * c) / a0, a2 / a0);
}

/** Fourth-order Butterworth low-pass in place. */
export function smooth<T extends Float64Array | Float32Array>(
  samples: T,
  rateHz: number,
  hz: number,
): T {
  for (const q of [0.5412, 1.3066]) {
    const part = section('low', rateHz, hz, q);
    part.settle(samples[0] ?? 0);
    part.run(samples);
  }
  return samples;
}

/** Reads a signal at a new rate by cubic interpolation; the caller has limited its band. */
export function sampleAt(
  samples: ArrayLike<number>,
  fromHz: number,
  toHz: number,
  count: number,
  startS = 0,
): Float64Array {
  const out = new Float64Array(count);
  const last = samples.length - 1;
  const at = (i: number): number => samples[i < 0 ? 0 : Math.min(i, last)] ?? 0;
  for (let k = 0; k < count; k++) {
    const x = (startS + k / toHz) * fromHz;
    const i = Math.floor(x);
    const f = x - i;
    const a = at(i - 1);
    const b = at(i);
    const c = at(i + 1);
    const d = at(i + 2);
    out[k] = b + 0.5 * f * (c - a + f * (2 * a - 5 * b + 4 * c - d + f * (3 * (b - c) + d - a)));
  }
  return out;
}
