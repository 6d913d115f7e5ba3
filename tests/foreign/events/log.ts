import type { ForeignArc, ForeignLog, Logger } from '../world.js';
import { filter, section } from './filters.js';
import { Rng } from './rng.js';

interface Channel {
  bandHz: number;
  stepSize: number;
  full: number;
  noise: number;
  gain: number;
  offset: number;
}

/** Low-passes, thins out to every `every`-th sample, adds noise, rounds to the converter's step. */
function digitise(
  rng: Rng,
  x: Float32Array,
  rateHz: number,
  every: number,
  c: Channel,
): Float32Array {
  const soft = filter(x.slice(), [section('lowpass', c.bandHz, 0.7, rateHz)]);
  const out = new Float32Array(Math.floor(x.length / every));
  for (let i = 0; i < out.length; i++) {
    const v = c.gain * (soft[i * every] as number) + c.offset + c.noise * rng.fuzz();
    const held = Math.max(-c.full, Math.min(c.full, v));
    out[i] = Math.round(held / c.stepSize) * c.stepSize;
  }
  return out;
}

/**
 * Puts idle time before and after: nothing, then for a moment the open-circuit voltage, and
 * nothing again.
 */
function withIdle(rng: Rng, arc: ForeignArc, beforeS: number, afterS: number) {
  const { sampleRateHz, voltageV, currentA } = arc.trace;
  const before = Math.round(beforeS * sampleRateHz);
  const n = before + voltageV.length + Math.round(afterS * sampleRateHz);
  const volts = new Float32Array(n);
  const amps = new Float32Array(n);
  volts.set(voltageV, before);
  amps.set(currentA, before);
  // open circuit stands 20-60 % above the set voltage (own choice for constant-voltage sources)
  const openV = arc.setup.setVoltageV * rng.range(1.2, 1.6);
  const pressed = before - Math.round(rng.range(0.05, Math.min(0.4, beforeS)) * sampleRateHz);
  volts.fill(openV, Math.max(0, pressed), before);
  return { volts, amps };
}

/** Logs the trace of an arc as one of three loggers would. */
export function log(arc: ForeignArc, logger: Logger, seed: number): ForeignLog {
  const rng = new Rng(seed ^ Math.imul(arc.seed + 3, 0x85ebca6b), logger.length * 17 + 3);
  const traceHz = arc.trace.sampleRateHz;
  const rough = logger === 'both-rough';
  const rateHz = logger === 'voltage-5k' ? 5000 : rough ? rng.pick([5000, 10000, 20000]) : 20000;
  const every = traceHz / rateHz;
  const beforeS = rng.range(0.2, 1);
  const afterS = rng.range(0.15, 0.7);
  const { volts, amps } = withIdle(rng, arc, beforeS, afterS);
  const n = volts.length;

  if (rough) {
    // measured at the source: leads of 8-25 mOhm and 2-15 µH (domain sheet 3.6 and common practice,
    // no source)
    const ohm = rng.range(0.004, 0.02);
    const henry = rng.range(2e-6, 1.2e-5);
    for (let i = n - 1; i > 0; i--) {
      const slope = ((amps[i] as number) - (amps[i - 1] as number)) * traceHz;
      volts[i] = (volts[i] as number) + ohm * (amps[i] as number) + 0.3 * henry * slope;
    }
  }
  // mains in the voltage: 50 or 60 Hz pick-up; rough cells carry rectifier ripple of 100-360 Hz as
  // well
  const mainsHz = rng.pick([50, 60]);
  const mainsV = logger === 'both-20k' ? rng.range(0, 0.05) : rng.range(0.05, 0.4);
  const rippleHz = mainsHz * rng.pick([2, 6]);
  const rippleV = rough ? rng.range(0.1, 0.8) : 0;
  const phase = rng.range(0, 6);
  for (let i = 0; i < n; i++) {
    const w = (2 * Math.PI * i) / traceHz;
    volts[i] =
      (volts[i] as number) +
      mainsV * Math.sin(w * mainsHz + phase) +
      rippleV * Math.sin(w * rippleHz + 2 * phase);
  }
  const bits = logger === 'voltage-5k' || (rough && rng.chance(0.5)) ? 12 : 16;
  const fullV = rng.pick([60, 100]);
  const fullA = rng.pick([800, 1000]);
  const bandHz = Math.min(0.4 * rateHz, rough ? rng.logRange(800, 4000) : 8000);
  const step = (full: number): number => (2 * full) / 2 ** bits;
  const drift = (size: number): number =>
    rough ? rng.range(-size, size) : rng.range(-0.002, 0.002);
  const voltageV = digitise(rng, volts, traceHz, every, {
    bandHz,
    stepSize: step(fullV),
    full: fullV,
    noise: rough ? rng.range(0.05, 0.3) : rng.range(0.005, 0.06),
    gain: 1 + drift(0.02),
    offset: drift(0.3),
  });
  const currentA =
    logger === 'voltage-5k'
      ? null
      : digitise(rng, amps, traceHz, every, {
          bandHz: rough ? bandHz * rng.range(0.6, 1.4) : 8000,
          stepSize: step(fullA),
          full: fullA,
          noise: rough ? rng.range(0.5, 4) : rng.range(0.2, 1.5),
          gain: 1 + drift(0.03),
          offset: drift(3),
        });
  if (rough) dropSamples(rng, voltageV, currentA);
  const arcStartS = Math.round(beforeS * traceHz) / traceHz;
  return {
    sampleRateHz: rateHz,
    voltageV,
    currentA,
    arcStartS,
    arcEndS: arcStartS + arc.durationS,
  };
}

/** Lost samples: single ones and runs, in which the last value is held. */
function dropSamples(rng: Rng, voltageV: Float32Array, currentA: Float32Array | null): void {
  const odds = rng.logRange(0.0001, 0.003);
  for (let i = 1; i < voltageV.length; i++) {
    if (!rng.chance(odds)) continue;
    const to = Math.min(voltageV.length, i + (rng.chance(0.2) ? rng.int(5, 40) : 1));
    voltageV.fill(voltageV[i - 1] as number, i, to);
    currentA?.fill(currentA[i - 1] as number, i, to);
    i = to;
  }
}
