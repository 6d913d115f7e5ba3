/** Small filters and a resampler used all over this world. */

/** Second-order section; coefficients after the widely used audio cookbook formulas (from memory). */
export class Biquad {
  private x1 = 0;
  private x2 = 0;
  private y1 = 0;
  private y2 = 0;
  private readonly b0: number;
  private readonly b1: number;
  private readonly b2: number;
  private readonly a1: number;
  private readonly a2: number;

  constructor(b0: number, b1: number, b2: number, a0: number, a1: number, a2: number) {
    this.b0 = b0 / a0;
    this.b1 = b1 / a0;
    this.b2 = b2 / a0;
    this.a1 = a1 / a0;
    this.a2 = a2 / a0;
  }

  static lowPass(hz: number, rateHz: number, q = Math.SQRT1_2): Biquad {
    const { cos, alpha } = angle(hz, rateHz, q);
    return new Biquad((1 - cos) / 2, 1 - cos, (1 - cos) / 2, 1 + alpha, -2 * cos, 1 - alpha);
  }

  static highPass(hz: number, rateHz: number, q = Math.SQRT1_2): Biquad {
    const { cos, alpha } = angle(hz, rateHz, q);
    return new Biquad((1 + cos) / 2, -1 - cos, (1 + cos) / 2, 1 + alpha, -2 * cos, 1 - alpha);
  }

  static bandPass(hz: number, rateHz: number, q: number): Biquad {
    const { cos, alpha } = angle(hz, rateHz, q);
    return new Biquad(alpha, 0, -alpha, 1 + alpha, -2 * cos, 1 - alpha);
  }

  /** Raises or lowers a band by so many dB. */
  static peak(hz: number, rateHz: number, q: number, gainDb: number): Biquad {
    const { cos, alpha } = angle(hz, rateHz, q);
    const a = 10 ** (gainDb / 40);
    return new Biquad(
      1 + alpha * a,
      -2 * cos,
      1 - alpha * a,
      1 + alpha / a,
      -2 * cos,
      1 - alpha / a,
    );
  }

  /** Raises or lowers everything above a frequency by so many dB. */
  static highShelf(hz: number, rateHz: number, gainDb: number): Biquad {
    const { cos, alpha } = angle(hz, rateHz, 0.6);
    const a = 10 ** (gainDb / 40);
    const s = 2 * Math.sqrt(a) * alpha;
    return new Biquad(
      a * (a + 1 + (a - 1) * cos + s),
      -2 * a * (a - 1 + (a + 1) * cos),
      a * (a + 1 + (a - 1) * cos - s),
      a + 1 - (a - 1) * cos + s,
      2 * (a - 1 - (a + 1) * cos),
      a + 1 - (a - 1) * cos - s,
    );
  }

  next(x: number): number {
    const y =
      this.b0 * x + this.b1 * this.x1 + this.b2 * this.x2 - this.a1 * this.y1 - this.a2 * this.y2;
    this.x2 = this.x1;
    this.x1 = x;
    this.y2 = this.y1;
    this.y1 = Math.abs(y) < 1e-25 ? 0 : y;
    return y;
  }

  /** Filters an array in place and gives it back. */
  run(x: Float32Array): Float32Array {
    const { b0, b1, b2, a1, a2 } = this;
    let { x1, x2, y1, y2 } = this;
    for (let i = 0; i < x.length; i++) {
      const v = x[i] as number;
      const y = b0 * v + b1 * x1 + b2 * x2 - a1 * y1 - a2 * y2;
      x2 = x1;
      x1 = v;
      y2 = y1;
      y1 = y < 1e-25 && y > -1e-25 ? 0 : y;
      x[i] = y;
    }
    this.x1 = x1;
    this.x2 = x2;
    this.y1 = y1;
    this.y2 = y2;
    return x;
  }
}

function angle(hz: number, rateHz: number, q: number): { cos: number; alpha: number } {
  const w = 2 * Math.PI * Math.min(hz / rateHz, 0.47);
  return { cos: Math.cos(w), alpha: Math.sin(w) / (2 * q) };
}

/** Root mean square of a part of an array. */
export function rms(x: Float32Array, from = 0, to = x.length): number {
  let s = 0;
  for (let i = from; i < to; i++) s += (x[i] as number) ** 2;
  return Math.sqrt(s / Math.max(1, to - from));
}

const TABLES = new Map<string, { half: number; phases: number; taps: Float32Array }>();

/** Windowed-sinc taps for one pair of rates, made once. */
function table(fromHz: number, toHz: number): { half: number; phases: number; taps: Float32Array } {
  const key = `${fromHz}/${toHz}`;
  const known = TABLES.get(key);
  if (known) return known;
  const cut = Math.min(1, toHz / fromHz) * 0.94;
  const half = Math.ceil(9 / cut);
  const phases = 160;
  const taps = new Float32Array((phases + 1) * 2 * half);
  for (let p = 0; p <= phases; p++) {
    for (let k = 0; k < 2 * half; k++) {
      const d = k - half + 1 - p / phases;
      const a = Math.PI * d * cut;
      const sinc = Math.abs(a) < 1e-9 ? 1 : Math.sin(a) / a;
      const w = 0.5 + 0.5 * Math.cos(Math.PI * Math.max(-1, Math.min(1, d / half)));
      taps[p * 2 * half + k] = cut * sinc * w;
    }
  }
  const made = { half, phases, taps };
  TABLES.set(key, made);
  return made;
}

/** Changes the sample rate (nearest of 160 phases; error far below the noises of this world). */
export function resample(x: Float32Array, fromHz: number, toHz: number): Float32Array {
  if (fromHz === toHz) return x.slice();
  const n = Math.floor((x.length * toHz) / fromHz);
  const out = new Float32Array(n);
  const { half, phases, taps } = table(fromHz, toHz);
  const step = fromHz / toHz;
  const width = 2 * half;
  for (let i = 0; i < n; i++) {
    const at = i * step;
    const whole = Math.floor(at);
    const row = Math.round((at - whole) * phases) * width;
    const first = whole - half + 1;
    let s = 0;
    const lo = Math.max(0, -first);
    const hi = Math.min(width, x.length - first);
    for (let k = lo; k < hi; k++) s += (x[first + k] as number) * (taps[row + k] as number);
    out[i] = s;
  }
  return out;
}
