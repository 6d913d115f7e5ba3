import type { EventKind } from '../world.js';
import { TRACE_HZ } from './current.js';
import { scale } from './filters.js';
import { drawHiss } from './hiss.js';
import type { Rng } from './rng.js';
import type { Schedule } from './schedule.js';
import type { Trace } from './trace.js';
import { drawVoice, place, renderVoice, SOUND_HZ } from './wavelet.js';

/** Dry sound of an arc in parts. */
export interface DrySound {
  events: Record<EventKind, Float32Array>;
  hiss: Float32Array;
}

/**
 * Power of a step (W) against which the hiss stands, own choice: with it the drops of a spray lie
 * some decibels
 * under the hiss, and a re-ignition of 6 kW well above it (order of domain sheet 5.1).
 */
const HISS_STEP_W = 190;
/**
 * Time in which a step of power is heard in full; slower edges are weaker in proportion (own
 * choice).
 */
const EDGE_S = 0.00015;

/** Draws the sound: each event sized by its step of electrical power, all kinds by the same law. */
export function drawSound(rng: Rng, schedule: Schedule, trace: Trace, durationS: number): DrySound {
  const n = Math.round(durationS * SOUND_HZ);
  const parent = drawVoice(rng);
  // louder steps are absorbed (domain sheet 5.1: proportional at low power only): exponent below 1
  const power = rng.range(0.5, 0.75);
  const uneven = rng.range(0.1, 0.5);
  const size = (watts: number, edgeS: number): number =>
    (Math.max(0, watts * Math.min(1, EDGE_S / edgeS)) / 1000) ** power;
  const { currentA, voltageV } = trace;
  const read = (x: Float32Array, t: number): number =>
    x[Math.max(0, Math.min(x.length - 1, Math.round(t * TRACE_HZ)))] as number;
  const watts = (t: number): number => read(currentA, t) * read(voltageV, t);

  const events = {} as Record<EventKind, Float32Array>;
  const layer = (kind: EventKind, stream: number) => {
    const own = rng.fork(stream);
    const voice = drawVoice(own, parent);
    const shapes = Array.from({ length: 14 }, () => renderVoice(own, voice));
    const out = new Float32Array(n);
    events[kind] = out;
    return (t: number, gain: number) => place(out, own.pick(shapes), t, gain * own.spread(uneven));
  };

  const contact = layer('short', 1);
  const reignition = layer('reignition', 2);
  for (const s of schedule.shorts) {
    // the arc goes out: pressure falls and little else; a third of the step counts (domain sheet
    // 5.1: the
    // main source is the re-ignition; the share is own choice)
    contact(s.startS, -size((watts(s.startS - 0.0002) - watts(s.startS + 0.0002)) / 3, EDGE_S));
    reignition(s.endS, size(watts(s.endS + 0.0002) - watts(s.endS - 0.00025), EDGE_S));
  }
  const drop = layer('drop', 3);
  for (const d of schedule.drops) {
    // step of voltage times current, and the neck that bursts: grows with the drop (weight own
    // choice)
    const step = read(voltageV, d.atS + 0.00005) - read(voltageV, d.atS - 0.0006);
    const stepW = Math.min(1, Math.max(0.15, Math.abs(step))) * read(currentA, d.atS);
    drop(d.atS, size(stepW * (0.5 + 0.9 * d.diameterMm ** 1.5), EDGE_S));
  }
  const pulse = layer('pulse', 4);
  for (const p of schedule.pulses) {
    const top = p.atS + p.riseS;
    const end = top + p.holdS;
    pulse(p.atS + 0.25 * p.riseS, size(watts(top) - watts(p.atS - 0.0001), p.riseS));
    pulse(end + 0.25 * p.fallS, -size(watts(end) - watts(end + p.fallS + 0.0001), p.fallS));
  }
  const hiss = drawHiss(rng.fork(5), trace, durationS, drawVoice(rng, parent));
  // 5 dB of spread between arcs, the same for all modes (own choice)
  scale(hiss, (HISS_STEP_W / 1000) ** power * 10 ** ((5 * rng.normal()) / 20));
  return { events, hiss };
}
