import type { Sourced } from './sourced.js';

/** Melting rate by a linear and a resistive part: `MR = a·I + b·L·I²`. */
export interface MeltingRow extends Sourced {
  what: string;
  /** lb/(h·A). */
  a: number;
  /** lb/(h·A²·in). */
  b: number;
}

const LESNEWICH = 'Lesnewich, Welding J. 37 (1958) 343-s, 418-s; AWS Welding Handbook vol. 1';

export const MELTING_ROWS = {
  steelDcep: {
    what: 'mild steel, electrode positive, 1/16 in',
    a: 1.9e-2,
    b: 5.5e-5,
    source: LESNEWICH,
    certainty: 'M',
  },
  steelDcen: {
    what: 'mild steel, electrode negative',
    a: 4.0e-2,
    b: 5.5e-5,
    source: LESNEWICH,
    certainty: 'M',
  },
} as const satisfies Record<string, MeltingRow>;

/** `WFS = α·I + β·L·I²` for 1.2 mm steel, in mm/s with A and mm. */
export const SPEED_ROW_1_2_MM = {
  diameterMm: 1.2,
  alpha: 0.3,
  beta: 5.0e-5,
  source: 'Allum & Quintino 1985; Norrish, Advanced Welding Processes',
  certainty: 'M',
} as const;

/** Feed per ampere, inches a minute, by wire in inches: the shop's straight-line rule for steel. */
export const FEED_PER_AMPERE: readonly (Sourced & { inch: number; ipmPerA: number })[] = [
  [0.023, 3.5] as const,
  [0.03, 2.0] as const,
  [0.035, 1.6] as const,
  [0.045, 1.0] as const,
].map(([inch, ipmPerA]) => ({
  inch,
  ipmPerA,
  source: "a manufacturer's setting guide",
  certainty: 'F',
}));

/**
 * `v·d²/I` of aluminium in argon, electrode positive, in mm³/(s·A): mean and twice the spread over a wire
 * maker's table of seventeen settings from 0.8 to 1.6 mm, alloys not told apart. The wire's own
 * resistance hardly counts.
 */
export const ALUMINIUM_MELTING = {
  constant: 1.38,
  share: 0.15,
  source: "an aluminium wire maker's table of recommended parameters",
  certainty: 'X',
} as const;
