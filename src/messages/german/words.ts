import type { GasMix } from '../terms.js';
import { numbersWith, type Words } from '../writer.js';
import { GAS_SYMBOLS, GERMAN_MODES } from './glossary.js';

const numbers = numbersWith(',');

/** How German writes numbers, lists, modes and gases. */
export const GERMAN_WORDS: Words = {
  ...numbers,
  mode: (mode) => GERMAN_MODES[mode],
  and: (words) => joined(words, 'und'),
  or: (words) => joined(words, 'oder'),
  gas: ({ symbol, composition }) =>
    composition === null ? `Gas der Gruppe ${symbol} (ISO 14175)` : mixture(composition),
};

function joined(words: readonly string[], by: string): string {
  const [last = '', ...before] = [...words].reverse();
  return before.length === 0 ? last : `${before.reverse().join(', ')} ${by} ${last}`;
}

/** `Ar + 18 % CO2`: the largest part first, without its number unless it stands alone; never inflected. */
function mixture(gas: GasMix): string {
  const parts = (Object.keys(GAS_SYMBOLS) as (keyof GasMix)[])
    .filter((key) => gas[key] > 0)
    .sort((a, b) => gas[b] - gas[a]);
  const [base, ...rest] = parts;
  if (base === undefined) return 'kein Gas';
  if (rest.length === 0) return `100 % ${GAS_SYMBOLS[base]}`;
  const extras = rest.map((key) => `${numbers.short(gas[key], 3)} % ${GAS_SYMBOLS[key]}`);
  return [GAS_SYMBOLS[base], ...extras].join(' + ');
}
