import { range, type Sourced } from '../sourced.js';

/** Loss along a welding cable: about 1 V at 100 A and 2–3 V at 500 A over 10–15 m. */
export const CABLE_DROP = {
  atA: [100, 500],
  volts: [range(0.7, 1), range(2, 3)],
  lengthM: 12.5,
  source: 'a welding-cable table',
  certainty: 'F',
} as const satisfies Sourced & Record<string, unknown>;
