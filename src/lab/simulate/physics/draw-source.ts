import type { Random } from '../../../core/index.js';
import type { ConstantVoltageSpec, ControlledDipSpec, PulsedSpec } from '../scenario.js';

/** Where a run is meant to work; what comes of it is up to the physics. */
export interface OperatingPoint {
  currentA: number;
  /** Mean voltage at the source's terminals. */
  meanV: number;
  /** Arc column in mm (may be negative: buried or stubbing). */
  arcMm: number;
  extensionMm: number;
  diameterMm: number;
  alpha: number;
  beta: number;
  transitionA: number;
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
  const setV = point.meanV + slopeOhm * point.currentA;
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

type Levels = Pick<
  ControlledDipSpec,
  'baseA' | 'lowA' | 'pinchA' | 'pinchRampAPerS' | 'boostA' | 'lowS' | 'boostS' | 'tailS'
>;

/** Low on contact, a ramp that pinches the bridge off, a boost after it, and a tail down to the base. Own choice. */
function rampLevels(random: Random, meanA: number): Levels {
  const baseA = meanA * random.uniform(0.35, 0.95);
  return {
    baseA,
    lowA: random.uniform(3, 0.5 * baseA + 4),
    pinchA: meanA * random.uniform(0.5, 1.8),
    pinchRampAPerS: 1.2e5,
    boostA: meanA * random.uniform(1.4, 2.6),
    lowS: random.logUniform(1e-4, 1.2e-3),
    boostS: random.logUniform(4e-4, 2.5e-3),
    tailS: random.logUniform(2e-4, 2e-3),
  };
}

/**
 * Two or three flat levels, as in the current log of a robot weld with ER70S-6 (H. He et al., 2023): about 5, 43
 * and 95 A about a mean of 44 A, 122 to 130 times a second. Widths about these shares are own choice.
 */
function flatLevels(random: Random, meanA: number): Levels {
  const lowA = Math.max(4, meanA * random.uniform(0.06, 0.35));
  const middleA = meanA * random.uniform(0.75, 1.15);
  const three = random.next() < 0.6;
  const waitsLow = random.next() < 0.6;
  const shortA = three && waitsLow ? middleA : lowA;
  return {
    baseA: waitsLow || !three ? lowA : middleA,
    lowA: shortA,
    pinchA: shortA,
    pinchRampAPerS: random.next() < 0.6 ? 0 : random.logUniform(5e3, 5e4),
    boostA: meanA * random.uniform(1.6, 2.6),
    lowS: random.logUniform(1e-4, 1.2e-3),
    boostS: random.logUniform(1e-3, 5e-3),
    tailS: random.logUniform(5e-5, 5e-4),
  };
}

/** Current control of each short by levels; returns the feed that keeps contact coming. */
export function drawControlledDip(
  random: Random,
  point: OperatingPoint,
): { source: ControlledDipSpec; feedMPerMin: number } {
  const levels = (random.next() < 0.5 ? flatLevels : rampLevels)(random, point.currentA);
  const { baseA, boostA, boostS, tailS } = levels;
  const cycleS = 1 / random.logUniform(35, 190);
  const arcS = Math.max(cycleS - 0.0025, boostS + 0.001);
  const share = Math.min(arcS, boostS + tailS) / arcS;
  const arcMean = baseA + (boostA - baseA) * share;
  const rmsA = Math.sqrt(baseA ** 2 + (boostA ** 2 - baseA ** 2) * share);
  const source: ControlledDipSpec = {
    kind: 'controlled-dip',
    ...levels,
    slewAPerS: random.logUniform(1.5e5, 2e6),
    retractMPerMin: random.next() < 0.35 ? random.uniform(2, 30) : 0,
    neckSeenShare: random.pick([1, 1, 0.9, 0.6]),
    openV: random.uniform(50, 85),
    ...ripple(random),
  };
  return { source, feedMPerMin: feedFor(point, arcMean, rmsA) * random.uniform(1.02, 1.25) };
}

/**
 * Pulses that let go one drop each; null when this draw has no sound base current. The mean current melts so much
 * wire that drops of about its diameter come as often as pulses. That a pulse needs some 500 A²s for a drop of
 * 1.2 mm wire is from memory of the one-drop-a-pulse rule; slews and scatter are common practice, no source.
 */
export function drawPulsed(
  random: Random,
  point: OperatingPoint,
): { source: PulsedSpec; feedMPerMin: number } | null {
  const d = point.diameterMm;
  const meanA = point.currentA;
  const peakA = point.transitionA * random.uniform(1.25, 2.2);
  const action = 500 * (d / 1.2) ** 2.5 * random.logUniform(0.6, 1.7);
  const peakS = Math.min(0.005, Math.max(8e-4, action / peakA ** 2));
  const stepped = random.next() < 0.25;
  const stepS = stepped ? peakS * random.uniform(0.3, 0.9) : 0;
  const stepShare = stepped ? random.uniform(0.35, 0.7) : 0;
  const dropMm = d * (d < 0.889 ? random.uniform(1, 1.25) : random.uniform(0.85, 1.1));
  const solidPerDropMm = ((Math.PI / 6) * dropMm ** 3 * 0.89) / (Math.PI * (d / 2) ** 2);
  let frequencyHz = meltAt(point, meanA) / solidPerDropMm;
  let baseA = Number.NaN;
  let feedMmPerS = Number.NaN;
  // The pulses melt more than a steady current of the same mean, and how much depends on their rate.
  for (let k = 0; k < 4; k++) {
    const peakShare = (peakS + stepShare * stepS) * frequencyHz;
    const restShare = 1 - (peakS + stepS) * frequencyHz;
    if (restShare < 0.35) return null;
    baseA = (meanA - peakShare * peakA) / (1 - peakShare);
    const stepA = baseA + stepShare * (peakA - baseA);
    feedMmPerS =
      peakS * frequencyHz * meltAt(point, peakA) +
      stepS * frequencyHz * meltAt(point, stepA) +
      restShare * meltAt(point, baseA);
    frequencyHz = feedMmPerS / solidPerDropMm;
  }
  if (!(baseA > 12) || baseA > 0.7 * point.transitionA) return null;
  if (frequencyHz < 30 || frequencyHz > 400) return null;
  const stepA = baseA + stepShare * (peakA - baseA);
  const { riseS, fallS } = drawSlopes(random);
  const fastest = Math.min(riseS, 0.8 * peakS);
  return {
    source: {
      kind: 'pulsed',
      frequencyHz,
      peakA,
      peakS,
      baseA,
      riseAPerS: (peakA - baseA) / fastest,
      fallAPerS: (peakA - baseA) / Math.min(fallS, 0.8 * peakS),
      roundS: random.next() < 0.3 ? fastest / random.uniform(2.5, 6) : 0,
      stepA,
      stepS,
      targetV: point.meanV,
      controlPerV: random.uniform(0.04, 0.3),
      jitter: random.pick([0, 0.002, 0.01, 0.03]),
      openV: random.uniform(50, 85),
      ...ripple(random),
    },
    feedMPerMin: (feedMmPerS * 60) / 1000,
  };
}

/** Rise and fall between base and peak: 0.2 to 0.6 ms in most sources, common practice, no source. */
function drawSlopes(random: Random): { riseS: number; fallS: number } {
  const usual = random.next() < 0.75;
  return usual
    ? { riseS: random.uniform(2e-4, 6e-4), fallS: random.uniform(2e-4, 6e-4) }
    : { riseS: random.logUniform(5e-5, 1.5e-3), fallS: random.logUniform(5e-5, 2e-3) };
}

function meltAt(point: OperatingPoint, currentA: number): number {
  return point.alpha * currentA + point.beta * point.extensionMm * currentA ** 2;
}
