import type { Rng } from './rng.js';

/** Samples a second of the dry sound. */
export const SOUND_HZ = 48000;

/** What one event sounds like: a puff of gas, a ring and a burst of turbulent noise, in shares. */
export interface Voice {
  puffS: number;
  ringHz: number;
  ringS: number;
  burstS: number;
  burstHz: number;
  shares: readonly [number, number, number];
}

/**
 * Draws a voice. All kinds of events of an arc are drawn from one parent voice by small changes,
 * and the parent
 * comes from one family for all modes: the shape of a single event names no mode. Puffs of 60-400
 * µs
 * (domain sheet 5.1: back to zero after about 25 µs at the source, lengthened by the gas around it;
 * own choice).
 */
export function drawVoice(rng: Rng, parent?: Voice): Voice {
  if (parent) {
    const near = () => rng.logRange(0.75, 1.33);
    const [a, b, c] = parent.shares;
    return {
      puffS: parent.puffS * near(),
      ringHz: parent.ringHz * near(),
      ringS: parent.ringS * near(),
      burstS: parent.burstS * near(),
      burstHz: parent.burstHz * near(),
      shares: [a * near(), b * near(), c * near()],
    };
  }
  return {
    puffS: rng.logRange(0.00006, 0.0004),
    ringHz: rng.logRange(500, 5000),
    ringS: rng.logRange(0.0002, 0.0016),
    burstS: rng.logRange(0.0007, 0.006),
    burstHz: rng.logRange(700, 7000),
    shares: [rng.range(0.1, 1), rng.range(0, 0.8), rng.range(0.3, 1.2)],
  };
}

/** Renders one event of a voice; unit energy over 1 ms, so amplitudes compare between voices. */
export function renderVoice(rng: Rng, voice: Voice): Float32Array {
  const lastS = Math.max(8 * voice.puffS, 5 * voice.ringS, 6 * voice.burstS);
  const n = Math.min(Math.ceil(0.018 * SOUND_HZ), Math.ceil(lastS * SOUND_HZ) + 4);
  const parts = [new Float32Array(n), new Float32Array(n), new Float32Array(n)] as const;
  const [puff, ring, burst] = parts;
  const hz = voice.ringHz * rng.range(0.94, 1.06);
  const phase = rng.range(-0.6, 0.6);
  const soft = 1 - Math.exp((-2 * Math.PI * voice.burstHz) / SOUND_HZ);
  let low = 0;
  let lower = 0;
  for (let i = 0; i < n; i++) {
    const t = i / SOUND_HZ;
    // rate of change of a power step that rises and settles within puffS
    const u = t / voice.puffS;
    puff[i] = u * (2 - u) * Math.exp(-u);
    const attack = 1 - Math.exp(-t / 0.00004);
    ring[i] = attack * Math.exp(-t / voice.ringS) * Math.sin(2 * Math.PI * hz * t + phase);
    const w = t / voice.burstS;
    low += soft * (rng.fuzz() - low);
    lower += 0.06 * (low - lower);
    burst[i] = (low - lower) * Math.sqrt(w) * Math.exp(-w);
  }
  const out = new Float32Array(n);
  parts.forEach((part, k) => {
    let e = 0;
    for (const v of part) e += v * v;
    const gain = (voice.shares[k] ?? 0) / Math.sqrt(e + 1e-20);
    for (let i = 0; i < n; i++) out[i] = (out[i] as number) + gain * (part[i] as number);
  });
  let energy = 0;
  for (const v of out) energy += v * v;
  const gain = Math.sqrt((0.001 * SOUND_HZ) / energy);
  for (let i = 0; i < n; i++) out[i] = (out[i] as number) * gain;
  return out;
}

/** Adds an event at a time that may lie between two samples. */
export function place(out: Float32Array, shape: Float32Array, atS: number, size: number): void {
  const at = atS * SOUND_HZ;
  const whole = Math.floor(at);
  const f = at - whole;
  const to = Math.min(shape.length, out.length - whole - 1);
  for (let k = Math.max(0, -whole); k < to; k++) {
    const v = size * (shape[k] as number);
    const i = whole + k;
    out[i] = (out[i] as number) + (1 - f) * v;
    out[i + 1] = (out[i + 1] as number) + f * v;
  }
}
