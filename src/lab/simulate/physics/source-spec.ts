/** What a power source is told to do. */
export type SourceSpec = ConstantVoltageSpec | ControlledDipSpec | PulsedSpec;

interface SourceBase {
  /** Voltage at the terminals before contact. */
  openV: number;
  /** Rectifier or mains ripple: relative depth and its frequency; harmonics follow. */
  rippleDepth: number;
  rippleHz: number;
}

export interface ConstantVoltageSpec extends SourceBase {
  kind: 'constant-voltage';
  setV: number;
  slopeOhm: number;
  inductanceH: number;
  maxA: number;
  /** Electronic choke: largest rise of current, A/s; Infinity for none. */
  riseLimitAPerS: number;
}

export interface ControlledDipSpec extends SourceBase {
  kind: 'controlled-dip';
  /** Current while the arc waits for contact, just after contact, during the pinch, and after re-ignition. */
  baseA: number;
  lowA: number;
  pinchA: number;
  /** Rise of the current while the pinch lasts, A/s; 0 holds the level. */
  pinchRampAPerS: number;
  boostA: number;
  lowS: number;
  boostS: number;
  /** Time constant of the fall from boost to base. */
  tailS: number;
  slewAPerS: number;
  /** Wire pulled back during the short, m/min; 0 for none. */
  retractMPerMin: number;
  /** Chance that the neck is seen in time, so that the current is low at rupture. */
  neckSeenShare: number;
}

export interface PulsedSpec extends SourceBase {
  kind: 'pulsed';
  frequencyHz: number;
  peakA: number;
  peakS: number;
  baseA: number;
  riseAPerS: number;
  fallAPerS: number;
  /** Time constant that rounds the corners of the pulse; 0 for sharp ones. */
  roundS: number;
  /** A lower level after the peak, and how long it lasts; 0 s for none. */
  stepA: number;
  stepS: number;
  /** Voltage that the slow arc-length control holds by trimming the base time. */
  targetV: number;
  /** Share of the base time moved per volt. */
  controlPerV: number;
  /** Relative cycle-to-cycle jitter. */
  jitter: number;
}
