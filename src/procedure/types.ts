import type { Mode } from '../core/index.js';
import type { Gas, Polarity, Position, SourceKind, VoltsAt, WireMaterial } from '../setup/index.js';

/** From and to in a base unit, both ends allowed; null where that side is open. */
export interface Limit {
  min: number | null;
  max: number | null;
}

/** What a welding procedure allows, in base units. Null where it says nothing. */
export interface Procedure {
  name: string;
  revision: string | null;
  note: string | null;
  /** At least one. */
  modes: readonly Mode[];
  /** Least share of the arc time in these modes, 0 to 1. */
  keepShare: number;
  /** A departure from these modes up to this long is passed over, s. */
  longestDepartureS: number;
  wireDiameterMm: number | null;
  wireMaterial: WireMaterial | null;
  gas: Gas | null;
  /** The gas as written. */
  gasText: string | null;
  polarity: Polarity | null;
  source: SourceKind | null;
  /** None where any is allowed. */
  positions: readonly Position[];
  /** The positions as written. */
  positionText: string | null;
  joint: string | null;
  pass: string | null;
  plateMm: Limit | null;
  volts: (Limit & { at: VoltsAt }) | null;
  amperes: Limit | null;
  wireFeedMPerMin: Limit | null;
  travelSpeedMmPerMin: Limit | null;
  stickOutMm: Limit | null;
  heatInputKjPerMm: (Limit & { efficiency: boolean }) | null;
}
