import type { Mode } from '../../core/index.js';
import type { GasMix } from '../terms.js';
import { numbersWith, type Words } from '../writer.js';

const GASES: Readonly<Record<keyof GasMix, string>> = {
  ar: 'Ar',
  he: 'He',
  co2: 'CO2',
  o2: 'O2',
  h2: 'H2',
  n2: 'N2',
};

const numbers = numbersWith('.');

/** How English writes numbers, lists, modes and gases. Modes stand by their ids. */
export const ENGLISH_WORDS: Words = {
  ...numbers,
  mode: (mode) => mode,
  and: (words) => words.join(' and '),
  or: (words) => words.join(' or '),
  gas: ({ symbol, composition }) =>
    composition === null ? `any gas of ISO 14175 group ${symbol}` : mixture(composition),
};

/** `Ar + 18 % CO2`: the largest part first, without its number unless it stands alone. */
function mixture(gas: GasMix): string {
  const parts = (Object.keys(GASES) as (keyof GasMix)[])
    .filter((key) => gas[key] > 0)
    .sort((a, b) => gas[b] - gas[a]);
  const [base, ...rest] = parts;
  if (base === undefined) return 'no gas';
  if (rest.length === 0) return `pure ${GASES[base]}`;
  const extras = rest.map((key) => `${numbers.short(gas[key], 3)} % ${GASES[key]}`);
  return [GASES[base], ...extras].join(' + ');
}

/** Names of the modes by the standard whose words a reader uses: AWS A3.0, and ISO 4063 with the usual British ones. */
export const TERM_SETS: Readonly<Record<'aws' | 'iso', Readonly<Record<Mode, string>>>> = {
  aws: {
    'short-circuit': 'short-circuiting (GMAW-S)',
    globular: 'globular (GMAW-G)',
    spray: 'spray (GMAW)',
    'pulsed-spray': 'pulsed spray (GMAW-P)',
  },
  iso: {
    'short-circuit': 'dip transfer (D)',
    globular: 'globular transfer (G)',
    spray: 'spray arc (S)',
    'pulsed-spray': 'pulsed arc (P)',
  },
};

/** A text with a large first letter. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
