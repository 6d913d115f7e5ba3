import type { Random } from '../../../core/index.js';
import type { HandSpec, PoolSpec } from '../scenario.js';

/** Cheap noise of unit variance from two uniform draws (triangular); filters make it normal enough. */
export function roughNormal(random: Random): number {
  return 2.449489742783178 * (random.next() + random.next() - 1);
}

/** A surface (or a hand) that moves: advanced in small steps, pushed by what falls on it. */
export interface Motion {
  /** Height in mm after `dt` seconds. */
  step(dt: number): number;
  /** A push that would carry it down by about `mm`. */
  push(mm: number): void;
}

/** Pool surface under the wire, mm, positive towards the wire. */
export function createPool(spec: PoolSpec, random: Random): Motion {
  if (spec.law === 'forced') return forcedPool(spec, random);
  if (spec.law === 'drift') return driftingPool(spec, random);
  const first = oscillator(spec.hz, spec.damping, spec.noiseMm, random);
  if (spec.law === 'resonant') return first;
  const second = oscillator(spec.hz * 1.63, spec.damping * 1.4, spec.noiseMm * 0.6, random);
  return {
    step: (dt) => first.step(dt) + second.step(dt),
    push(mm) {
      first.push(0.7 * mm);
      second.push(0.5 * mm);
    },
  };
}

/** Damped resonance driven by white noise, so that its rms is `noiseMm`. */
function oscillator(hz: number, damping: number, noiseMm: number, random: Random): Motion {
  const omega = 2 * Math.PI * hz;
  const drive = noiseMm * Math.sqrt(4 * damping * omega ** 3);
  const at = { y: 0, v: 0 };
  return {
    step(dt) {
      at.v += (-2 * damping * omega * at.v - omega * omega * at.y) * dt;
      at.v += drive * Math.sqrt(dt) * roughNormal(random);
      at.y += at.v * dt;
      return at.y;
    },
    push(mm) {
      at.v -= mm * omega;
    },
  };
}

/** Sloshing that keeps its own clock with a wandering phase; pushes leave a dent that fills up again. */
function forcedPool(spec: PoolSpec, random: Random): Motion {
  const at = { phase: 2 * Math.PI * random.next(), dent: 0 };
  const phaseNoise = Math.sqrt(2 * Math.PI * spec.hz * spec.damping);
  return {
    step(dt) {
      at.phase += 2 * Math.PI * spec.hz * dt + phaseNoise * Math.sqrt(dt) * roughNormal(random);
      at.dent -= at.dent * 2 * Math.PI * spec.hz * 0.5 * dt;
      return Math.SQRT2 * spec.noiseMm * Math.sin(at.phase) - at.dent;
    },
    push(mm) {
      at.dent += mm;
    },
  };
}

/** No resonance at all: low-passed noise, and a dent after each push. */
function driftingPool(spec: PoolSpec, random: Random): Motion {
  const rate = 2 * Math.PI * spec.hz * 0.4;
  const at = { y: 0, dent: 0 };
  return {
    step(dt) {
      at.y += -rate * at.y * dt + spec.noiseMm * Math.sqrt(2 * rate * dt) * roughNormal(random);
      at.dent -= at.dent * rate * dt;
      return at.y - at.dent;
    },
    push(mm) {
      at.dent += mm;
    },
  };
}

/** Change of the contact distance in mm: slow wander and weave. */
export function createHand(spec: HandSpec, random: Random): Motion {
  const wander = oscillator(Math.max(0.05, spec.wanderHz), 0.7, spec.wanderMm, random);
  const at = { phase: 2 * Math.PI * random.next() };
  return {
    step(dt) {
      at.phase += 2 * Math.PI * spec.weaveHz * dt;
      return wander.step(dt) + spec.weaveMm * Math.sin(at.phase);
    },
    push() {},
  };
}
