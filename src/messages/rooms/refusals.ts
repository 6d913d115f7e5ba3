import type { GasName, Nothing } from '../terms.js';

/** Quantities that are stated with a unit. */
export type QuantityName =
  | 'wire diameter'
  | 'stick-out'
  | 'plate thickness'
  | 'wire feed'
  | 'travel speed'
  | 'set voltage'
  | 'measured voltage'
  | 'measured current'
  | 'cable length'
  | 'source slope';

/** `stated`: the user's own words. */
interface Stated {
  quantity: QuantityName;
  stated: string;
}

/** One reading of an ambiguous gas: as it would be written, and what it would be. */
export interface GasReading {
  written: string;
  is: 'argon-co2' | 'argon-last' | 'argon-oxygen' | 'helium-argon' | '2-co2' | 'co2-oxygen' | null;
}

/** Why a set-up cannot be used as stated. */
export interface RefusalParams {
  'value-without-unit': Stated;
  'value-of-wrong-unit': Stated & { unit: string };
  /** `is`: the value in the base unit, where it was stated in another. */
  'value-impossible': Stated & { is: { value: number; unit: string } | null };
  'value-no-number': Stated;
  'gas-not-understood': { stated: string };
  'gas-against-symbol': { stated: string; symbol: string; mix: GasName };
  'gas-shares-open': { stated: string };
  'gas-parts-sum': { stated: string; percent: number };
  'gas-ambiguous': { stated: string; readings: GasReading[] };
  'aluminium-in-active-gas': { gas: GasName };
  'voltages-rise': {
    before: 'source' | 'feeder' | 'arc';
    beforeV: number;
    after: 'source' | 'feeder' | 'arc';
    afterV: number;
  };
  'pulses-from-steady-source': Nothing;
  // What was expected; each reads as the end of "Expected …".
  'expect-quantity': {
    quantity: QuantityName;
    min: number;
    max: number;
    unit: string;
    example: string;
  };
  'expect-like': { example: string };
  'expect-gas': Nothing;
  'expect-agreement': Nothing;
  'expect-shares': Nothing;
  'expect-sum': Nothing;
  'expect-one-meaning': Nothing;
  'expect-inert-gas': Nothing;
  'expect-falling-voltages': Nothing;
  'expect-pulsed-source': Nothing;
  // What to do.
  'did-you-mean': { guesses: string[] };
  'check-value': Nothing;
  'number-with-unit': Nothing;
  'dial-shows-taps': Nothing;
  'measure-while-welding': Nothing;
  'name-whole-symbol': Nothing;
  'name-each-gas': Nothing;
  'give-mix-or-symbol': { symbol: string };
  'write-like-mix': Nothing;
  'check-numbers': Nothing;
  'write-one-of': { written: string[] };
  'check-gas-or-wire': Nothing;
  'readings-swapped': Nothing;
  'pulsed-source-or-spray': Nothing;
}
