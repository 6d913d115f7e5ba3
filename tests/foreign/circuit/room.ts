/** Room and microphone: both linear, the same for every part of a sound. */
import { Biquad } from './filters.js';
import type { Random } from './random.js';

type Four = [number, number, number, number];

/** Early echoes and a late tail from four delay lines that feed each other. */
export class Room {
  private readonly taps: { delayS: number; gain: number }[] = [];
  private readonly linesS: number[];
  private readonly decayS: number;
  private readonly tail: number;
  private readonly dampHz: number;

  constructor(r: Random) {
    const size = r.logRange(0.003, 0.03); // time to the nearest walls, s (own choice: cabin to hall)
    for (let k = 0; k < r.int(2, 7); k++) {
      this.taps.push({ delayS: size * r.range(0.3, 2.5), gain: r.range(-0.45, 0.45) });
    }
    this.linesS = [1, 1.27, 1.61, 1.93].map((f) => size * f * r.range(0.9, 1.1));
    this.decayS = r.logRange(0.12, 1.6); // from memory: 0.2 s in a cabin to 1-3 s in halls
    this.tail = r.logRange(0.02, 0.35);
    this.dampHz = r.logRange(1500, 9000);
  }

  /** Adds the room to a sound; the sound begins where it began, late tails are cut at the end. */
  run(x: Float32Array, rateHz: number): Float32Array {
    const n = x.length;
    const out = x.slice();
    for (const t of this.taps) {
      const d = Math.max(1, Math.round(t.delayS * rateHz));
      for (let i = d; i < n; i++) out[i] = (out[i] as number) + t.gain * (x[i - d] as number);
    }
    const [s0, s1, s2, s3] = this.linesS.map((s) => Math.max(8, Math.round(s * rateHz))) as Four;
    const [g0, g1, g2, g3] = [s0, s1, s2, s3].map(
      (s) => 0.5 * 10 ** ((-3 * s) / (rateHz * this.decayS)),
    ) as Four;
    const l0 = new Float32Array(s0);
    const l1 = new Float32Array(s1);
    const l2 = new Float32Array(s2);
    const l3 = new Float32Array(s3);
    const damp = Math.exp((-2 * Math.PI * this.dampHz) / rateHz);
    const { tail } = this;
    let [p0, p1, p2, p3] = [0, 0, 0, 0];
    let [w0, w1, w2, w3] = [0, 0, 0, 0];
    for (let i = 0; i < n; i++) {
      const a = l0[p0] as number;
      const b = l1[p1] as number;
      const c = l2[p2] as number;
      const d = l3[p3] as number;
      out[i] = (out[i] as number) + tail * (a - b + c - d);
      const v = (x[i] as number) + 1e-18;
      // Each line gets half the sum and difference of all (an orthogonal mix keeps the tail stable).
      const m0 = g0 * (a + b + c + d);
      const m1 = g1 * (a - b + c - d);
      const m2 = g2 * (a + b - c - d);
      const m3 = g3 * (a - b - c + d);
      w0 = m0 + damp * (w0 - m0);
      w1 = m1 + damp * (w1 - m1);
      w2 = m2 + damp * (w2 - m2);
      w3 = m3 + damp * (w3 - m3);
      l0[p0] = v + w0;
      l1[p1] = v + w1;
      l2[p2] = v + w2;
      l3[p3] = v + w3;
      if (++p0 === s0) p0 = 0;
      if (++p1 === s1) p1 = 0;
      if (++p2 === s2) p2 = 0;
      if (++p3 === s3) p3 = 0;
    }
    return out;
  }
}

/** What a microphone does: tilt, resonances, low and high cut. */
export class Microphone {
  private readonly lowHz: number;
  private readonly lowQ: number;
  private readonly tiltHz: number;
  private readonly tiltDb: number;
  private readonly bumps: { hz: number; q: number; db: number }[] = [];
  private readonly highHz: number;

  constructor(r: Random) {
    this.lowHz = r.logRange(15, 350);
    this.lowQ = r.range(0.5, 1.1);
    this.tiltHz = r.logRange(900, 5000);
    this.tiltDb = r.range(-11, 11);
    const many = r.int(1, 4);
    for (let k = 0; k < many; k++) {
      this.bumps.push({ hz: r.logRange(250, 12000), q: r.logRange(0.8, 7), db: r.range(-9, 12) });
    }
    this.highHz = r.chance(0.4) ? r.logRange(6000, 18000) : 0;
  }

  run(x: Float32Array, rateHz: number): Float32Array {
    Biquad.highPass(this.lowHz, rateHz, this.lowQ).run(x);
    Biquad.highShelf(this.tiltHz, rateHz, this.tiltDb).run(x);
    for (const b of this.bumps) {
      if (b.hz < 0.45 * rateHz) Biquad.peak(b.hz, rateHz, b.q, b.db).run(x);
    }
    if (this.highHz > 0 && this.highHz < 0.45 * rateHz) Biquad.lowPass(this.highHz, rateHz).run(x);
    return x;
  }
}
