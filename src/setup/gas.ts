import { ENGLISH, type GasMix, type GasName, type Message } from '../messages/index.js';

/** Shielding gas in per cent by volume; the parts add up to 100. */
export type GasComposition = GasMix;

/** A share that a statement leaves open, in per cent: a symbol such as M21 names a band only. */
export interface ShareRange {
  min: number;
  max: number;
}

/** A shielding gas as the user stated it. */
export interface Gas {
  /** The user's own words. */
  stated: string;
  /** ISO 14175 symbol, e.g. `M21`; `Z` where no group fits. */
  symbol: string;
  /** Null where only the symbol was given: then the ranges below hold all that is known. */
  composition: GasComposition | null;
  co2: ShareRange;
  o2: ShareRange;
  /** How the statement was read, e.g. `Ar + 18 % CO2`. */
  text: string;
  /** Said where a common reading had to be taken; null where nothing was assumed. */
  assumption: string | null;
  /** The same by its code; absent where nothing was assumed. */
  assumptionMessage?: Message;
}

/** `Ar + 18 % CO2`: the largest part first, without its number unless it stands alone. */
export function describeComposition(composition: GasComposition): string {
  return ENGLISH.write.gas({ symbol: '', composition });
}

/** A gas as sentences name it. */
export const gasName = ({ symbol, composition }: Gas): GasName => ({ symbol, composition });
