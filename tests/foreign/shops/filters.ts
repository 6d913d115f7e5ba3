/** Small filters, in place. Hertz, decibels, samples. */
export type Line = Float32Array;

interface Coefficients {
  b0: number;
  b1: number;
  b2: number;
  a1: number;
  a2: number;
}

/** Second-order sections after the usual audio cookbook (R. Bristow-Johnson, public note). */
function section(
  kind: 'low' | 'high' | 'band' | 'bell',
  hz: number,
  q: number,
  gainDb: number,
  rateHz: number,
): Coefficients {
  const w = (2 * Math.PI * Math.min(hz, 0.47 * rateHz)) / rateHz;
  const c = Math.cos(w);
  const alpha = Math.sin(w) / (2 * q);
  const lift = 10 ** (gainDb / 40);
  let b0 = alpha;
  let b1 = 0;
  let b2 = -alpha;
  let a0 = 1 + alpha;
  let a2 = 1 - alpha;
  if (kind === 'low') {
    b0 = (1 - c) / 2;
    b1 = 1 - c;
    b2 = b0;
  } else if (kind === 'high') {
    b0 = (1 + c) / 2;
    b1 = -(1 + c);
    b2 = b0;
  } else if (kind === 'bell') {
    b0 = 1 + alpha * lift;
    b1 = -2 * c;
    b2 = 1 - alpha * lift;
    a0 = 1 + alpha / lift;
    a2 = 1 - alpha / lift;
  }
  return { b0: b0 / a0, b1: b1 / a0, b2: b2 / a0, a1: (-2 * c) / a0, a2: a2 / a0 };
}

export function filter(
  x: Line,
  kind: 'low' | 'high' | 'band' | 'bell',
  hz: number,
  q: number,
  rateHz: number,
  gainDb = 0,
): Line {
  const { b0, b1, b2, a1, a2 } = section(kind, hz, q, gainDb, rateHz);
  let s1 = 0;
  let s2 = 0;
  for (let i = 0; i < x.length; i++) {
    const v = x[i] ?? 0;
    const y = b0 * v + s1;
    s1 = b1 * v - a1 * y + s2;
    s2 = b2 * v - a2 * y;
    x[i] = y;
    // A ring that has died away costs time as very small numbers: let it end.
    if (s1 < 1e-20 && s1 > -1e-20) s1 = 0;
    if (s2 < 1e-20 && s2 > -1e-20) s2 = 0;
  }
  return x;
}

/** Adds `gain` times `from` onto `onto`, starting at sample `at`. */
export function addTo(onto: Line, from: Line, gain = 1, at = 0): Line {
  const first = Math.max(0, -at);
  const last = Math.min(from.length, onto.length - at);
  for (let i = first; i < last; i++) onto[at + i] = (onto[at + i] ?? 0) + gain * (from[i] ?? 0);
  return onto;
}

export function scaleBy(x: Line, gain: number): Line {
  for (let i = 0; i < x.length; i++) x[i] = (x[i] ?? 0) * gain;
  return x;
}

export function rms(x: Line, from = 0, to = x.length): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += (x[i] ?? 0) ** 2;
  return Math.sqrt(sum / Math.max(1, to - from));
}

export function isSilent(x: Line): boolean {
  for (let i = 0; i < x.length; i++) if (x[i] !== 0) return false;
  return true;
}

/** Every third sample after a windowed-sinc low pass at 0.45 of the new rate. */
export function thirdRate(x: Line): Line {
  const half = 24;
  const taps = new Float64Array(2 * half + 1);
  for (let k = -half; k <= half; k++) {
    const a = Math.PI * k * 0.3;
    const window = 0.5 + 0.5 * Math.cos((Math.PI * k) / (half + 1));
    taps[k + half] = 0.3 * (k === 0 ? 1 : Math.sin(a) / a) * window;
  }
  const y = new Float32Array(Math.floor(x.length / 3));
  if (isSilent(x)) return y;
  for (let i = 0; i < y.length; i++) {
    let sum = 0;
    const from = Math.max(-half, -3 * i);
    const to = Math.min(half, x.length - 1 - 3 * i);
    for (let k = from; k <= to; k++) sum += (taps[k + half] ?? 0) * (x[3 * i + k] ?? 0);
    y[i] = sum;
  }
  return y;
}
