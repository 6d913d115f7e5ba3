/** Shielding gas in per cent by volume; the parts add up to 100. */
export interface GasComposition {
  ar: number;
  he: number;
  co2: number;
  o2: number;
  h2: number;
  n2: number;
}

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
}

const NAMES: Readonly<Record<keyof GasComposition, string>> = {
  ar: 'Ar',
  he: 'He',
  co2: 'CO2',
  o2: 'O2',
  h2: 'H2',
  n2: 'N2',
};

/** `Ar + 18 % CO2`: the largest part first, without its number unless it stands alone. */
export function describeComposition(gas: GasComposition): string {
  const parts = (Object.keys(NAMES) as (keyof GasComposition)[])
    .filter((key) => gas[key] > 0)
    .sort((a, b) => gas[b] - gas[a]);
  const [base, ...rest] = parts;
  if (base === undefined) return 'no gas';
  if (rest.length === 0) return `pure ${NAMES[base]}`;
  const extras = rest.map((key) => `${Number(gas[key].toFixed(3))} % ${NAMES[key]}`);
  return [NAMES[base], ...extras].join(' + ');
}
