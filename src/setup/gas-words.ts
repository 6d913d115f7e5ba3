import type { GasComposition } from './gas.js';

type Part = keyof GasComposition;

const WORDS: Readonly<Record<string, Part>> = {
  ar: 'ar',
  argon: 'ar',
  he: 'he',
  helium: 'he',
  co2: 'co2',
  'carbon dioxide': 'co2',
  o2: 'o2',
  oxygen: 'o2',
  h2: 'h2',
  hydrogen: 'h2',
  n2: 'n2',
  nitrogen: 'n2',
};

const GAS = 'carbon dioxide|argon|helium|oxygen|hydrogen|nitrogen|co2|ar|he|o2|h2|n2';
const SHARE = String.raw`\d+(?:[.,]\d+)?`;

const none = (): GasComposition => ({ ar: 0, he: 0, co2: 0, o2: 0, h2: 0, n2: 0 });
const toNumber = (text: string): number => Number(text.replace(',', '.'));

/**
 * A mix whose gases are named: `Ar+18CO2`, `82Ar/18CO2`, `Ar/CO2 82/18`, `98/2 O2`, `C25`, `argon`.
 * The one gas without a number is left NaN for the caller to fill. Null where the words do not fit.
 */
export function readNamedMix(text: string): GasComposition | null {
  const lower = text.toLowerCase().replace(/^(pure|welding grade)\s+/u, '');
  const shop = /^c(100|\d{1,2})$/u.exec(lower);
  if (shop !== null) return shopName(Number(shop[1]));
  return (
    namesThenShares(lower) ?? sharesThenLastGas(lower) ?? runTogether(lower) ?? alternating(lower)
  );
}

function shopName(co2: number): GasComposition {
  return { ...none(), co2, ar: 100 - co2 };
}

/** `Ar/CO2 82/18`, `Ar-CO2 (82/18)`, and the other way round `82/18 Ar/CO2`. */
function namesThenShares(text: string): GasComposition | null {
  const names = `((?:${GAS})(?:\\s*[-/+]\\s*(?:${GAS}))+)`;
  const shares = `\\(?(${SHARE}(?:\\s*/\\s*${SHARE})+)\\)?\\s*%?`;
  const front = new RegExp(`^${names}\\s+${shares}$`, 'u').exec(text);
  const back = new RegExp(`^${shares}\\s+${names}$`, 'u').exec(text);
  const [nameText, shareText] =
    front !== null ? [front[1], front[2]] : back !== null ? [back[2], back[1]] : [];
  if (nameText === undefined || shareText === undefined) return null;
  const gases = nameText.split(/\s*[-/+]\s*/u);
  const numbers = shareText.split('/').map((part) => toNumber(part.trim()));
  if (gases.length !== numbers.length) return null;
  const mix = none();
  for (const [i, gas] of gases.entries()) mix[WORDS[gas]!] += numbers[i]!;
  return mix;
}

/** `98/2 O2`, `80/20 CO2`: argon first, the named gas second. */
function sharesThenLastGas(text: string): GasComposition | null {
  const match = new RegExp(`^(${SHARE})\\s*/\\s*(${SHARE})\\s*%?\\s*(${GAS})$`, 'u').exec(text);
  const second = match === null ? undefined : WORDS[match[3]!];
  if (match === null || second === undefined || second === 'ar') return null;
  return { ...none(), ar: toNumber(match[1]!), [second]: toNumber(match[2]!) };
}

/** `98Ar2O2`, `ar18co2`: shares and gases without anything between them; a first gas may lack its share. */
function runTogether(text: string): GasComposition | null {
  const part = `(${SHARE})%?(${GAS})`;
  if (!new RegExp(`^(?:${GAS})?(?:${part})+$`, 'u').test(text)) return null;
  const mix = none();
  const bare = new RegExp(`^(${GAS})(?=\\d)`, 'u').exec(text)?.[1];
  const rest = bare === undefined ? text : text.slice(bare.length);
  if (bare !== undefined) mix[WORDS[bare]!] = Number.NaN;
  for (const [, share, gas] of rest.matchAll(new RegExp(part, 'gu'))) {
    const name = WORDS[gas!]!;
    if (mix[name] !== 0) return null;
    mix[name] = toNumber(share!);
  }
  return mix;
}

/** Gases with their shares before or after them, joined by plus, comma, slash, dash or space. */
function alternating(text: string): GasComposition | null {
  const joined = text.replace(/\s*(?:\+|\/|;|,\s|-|\s(?:and|with|plus|in)\s)\s*/gu, ' + ');
  const mix = none();
  const tokens = joined.includes(' + ') ? joined.split(' + ') : splitAtGases(joined);
  for (const token of tokens) {
    const match = new RegExp(
      `^(?:(${SHARE})\\s*%?\\s*)?(${GAS})(?:\\s+(${SHARE})\\s*%?)?$`,
      'u',
    ).exec(token.trim());
    if (match === null) return null;
    const stated = match[1] ?? match[3];
    const part = WORDS[match[2]!]!;
    if (mix[part] !== 0) return null;
    mix[part] = stated === undefined ? Number.NaN : toNumber(stated);
  }
  return mix;
}

/** `82% Ar 18% CO2` and `Ar 18% CO2`: a new part starts at each number or bare gas. */
function splitAtGases(text: string): string[] {
  return text.match(new RegExp(`(?:${SHARE}\\s*%?\\s*)?(?:${GAS})(?![a-z0-9])`, 'gu')) ?? [text];
}

/** `75/25` with nothing named: the two numbers, or null. */
export function readBarePair(text: string): readonly number[] | null {
  const match = new RegExp(`^(${SHARE})\\s*[/-]\\s*(${SHARE})\\s*%?$`, 'u').exec(text);
  if (match === null) return null;
  return [toNumber(match[1]!), toNumber(match[2]!)];
}

const LETTERS: Readonly<Record<string, Part>> = {
  Ar: 'ar',
  A: 'ar',
  He: 'he',
  C: 'co2',
  O: 'o2',
  H: 'h2',
  N: 'n2',
};

/**
 * A designation such as `M20-ArC-11`, `M25-ArCO-6/4`, `ArC-18`, or the old American form
 * `SG-AC-25`: base gas first, then the others with their shares in the same order.
 */
export function readDesignation(
  text: string,
): { symbol: string; composition: GasComposition } | null {
  const match =
    /^(?:(SG|[A-Z]\d{0,2})-)?((?:Ar|He|A|C|O|H|N)+)-(\d+(?:[.,]\d+)?(?:\/\d+(?:[.,]\d+)?)*)$/u.exec(
      text,
    );
  if (match === null) return null;
  const parts = (match[2]!.match(/Ar|He|A|C|O|H|N/gu) ?? []).map((letter) => LETTERS[letter]!);
  const shares = match[3]!.split('/').map(toNumber);
  if (parts.length !== shares.length + 1) return null;
  const composition = none();
  composition[parts[0]!] = Number.NaN;
  for (const [i, share] of shares.entries()) composition[parts[i + 1]!] = share;
  return { symbol: match[1] === 'SG' ? '' : (match[1] ?? ''), composition };
}
