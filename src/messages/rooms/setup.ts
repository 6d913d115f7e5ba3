import type { GasName, Span, VoltsPlace } from '../terms.js';

/** How a stated set-up was read, and the working point that it gives. */
export interface SetupParams {
  /** `stated`: the user's own words. */
  'gas-word-read-as': { stated: string; gas: GasName };
  'gas-read-as': { stated: string; gas: GasName };
  'unusual-pair': { pair: 'stainless-in-much-co2' | 'carbon-in-inert'; gas: GasName };
  /** Where the voltage that is compared comes from; volts at the feeder while welding. */
  'voltage-set': { setV: number; feederV: Span };
  'voltage-measured': { volts: number; place: Exclude<VoltsPlace, 'set'>; by: 'meter' | 'trace' };
  /** Where the current that is compared comes from. */
  'current-measured': { currentA: number };
  'current-from-feed': { currentA: Span };
}
