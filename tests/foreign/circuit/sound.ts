/**
 * Dry sound of a run: pressure from the rate of change of the power in the gap (Drouet and Nadeau 1979),
 * the hiss of the plasma jet shaken by what hangs in and crosses the gap, and stray clicks.
 * Nothing here knows the mode: every free value is drawn from one distribution.
 */
import type { EventKind } from '../world.js';
import { Biquad } from './filters.js';
import { Random } from './random.js';
import { RATE_HZ, type Run } from './simulate.js';

/** (gamma - 1) / (4 pi c2 r) at 0.5 m in free air, Pa s/W (classical thermo-acoustics, computed). */
const PA_S_PER_W = 5.4e-7;

const KINDS: readonly EventKind[] = ['short', 'reignition', 'drop', 'pulse'];

/** The parts of the dry sound in Pa at 0.5 m; their sum is the whole sound. */
export interface DrySound {
  events: Record<EventKind, Float32Array>;
  hiss: Float32Array;
}

/** Marks which part owns each sample: 0 none, 1 short, 2 re-ignition, 3 drop, 4 pulse edge. */
function owners(run: Run, edgesS: readonly number[], breakS: number): Uint8Array {
  const n = run.gapW.length;
  const own = new Uint8Array(n);
  const mark = (fromS: number, toS: number, who: number): void => {
    const to = Math.min(n, Math.round(toS * RATE_HZ));
    for (let i = Math.max(0, Math.round(fromS * RATE_HZ)); i < to; i++) own[i] = who;
  };
  for (const d of run.drops) mark(d.timeS - 0.0005, d.timeS + 0.001, 3);
  for (const p of run.pulsesS) for (const e of edgesS) mark(p + e - 0.0001, p + e + 0.0007, 4);
  for (const s of run.shorts) mark(s.startS - 0.00005, s.endS, 1);
  for (const s of run.shorts) {
    if (s.endS < run.durationS) mark(s.endS - 0.00005, s.endS + breakS, 2);
  }
  return own;
}

/** Makes the sound. `edgesS`: starts of the pulse's edges after its start; `breakS`: how long a break rings on. */
export function makeSound(
  run: Run,
  seed: number,
  edgesS: readonly number[],
  breakS: number,
): DrySound {
  const r = new Random(seed, 'sound');
  const n = run.gapW.length;
  const part = (): Float32Array => new Float32Array(n);
  const events: Record<EventKind, Float32Array> = {
    short: part(),
    reignition: part(),
    drop: part(),
    pulse: part(),
  };
  const hiss = part();
  const own = owners(run, edgesS, breakS);
  const homes: Float32Array[] = [hiss, ...KINDS.map((k) => events[k])];

  // Power to pressure: the hot column answers within tens of microseconds (published: 25 us and more).
  const keep = Math.exp(-1 / (RATE_HZ * r.logRange(1.5e-5, 7e-5)));
  const gain = PA_S_PER_W * RATE_HZ * r.range(0.25, 0.8); // part of the sound is absorbed (published for strong arcs)
  let p1 = run.gapW[0] as number;
  let p2 = p1;
  for (let i = 0; i < n; i++) {
    p1 += (1 - keep) * ((run.gapW[i] as number) - p1);
    const before = p2;
    p2 += (1 - keep) * (p1 - p2);
    const home = homes[own[i] as number] as Float32Array;
    home[i] = (p2 - before) * gain;
  }

  // Drops in flight: each crosses the gap within some milliseconds (own choice: 0.7 to 2.5 m/s).
  const flight = part();
  const speed = r.range(0.7, 2.5);
  for (const d of run.drops) {
    const from = Math.round(d.timeS * RATE_HZ);
    const len = Math.max(20, Math.round((d.gapM / (speed * r.range(0.85, 1.15))) * RATE_HZ));
    for (let k = 0; k < len && from + k < n; k++) {
      flight[from + k] = (flight[from + k] as number) + Math.sin((Math.PI * k) / len);
    }
  }

  // Hiss: coloured noise with the power of the arc (own choice), about 0.4 to 5 Pa at 5 kW.
  const low = Biquad.lowPass(r.logRange(3000, 14000), RATE_HZ, r.range(0.5, 0.8));
  const high = Biquad.highPass(r.logRange(150, 1500), RATE_HZ, 0.6);
  const bump = Biquad.peak(r.logRange(1200, 9000), RATE_HZ, r.range(0.6, 2.5), r.range(-6, 9));
  const level = r.logNormal(1.5, 0.65) / 5000;
  const flowLevel = r.logNormal(0.03, 0.6); // shielding gas and feeder, always there
  const byStretch = r.range(0, 0.45);
  const byFlight = r.range(0, 0.5);
  const byPool = r.range(0, 0.6);
  const slow = 1 - Math.exp(-1 / (RATE_HZ * r.logRange(1.5e-4, 1e-3)));
  const gust = 1 - Math.exp(-1 / (RATE_HZ * r.logRange(0.01, 0.2)));
  const gustDepth = (r.range(0, 0.25) * Math.sqrt(2 / gust)) / Math.SQRT2;
  let p = 0;
  let g = 0;
  for (let i = 0; i < n; i++) {
    p += slow * ((run.gapW[i] as number) - p);
    g += gust * (r.noise() * gustDepth - g);
    const shake =
      1 +
      byStretch * ((run.stretch[i] as number) - 0.4) +
      byFlight * Math.min(2, flight[i] as number) +
      byPool * Math.max(-1, Math.min(1, (run.poolMm[i] as number) * 2)) +
      Math.max(-0.6, Math.min(0.9, g));
    const amp = level * p * Math.max(0.1, shake) + flowLevel;
    const x = bump.next(high.next(low.next(r.noise())));
    hiss[i] = (hiss[i] as number) + 1.6 * amp * x;
  }

  // Stray clicks of spatter on plate and nozzle, at any mode the same.
  const clicks = r.logRange(0.2, 12);
  let at = 0;
  for (;;) {
    at += -Math.log(1 - r.next()) / clicks;
    const from = Math.round(at * RATE_HZ);
    if (from >= n) break;
    const hz = r.logRange(1500, 11000);
    const amp = r.logNormal(0.5, 0.9);
    const tau = r.logRange(2e-4, 3e-3) * RATE_HZ;
    const len = Math.min(n - from, Math.round(5 * tau));
    for (let k = 0; k < len; k++) {
      const s = amp * Math.exp(-k / tau) * Math.sin((2 * Math.PI * hz * k) / RATE_HZ);
      hiss[from + k] = (hiss[from + k] as number) + s;
    }
  }
  return { events, hiss };
}
