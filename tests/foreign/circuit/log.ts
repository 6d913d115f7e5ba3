/** Loggers between arc and file. */
import type { ForeignArc, ForeignLog, Logger } from '../world.js';
import { Biquad, resample } from './filters.js';
import { Random } from './random.js';

/** Values in whole steps of a converter of so many bits over a full range. */
function steps(x: Float32Array, bits: number, low: number, high: number): void {
  const q = (high - low) / 2 ** bits;
  for (let i = 0; i < x.length; i++) {
    x[i] = low + q * Math.round((Math.max(low, Math.min(high - q, x[i] as number)) - low) / q);
  }
}

/** Adds mains pick-up: a tone with a little of its third harmonic. */
function mains(x: Float32Array, rate: number, hz: number, level: number, r: Random): void {
  const p = r.range(0, 6.28);
  const third = r.range(0, 0.4);
  for (let i = 0; i < x.length; i++) {
    const a = (2 * Math.PI * hz * i) / rate + p;
    x[i] = (x[i] as number) + level * (Math.sin(a) + third * Math.sin(3 * a));
  }
}

/** Puts rest before and after: no current, and the open voltage of the source where it is switched on early. */
function frame(
  arc: ForeignArc,
  rate: number,
  band: number,
  r: Random,
): { v: Float32Array; a: Float32Array; startS: number; endS: number } {
  const from = arc.trace.sampleRateHz;
  const soften = (x: Float32Array): Float32Array => {
    const y = x.slice();
    if (band < 0.45 * from) Biquad.lowPass(band, from, 0.6).run(y);
    return resample(y, from, rate);
  };
  const v0 = soften(arc.trace.voltageV);
  const a0 = soften(arc.trace.currentA);
  const before = Math.round(r.range(0.15, 0.9) * rate);
  const after = Math.round(r.range(0.15, 0.9) * rate);
  const n = before + v0.length + after;
  const v = new Float32Array(n);
  const a = new Float32Array(n);
  if (r.chance(0.6)) {
    // Open voltage while the wire runs in (own choice: 25 to 65 V for 20 to 150 ms).
    const open = Math.max(arc.setup.setVoltageV + 3, r.range(25, 65));
    const len = Math.min(before, Math.round(r.range(0.02, 0.15) * rate));
    for (let i = before - len; i < before; i++) v[i] = open;
  }
  v.set(v0, before);
  a.set(a0, before);
  return { v, a, startS: before / rate, endS: (before + v0.length) / rate };
}

/** Logs an arc; the same seed gives the same file. */
export function log(arc: ForeignArc, logger: Logger, seed: number): ForeignLog {
  const r = new Random(seed, `log ${logger} ${arc.seed}`);
  const hz = r.pick([50, 60]);
  if (logger === 'voltage-5k') {
    const rate = 5000;
    const { v, startS, endS } = frame(arc, rate, r.range(1200, 2200), r);
    mains(v, rate, hz, r.logRange(0.03, 0.5), r);
    for (let i = 0; i < v.length; i++) v[i] = (v[i] as number) + 0.02 * r.noise();
    const top = r.pick([50, 80, 100]);
    steps(v, 12, -0.1 * top, top);
    return { sampleRateHz: rate, voltageV: v, currentA: null, arcStartS: startS, arcEndS: endS };
  }
  if (logger === 'both-20k') {
    const rate = 20000;
    const { v, a, startS, endS } = frame(arc, rate, r.range(6000, 9000), r);
    const noiseV = r.logRange(0.01, 0.12);
    const noiseA = r.logRange(0.2, 2.5);
    const offsetA = r.range(-1.5, 1.5);
    for (let i = 0; i < v.length; i++) {
      v[i] = (v[i] as number) + noiseV * r.noise();
      a[i] = (a[i] as number) + offsetA + noiseA * r.noise();
    }
    steps(v, 16, -100, 100);
    steps(a, 16, -1000, 1000);
    return { sampleRateHz: rate, voltageV: v, currentA: a, arcStartS: startS, arcEndS: endS };
  }
  const rate = r.pick([5000, 8000, 10000, 20000]);
  const { v, a, startS, endS } = frame(arc, rate, Math.min(0.4 * rate, r.logRange(800, 5000)), r);
  const cable = r.range(0.003, 0.018); // common practice: 1 V at 100 A to 3 V at 500 A
  const ripple = r.logRange(0.05, 0.9);
  const scaleV = r.range(0.985, 1.015);
  const scaleA = r.range(0.96, 1.04);
  const noiseA = r.logRange(0.5, 5);
  const offsetV = r.range(-0.25, 0.25);
  mains(v, rate, hz * r.pick([1, 2, 6]), ripple, r);
  for (let i = 0; i < v.length; i++) {
    const amps = a[i] as number;
    v[i] = scaleV * ((v[i] as number) + cable * amps) + offsetV + 0.05 * r.noise();
    a[i] = scaleA * amps + noiseA * r.noise();
  }
  // Lost samples: the last value is held, or zeros are written, now and then for some milliseconds.
  const zeros = r.chance(0.3);
  const gaps = r.int(1, 12);
  for (let g = 0; g < gaps; g++) {
    const at = Math.floor(r.next() * v.length);
    const len = Math.round(r.logRange(1, 0.012 * rate));
    for (let i = Math.max(1, at); i < Math.min(v.length, at + len); i++) {
      v[i] = zeros ? 0 : (v[i - 1] as number);
      a[i] = zeros ? 0 : (a[i - 1] as number);
    }
  }
  steps(v, 12, -20, 100);
  steps(a, 12, -100, 900);
  return { sampleRateHz: rate, voltageV: v, currentA: a, arcStartS: startS, arcEndS: endS };
}
