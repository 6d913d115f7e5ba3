import type { SourceSpec } from './physics/source-spec.js';

export type * from './physics/source-spec.js';

/**
 * What one simulated run is made of. Everything the physics needs is a number in here, so a run can be
 * repeated from its scenario alone. Lengths in mm, times in s, volumes in mm³ unless a name says other.
 */
export interface ArcScenario {
  /** Name of the scenario family it was drawn from. */
  family: string;
  seed: number;
  /** Seconds from trigger to release. */
  arcS: number;
  /** Dead time before the trigger and after the arc. */
  leadInS: number;
  leadOutS: number;
  /** The recording begins (ends) while the arc burns: no ignition (crater) in it. */
  openStart: boolean;
  openEnd: boolean;
  electricalRateHz: number;
  wire: WireSpec;
  gas: GasSpec;
  /** Contact tip to work. */
  contactDistanceMm: number;
  source: SourceSpec;
  arc: ArcSpec;
  detachment: DetachmentSpec;
  bridging: BridgingSpec;
  pool: PoolSpec;
  hand: HandSpec;
  ends: EndsSpec;
  probe: ProbeSpec;
  /** Settings changed while the arc burns, in order of time (s after the trigger). */
  changes: SettingChange[];
  /** What was set wrong on purpose; null where nothing was. */
  setWrong: SetWrong | null;
}

/**
 * Ways a run is set wrong: too little current for the mode meant; too much voltage; too much wire for the voltage,
 * so that it stubs into the pool; a gas in which the mode meant does not exist.
 */
export type SetWrong = 'cold' | 'long-arc' | 'stubbing' | 'wrong-gas';

export type Material = 'carbon-steel' | 'stainless-steel' | 'aluminium';

export interface WireSpec {
  material: Material;
  diameterMm: number;
  feedMPerMin: number;
  /** Melting speed `alpha·I + beta·L·I²`: mm/(s·A) and 1/(s·A²). */
  alpha: number;
  beta: number;
  /** Relative slow unsteadiness of the feed. */
  feedJitter: number;
}

export interface GasSpec {
  /** ISO 14175 group, e.g. `M21`. */
  group: string;
  co2Percent: number;
  o2Percent: number;
}

export interface ArcSpec {
  /** `V = fallV + ohm·I + fieldVPerMm·length + lowCurrent`. */
  fallV: number;
  ohm: number;
  fieldVPerMm: number;
  /** Resistance of the hot extension. */
  wireOhmPerMm: number;
  /** Root wander: fast part (corner noiseHz) and slow part (corner slowHz), rms volts. */
  noiseV: number;
  noiseHz: number;
  slowV: number;
  slowHz: number;
  /** Wandering resistance in the path of the current, as of a worn contact tip or a bad clamp: rms and corner. */
  strayOhm: number;
  strayHz: number;
}

export type DetachmentLaw = 'force-balance' | 'pinch-switch' | 'size-map' | 'spring-mass';

export interface DetachmentSpec {
  law: DetachmentLaw;
  /** Globular-spray transition; Infinity where the gas allows none. */
  transitionA: number;
  /** Relative width of the transition. */
  transitionWidth: number;
  /** Half angle of the arc root on the drop below the transition, rad. */
  rootAngle: number;
  /** Arc jet pushing the drop back, in units of mu0·I²/4π. */
  repulsion: number;
  /** Share of the ideal retaining force. */
  retain: number;
  /** Largest drop that can hang, in wire diameters. */
  maxRatio: number;
  /** Smallest drop that a molten column makes at the transition, in wire diameters. */
  leastRatio: number;
  /** How fast these drops shrink as the current rises: exponent of transition over current. */
  thinning: number;
  /** Time the wire end takes to draw to a point after the current has risen, s. */
  taperS: number;
  /** Drop-to-drop scatter (log-normal sigma). */
  scatter: number;
  /** Share of the hanging volume that stays on the wire. */
  leave: number;
  /** Necking time in capillary times. */
  neckFactor: number;
  /** Recoil of the wire end before the next neck can form, in capillary times of the wire. */
  restFactor: number;
  /** Rise of voltage just before detachment. */
  bumpV: number;
  /** Sideways and lengthwise wobble of the pendant drop, share of its size. */
  wobble: number;
  /** Chance that a big drop leaps: torn off sideways early. */
  leapShare: number;
}

export type BridgingLaw = 'capillary-pinch' | 'neck' | 'drawn' | 'wet-then-action';

export interface BridgingSpec {
  law: BridgingLaw;
  /** Bridging time in capillary times (or ms for `drawn`). */
  timeFactor: number;
  /** Current at which the pinch equals surface tension; or A²s for `wet-then-action`. */
  pinchA: number;
  actionA2s: number;
  /** Log-normal sigma of durations. */
  spread: number;
  leave: number;
  incipientShare: number;
  incipientS: number;
  contactV: number;
  bridgeOhm: number;
  /** Rise time of the voltage at re-ignition and its overshoot. */
  riseS: number;
  overshootV: number;
  /** Gap opened by the burst of the bridge. */
  ruptureGapMm: number;
}

export type PoolLaw = 'resonant' | 'forced' | 'drift' | 'two-mode';

export interface PoolSpec {
  law: PoolLaw;
  hz: number;
  damping: number;
  /** Rms of its own motion. */
  noiseMm: number;
  /** Drop of the surface after a rupture, and after a falling drop of 1 mm³. */
  kickMm: number;
  impactMm: number;
}

export interface HandSpec {
  /** Rms wander of the contact distance and its corner; sinusoidal weave. */
  wanderMm: number;
  wanderHz: number;
  weaveMm: number;
  weaveHz: number;
}

export interface EndsSpec {
  /** Feed before the arc strikes, share of the set feed. */
  runInShare: number;
  /** Action that fuses the first contact, A²s. */
  strikeA2s: number;
  /** Length of the ramp at release; 0 stops at once. */
  craterS: number;
}

export interface ProbeSpec {
  noiseV: number;
  noiseA: number;
  leadOhm: number;
  humV: number;
  humHz: number;
  fullScaleV: number;
  fullScaleA: number;
  bits: number;
  antiAliasHz: number;
  offsetA: number;
}

export interface SettingChange {
  timeS: number;
  setV?: number;
  feedMPerMin?: number;
}
