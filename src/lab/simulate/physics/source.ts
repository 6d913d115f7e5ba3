import type { Random } from '../../../core/index.js';
import type {
  ConstantVoltageSpec,
  ControlledDipSpec,
  PulsedSpec,
  SourceSpec,
} from '../scenario.js';

/** What the source can see of the process. */
export interface SourceView {
  timeS: number;
  currentA: number;
  /** Voltage at its terminals, V. */
  loadV: number;
  shorted: boolean;
  /** How far the neck has gone, 0 to 1. */
  neck: number;
}

/** A power source: the current after `dt` seconds at the load it sees. */
export interface PowerSource {
  step(view: SourceView, dt: number): number;
  /** New set voltage, and level of the closing ramp (1 is full). */
  set(setV: number | undefined, level: number): void;
  /** Pull-back of the wire, mm/s, at this moment. */
  retractMmPerS(): number;
  /** True once at the start of each pulse; always false where there are none. */
  pulseStarted(): boolean;
  /** Driving voltage behind slope and choke, for the energy balance; NaN where current is imposed. */
  driveV(): number;
}

/** The model of a source for a specification. */
export function createSource(spec: SourceSpec, random: Random): PowerSource {
  if (spec.kind === 'constant-voltage') return constantVoltage(spec);
  if (spec.kind === 'controlled-dip') return controlledDip(spec, random);
  return pulsed(spec, random);
}

/** Six-pulse-like ripple: a line with a weaker second harmonic. */
function ripple(spec: SourceSpec, timeS: number): number {
  if (spec.rippleDepth === 0) return 1;
  const phase = 2 * Math.PI * spec.rippleHz * timeS;
  // cos 2x = 2·cos² x − 1.
  const line = Math.cos(phase);
  return 1 + spec.rippleDepth * (line + 0.25 * (2 * line * line - 1));
}

/** `L·dI/dt = drive − slope·I − load`. */
function constantVoltage(spec: ConstantVoltageSpec): PowerSource {
  let setV = spec.setV;
  let level = 1;
  let drive = setV;
  return {
    step(view, dt) {
      drive = setV * level * ripple(spec, view.timeS);
      let slope = (drive - spec.slopeOhm * view.currentA - view.loadV) / spec.inductanceH;
      if (slope > spec.riseLimitAPerS) slope = spec.riseLimitAPerS;
      const next = view.currentA + slope * dt;
      return next < 0 ? 0 : Math.min(next, spec.maxA);
    },
    set(newSetV, newLevel) {
      if (newSetV !== undefined) setV = newSetV;
      level = newLevel;
    },
    retractMmPerS: () => 0,
    pulseStarted: () => false,
    driveV: () => drive,
  };
}

/** Moves towards a wanted current no faster than the slew allows. */
function slewed(currentA: number, wantedA: number, up: number, down: number, dt: number): number {
  const change = wantedA - currentA;
  if (change > up * dt) return currentA + up * dt;
  if (change < -down * dt) return currentA - down * dt;
  return wantedA;
}

/** Low current on contact, a pinch ramp, low again when the neck is seen, then boost, tail and base. */
function controlledDip(spec: ControlledDipSpec, random: Random): PowerSource {
  let level = 1;
  let wasShorted = false;
  let sinceS = 1;
  let neckSeen = false;
  return {
    step(view, dt) {
      if (view.shorted !== wasShorted) {
        wasShorted = view.shorted;
        sinceS = 0;
        neckSeen = random.next() < spec.neckSeenShare;
      }
      sinceS += dt;
      let wanted: number;
      if (view.shorted) {
        const ramped = spec.pinchA + spec.pinchRampAPerS * (sinceS - spec.lowS);
        const pinch = sinceS < spec.lowS ? spec.lowA : ramped;
        wanted = view.neck > 0.8 && neckSeen ? spec.lowA : Math.min(pinch, 6 * spec.pinchA, 550);
      } else if (sinceS < spec.boostS) wanted = spec.boostA;
      else {
        const tail = Math.exp(-(sinceS - spec.boostS) / spec.tailS);
        wanted = spec.baseA + (spec.boostA - spec.baseA) * tail;
      }
      wanted *= level * ripple(spec, view.timeS);
      return slewed(view.currentA, wanted, spec.slewAPerS, spec.slewAPerS, dt);
    },
    set(_setV, newLevel) {
      level = newLevel;
    },
    retractMmPerS: () => (wasShorted ? (spec.retractMPerMin * 1000) / 60 : 0),
    pulseStarted: () => false,
    driveV: () => Number.NaN,
  };
}

/** Pulses on a base current, sharp, rounded or with a step behind the peak; the base time follows the arc length; shorts add current. */
function pulsed(spec: PulsedSpec, random: Random): PowerSource {
  let level = 1;
  let phaseS = random.next() / spec.frequencyHz;
  let periodS = 1 / spec.frequencyHz;
  let started = false;
  let meanV = spec.targetV;
  let targetV = spec.targetV;
  let shortS = 0;
  const nextPeriod = (): number => {
    const trim = Math.max(0.6, Math.min(1.8, 1 + spec.controlPerV * (meanV - targetV)));
    return (trim * (1 + spec.jitter * (random.next() - 0.5) * 3.46)) / spec.frequencyHz;
  };
  return {
    step(view, dt) {
      phaseS += dt;
      started = phaseS >= periodS;
      if (started) {
        phaseS -= periodS;
        periodS = nextPeriod();
      }
      meanV += ((view.loadV - meanV) * dt) / 0.03;
      shortS = view.shorted ? shortS + dt : 0;
      let wanted = spec.baseA;
      if (phaseS < spec.peakS) wanted = spec.peakA;
      else if (phaseS < spec.peakS + spec.stepS) wanted = spec.stepA;
      if (shortS > 0.0003) wanted = Math.max(wanted, spec.baseA + 1.2e5 * (shortS - 0.0003));
      wanted = Math.min(wanted, 600) * level * ripple(spec, view.timeS);
      if (spec.roundS > dt) wanted = view.currentA + ((wanted - view.currentA) * dt) / spec.roundS;
      return slewed(view.currentA, wanted, spec.riseAPerS, spec.fallAPerS, dt);
    },
    set(newSetV, newLevel) {
      if (newSetV !== undefined) targetV = newSetV;
      level = newLevel;
    },
    retractMmPerS: () => 0,
    pulseStarted: () => started,
    driveV: () => Number.NaN,
  };
}
