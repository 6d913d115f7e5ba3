import type { Random } from '../../../core/index.js';
import type { ArcSpec, ConstantVoltageSpec, ControlledDipSpec, PulsedSpec } from '../scenario.js';

/** Where a run is meant to work; what comes of it is up to the physics. */
export interface OperatingPoint {
  currentA: number;
  /** Arc column in mm (may be negative: buried or stubbing). */
  arcMm: number;
  extensionMm: number;
  diameterMm: number;
  alpha: number;
  beta: number;
  transitionA: number;
  arc: ArcSpec;
}

/** Voltage across extension and arc at a steady current. */
export function steadyV(point: OperatingPoint, currentA = point.currentA): number {
  const { arc } = point;
  return (
    arc.fallV +
    arc.ohm * currentA +
    arc.fieldVPerMm * point.arcMm +
    20 / (currentA + 10) +
    arc.wireOhmPerMm * point.extensionMm * currentA
  );
}

/** Feed in m/min that this mean (and rms) current melts off. */
export function feedFor(point: OperatingPoint, meanA: number, rmsA = meanA): number {
  return ((point.alpha * meanA + point.beta * point.extensionMm * rmsA ** 2) * 60) / 1000;
}

function ripple(random: Random): { rippleDepth: number; rippleHz: number } {
  const mains = random.pick([50, 60]);
  const kind = random.next();
  if (kind < 0.4) return { rippleDepth: 0, rippleHz: mains };
  if (kind < 0.8) return { rippleDepth: random.logUniform(0.002, 0.04), rippleHz: 6 * mains };
  if (kind < 0.92) return { rippleDepth: random.logUniform(0.002, 0.03), rippleHz: 2 * mains };
  return { rippleDepth: random.logUniform(0.002, 0.02), rippleHz: 3 * mains };
}

/**
 * Slope, choke and ripple of a constant-voltage source set for the point: 1 to 3.5 V per 100 A, some hundred
 * microhenry, open circuit up to 85 V (common practice, no source).
 */
export function drawConstantVoltage(random: Random, point: OperatingPoint): ConstantVoltageSpec {
  const slopeOhm = random.uniform(0.008, 0.035);
  const setV = steadyV(point) + slopeOhm * point.currentA;
  return {
    kind: 'constant-voltage',
    setV,
    slopeOhm,
    inductanceH: random.logUniform(8e-5, 5e-4),
    maxA: random.uniform(350, 650),
    riseLimitAPerS: random.next() < 0.3 ? random.logUniform(4e4, 2e5) : Number.POSITIVE_INFINITY,
    openV: random.next() < 0.5 ? setV + random.uniform(0, 15) : random.uniform(50, 85),
    ...ripple(random),
  };
}

/** Three-level current control of each short; returns the feed that keeps contact coming. Levels and times are own choice. */
export function drawControlledDip(
  random: Random,
  point: OperatingPoint,
): { source: ControlledDipSpec; feedMPerMin: number } {
  const mean = point.currentA;
  const baseA = mean * random.uniform(0.35, 0.95);
  const boostA = mean * random.uniform(1.4, 2.6);
  const boostS = random.logUniform(4e-4, 2.5e-3);
  const tailS = random.logUniform(2e-4, 2e-3);
  const cycleS = 1 / random.logUniform(35, 190);
  const arcS = Math.max(cycleS - 0.0025, boostS + 0.001);
  const arcMean = baseA + ((boostA - baseA) * Math.min(arcS, boostS + tailS)) / arcS;
  const source: ControlledDipSpec = {
    kind: 'controlled-dip',
    baseA,
    lowA: random.uniform(3, 0.5 * baseA + 4),
    pinchA: mean * random.uniform(0.5, 1.8),
    boostA,
    lowS: random.logUniform(1e-4, 1.2e-3),
    boostS,
    tailS,
    slewAPerS: random.logUniform(1.5e5, 2e6),
    retractMPerMin: random.next() < 0.35 ? random.uniform(2, 30) : 0,
    neckSeenShare: random.pick([1, 1, 0.9, 0.6]),
    openV: random.uniform(50, 85),
    ...ripple(random),
  };
  return { source, feedMPerMin: feedFor(point, arcMean) * random.uniform(1.02, 1.25) };
}

/**
 * Pulses meant to let go one drop each; null when this draw has no sound base current. That a pulse needs some
 * 500 A²s for a drop of 1.2 mm wire is from memory of the one-drop-a-pulse rule; rates, slews and scatter are
 * common practice, no source.
 */
export function drawPulsed(
  random: Random,
  point: OperatingPoint,
): { source: PulsedSpec; feedMPerMin: number; baseA: number } | null {
  const d = point.diameterMm;
  const frequencyHz = random.logUniform(30, 400);
  const peakA = point.transitionA * random.uniform(1.25, 2.2);
  const action = 500 * (d / 1.2) ** 2.5 * random.logUniform(0.6, 1.7);
  const peakS = Math.min(0.005, Math.max(8e-4, action / peakA ** 2));
  const duty = peakS * frequencyHz;
  if (duty > 0.62) return null;
  const dropMm = d * random.uniform(0.7, 1.12);
  const perPulse = (Math.PI / 6) * dropMm ** 3 * 0.89;
  const feedMmPerS = (frequencyHz * perPulse) / (Math.PI * (d / 2) ** 2);
  const missing = feedMmPerS - duty * meltAt(point, peakA);
  const baseA = currentFor(point, missing / (1 - duty));
  if (!(baseA > 12) || baseA > 0.7 * point.transitionA) return null;
  const meanA = duty * peakA + (1 - duty) * baseA;
  return {
    source: {
      kind: 'pulsed',
      frequencyHz,
      peakA,
      peakS,
      baseA,
      riseAPerS: random.logUniform(1.5e5, 2e6),
      fallAPerS: random.logUniform(1e5, 1.5e6),
      targetV: steadyV(point, meanA),
      controlPerV: random.uniform(0.04, 0.3),
      jitter: random.pick([0, 0.002, 0.01, 0.03]),
      openV: random.uniform(50, 85),
      ...ripple(random),
    },
    feedMPerMin: (feedMmPerS * 60) / 1000,
    baseA,
  };
}

function meltAt(point: OperatingPoint, currentA: number): number {
  return point.alpha * currentA + point.beta * point.extensionMm * currentA ** 2;
}

/** Steady current that melts `mmPerS`; NaN when that is not above zero. */
function currentFor(point: OperatingPoint, mmPerS: number): number {
  const quadratic = point.beta * point.extensionMm;
  if (!(mmPerS > 0)) return Number.NaN;
  return (Math.sqrt(point.alpha ** 2 + 4 * quadratic * mmPerS) - point.alpha) / (2 * quadratic);
}
