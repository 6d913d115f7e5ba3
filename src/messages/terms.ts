/** Params that many sentences share. All are plain JSON. */

/** No params at all. */
export type Nothing = Record<never, never>;

/** A sentence without its text, as documents carry it. Made by `message`, which checks that code and params go together. */
export interface Message {
  code: string;
  params: Record<string, unknown>;
}

/** A closed range in the unit that the name of the param states. */
export interface Span {
  min: number;
  max: number;
}

/** A column or series of a file: its name (null where the file gives none), number from 1 and unit. */
export interface ColumnName {
  name: string | null;
  number: number;
  unit: string | null;
}

export type Quantity = 'time' | 'voltage' | 'current';

/** Where volts are set or read; `trace` is a recording whose place is not stated. */
export type VoltsPlace = 'set' | 'source' | 'feeder' | 'arc' | 'trace';

/** Shielding gas in per cent by volume. */
export type GasMix = Record<'ar' | 'he' | 'co2' | 'o2' | 'h2' | 'n2', number>;

/** A gas as it is named in a sentence; without a composition it is any gas of the ISO 14175 group. */
export interface GasName {
  symbol: string;
  composition: GasMix | null;
}
