import type { ArcScenario } from './scenario.js';

/**
 * A run shaped after one published measurement (R. D. Smith, "Waveform analysis for MIG/GMAW
 * dip-transfer", 2011/2017): 1.2 mm steel in Ar/20 % CO2, 180 A and 18.7 V mean, about 180 shorts a
 * second of about 1 ms at about 4.5 V, very regular, logged at 10 kHz. Source and bridge are set so
 * that these figures come out; it is a check of the waveform's shape, not evidence about the physics.
 */
export function publishedDipCase(seed = 1): ArcScenario {
  return {
    family: 'published',
    seed,
    arcS: 4,
    leadInS: 0.3,
    leadOutS: 0.3,
    openStart: false,
    openEnd: false,
    electricalRateHz: 10000,
    wire: {
      material: 'carbon-steel',
      diameterMm: 1.2,
      feedMPerMin: 4.2,
      alpha: 0.3,
      beta: 5e-5,
      feedJitter: 0.003,
    },
    gas: { group: 'M21', co2Percent: 20, o2Percent: 0 },
    contactDistanceMm: 15,
    source: {
      kind: 'constant-voltage',
      setV: 21.85,
      slopeOhm: 0.02,
      inductanceH: 7e-5,
      maxA: 500,
      riseLimitAPerS: Number.POSITIVE_INFINITY,
      openV: 24,
      rippleDepth: 0,
      rippleHz: 300,
    },
    arc: {
      fallV: 16.5,
      ohm: 0.02,
      fieldVPerMm: 0.8,
      wireOhmPerMm: 4.5e-4,
      noiseV: 0.3,
      noiseHz: 1500,
      slowV: 0.05,
      slowHz: 20,
      strayOhm: 0,
      strayHz: 1,
    },
    detachment: {
      law: 'force-balance',
      transitionA: 300,
      transitionWidth: 0.08,
      rootAngle: 2,
      repulsion: 0,
      retain: 1,
      maxRatio: 2.8,
      leastRatio: 0.8,
      thinning: 0.8,
      taperS: 0.01,
      restFactor: 1,
      scatter: 0.05,
      leave: 0.15,
      neckFactor: 0.6,
      bumpV: 0.3,
      wobble: 0.01,
      leapShare: 0,
    },
    bridging: {
      law: 'capillary-pinch',
      timeFactor: 0.85,
      pinchA: 260,
      actionA2s: 40,
      spread: 0.06,
      leave: 0.35,
      incipientShare: 0,
      incipientS: 3e-4,
      contactV: 0.9,
      bridgeOhm: 0.007,
      riseS: 5e-5,
      overshootV: 3,
      ruptureGapMm: 0.2,
    },
    pool: { law: 'resonant', hz: 150, damping: 0.2, noiseMm: 0.02, kickMm: 0.1, impactMm: 0.01 },
    hand: { wanderMm: 0.02, wanderHz: 1, weaveMm: 0, weaveHz: 0 },
    ends: { runInShare: 0.5, strikeA2s: 100, craterS: 0 },
    probe: {
      noiseV: 0.05,
      noiseA: 1,
      leadOhm: 0.003,
      humV: 0,
      humHz: 50,
      fullScaleV: 100,
      fullScaleA: 600,
      bits: 14,
      antiAliasHz: 4000,
      offsetA: 0,
    },
    changes: [],
    setWrong: null,
  };
}

/**
 * A run shaped after the current log of a robot weld with ER70S-6 wire (H. He et al., Rensselaer Polytechnic
 * Institute, 2023): levels of about 5, 43 and 95 A in turn, 122 to 130 times a second, 44 A in the mean at a feed of
 * 2.2 m/min. The log does not say what the arc did at each level nor how thick the wire was: 0.8 mm, the short at the
 * middle level and the boost after it are own choice, and so are the times, set so that the rate comes out.
 */
export function measuredControlledDip(seed = 1): ArcScenario {
  const base = publishedDipCase(seed);
  return {
    ...base,
    family: 'measured',
    electricalRateHz: 10000,
    wire: {
      material: 'carbon-steel',
      diameterMm: 0.8,
      feedMPerMin: 2.2,
      alpha: 0.71,
      beta: 2.53e-4,
      feedJitter: 0.003,
    },
    contactDistanceMm: 12,
    source: {
      kind: 'controlled-dip',
      baseA: 5,
      lowA: 43,
      pinchA: 43,
      pinchRampAPerS: 0,
      boostA: 95,
      lowS: 1e-4,
      boostS: 2.5e-3,
      tailS: 5e-5,
      slewAPerS: 2e5,
      retractMPerMin: 0,
      neckSeenShare: 0,
      openV: 60,
      rippleDepth: 0,
      rippleHz: 300,
    },
    arc: { ...base.arc, fallV: 15, wireOhmPerMm: 1e-3 },
    bridging: {
      ...base.bridging,
      law: 'drawn',
      timeFactor: 2.2,
      spread: 0.05,
      overshootV: 2,
      ruptureGapMm: 0.2,
    },
    pool: { law: 'resonant', hz: 110, damping: 0.3, noiseMm: 0.01, kickMm: 0.03, impactMm: 0.01 },
  };
}
