import type { GasName, Message, Nothing } from '../terms.js';

/** Quantities of a set-up by the name that English gives them. */
export type QuantityName =
  | 'wire diameter'
  | 'stick-out'
  | 'plate thickness'
  | 'wire feed'
  | 'travel speed'
  | 'set voltage'
  | 'measured voltage'
  | 'measured current'
  | 'source slope'
  | 'cable length'
  | 'bead length'
  | 'heat input';

/** Words that a set-up chooses from. */
export type ChoiceName =
  | 'wanted mode'
  | 'polarity'
  | 'place of the voltage'
  | 'source'
  | 'position';

/** What a gas that was stated briefly may mean. */
export type GasMeaning =
  | 'argon with 2 % CO2'
  | 'CO2 with oxygen'
  | 'argon with CO2'
  | 'argon with CO2, argon named last'
  | 'argon with oxygen'
  | 'helium with argon';

/** What is wrong with a set-up as stated; `stated` holds the user's own words. */
export interface RefusalParams {
  /** The whole of it: what happened, what was expected, what to do. */
  refusal: { what: Message; expected: Message; todo: Message };
  'quantity-without-unit': { quantity: QuantityName; stated: string };
  'quantity-wrong-unit': { quantity: QuantityName; stated: string; unit: string };
  'quantity-no-number': { quantity: QuantityName; stated: string };
  /** `inBase`: the same in another unit than stated (its value null beyond all numbers); null where that is the one stated. */
  'quantity-impossible': {
    quantity: QuantityName;
    stated: string;
    inBase: { value: number | null; unit: string } | null;
  };
  'gas-not-understood': { stated: string };
  'gas-contradicts-itself': { stated: string; says: string; gas: GasName };
  'gas-leaves-open': { stated: string };
  'gas-parts-sum': { stated: string; sumPercent: number };
  'gas-ambiguous': { stated: string; meanings: { write: string; means: GasMeaning | null }[] };
  'aluminium-in-active-gas': { gas: GasName };
  'volts-rise': {
    place: 'source' | 'feeder' | 'arc';
    placeV: number;
    next: 'source' | 'feeder' | 'arc';
    nextV: number;
  };
  'pulses-of-steady-source': Nothing;
  'choice-not-known': { choice: ChoiceName; stated: string };
  'mode-not-given': { stated: string };
  'wire-cored': { stated: string };
  'wire-not-known': { stated: string };
}

/** What would have been right; each reads as the end of "Expected …". */
export interface ExpectedParams {
  'expected-quantity': {
    quantity: QuantityName;
    min: number;
    max: number;
    unit: string;
    example: string;
  };
  'expected-like': { example: string };
  'expected-gas': Nothing;
  'expected-symbol-and-mix': Nothing;
  'expected-shares-but-one': Nothing;
  'expected-hundred': Nothing;
  'expected-clear-gas': Nothing;
  'expected-inert-gas': Nothing;
  'expected-falling-volts': Nothing;
  'expected-pulsed-source': Nothing;
  'expected-choice': { choices: string[] };
  'expected-solid-wire': Nothing;
  'expected-wire': { materials: string[] };
}

/** What to do about it. */
export interface RemedyParams {
  /** Readings that would be right, as they are to be written; none where nothing near is. */
  'did-you-mean': { meanings: string[]; hint: 'tap-numbers' | 'measure-while-welding' | null };
  'give-number-and-unit': Nothing;
  'name-whole-symbol': Nothing;
  'name-each-gas': Nothing;
  'mix-or-symbol': { symbol: string };
  'write-like-mix': Nothing;
  'check-numbers': Nothing;
  'write-one-of': { writings: string[] };
  'check-gas-or-wire': Nothing;
  'readings-swapped': Nothing;
  'pulsed-source-or-spray': Nothing;
  'choose-one': Nothing;
  'unsure-never-label': Nothing;
  'solid-wire-only': Nothing;
  'other-wire-unknown': Nothing;
}
