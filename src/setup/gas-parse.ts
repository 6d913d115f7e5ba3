import type { ArcError } from '../core/index.js';
import { ENGLISH, type GasMeaning, type Made, message, refuse, said } from '../messages/index.js';
import { describeComposition, type Gas, type GasComposition } from './gas.js';
import { gasSymbol, OTHER_SYMBOLS, OXIDISING_GROUPS, symbolRanges } from './gas-groups.js';
import { readBarePair, readDesignation, readNamedMix } from './gas-words.js';

const SYMBOLS: ReadonlySet<string> = new Set([
  ...OXIDISING_GROUPS.map((row) => row.symbol),
  ...OTHER_SYMBOLS,
]);

/**
 * Reads a shielding gas: a mix (`Ar+18CO2`, `98/2 O2`, `90He+7.5Ar+2.5CO2`), a shop name (`C25`,
 * `75/25`, `pure argon`), an ISO 14175 symbol (`M21`) or designation (`M20-ArC-11`).
 * A statement with several meanings is an {@link ArcError} that lists them.
 */
export function parseGas(raw: string): Gas {
  const stated = raw.trim();
  const text = stated
    .replace(/^ISO\s*14175\s*[-:]?\s*/iu, '')
    .replaceAll('₂', '2')
    .trim();
  const symbol = text.toUpperCase();
  const explicit = text !== stated;
  if (symbol === 'C2' && !explicit) {
    throw ambiguous(stated, [
      ['Ar+2CO2', 'argon with 2 % CO2'],
      ['ISO 14175-C2', 'CO2 with oxygen'],
    ]);
  }
  if (SYMBOLS.has(symbol)) return fromSymbol(stated, symbol);
  const designated = readDesignation(text);
  if (designated !== null) {
    return checkedDesignation(stated, designated.symbol, designated.composition);
  }
  const named = readNamedMix(text);
  if (named !== null) return fromComposition(stated, complete(stated, named), null);
  if (/^(?:helium |stainless )?tri-?mix$/iu.test(text)) return triMix(stated);
  const pair = readBarePair(text);
  if (pair !== null) return fromBarePair(stated, pair);
  const three = /^([\d.]+)\/([\d.]+)\/([\d.]+)$/u.exec(text);
  if (three !== null) {
    const [, a, b, c] = three;
    const meanings = [`${a}He+${b}Ar+${c}CO2`, `${a}Ar+${b}He+${c}CO2`, `${a}Ar+${b}CO2+${c}O2`];
    throw ambiguous(
      stated,
      meanings.map((write) => [write, null]),
    );
  }
  throw refuse('bad-gas', {
    what: message('gas-not-understood', { stated }),
    expected: message('expected-gas'),
    todo: message(/^[MR]\d?$/iu.test(text) ? 'name-whole-symbol' : 'name-each-gas'),
  });
}

/** The helium mix for short-circuit of stainless steel: the usual meaning of "tri-mix". */
function triMix(stated: string): Gas {
  const gas = { ...EMPTY, he: 90, ar: 7.5, co2: 2.5 };
  const name = { symbol: gasSymbol(gas), composition: gas };
  return fromComposition(stated, gas, message('gas-word-read-as', { stated, gas: name }));
}

function fromSymbol(stated: string, symbol: string): Gas {
  const ranges = symbolRanges(symbol)!;
  const pure = symbol === 'I1' ? { ar: 100 } : symbol === 'I2' ? { he: 100 } : null;
  const carbon = symbol === 'C1' ? { co2: 100 } : pure;
  if (carbon !== null) return fromComposition(stated, { ...EMPTY, ...carbon }, null);
  return {
    stated,
    symbol,
    composition: null,
    ...ranges,
    text: ENGLISH.write.gas({ symbol, composition: null }),
    assumption: null,
  };
}

function checkedDesignation(stated: string, symbol: string, gas: GasComposition): Gas {
  const complete_ = complete(stated, gas);
  const right = gasSymbol(complete_);
  if (symbol !== '' && symbol !== right) {
    const named = { symbol: right, composition: complete_ };
    throw refuse('contradictory-gas', {
      what: message('gas-contradicts-itself', { stated, says: symbol, gas: named }),
      expected: message('expected-symbol-and-mix'),
      todo: message('mix-or-symbol', { symbol: right }),
    });
  }
  return fromComposition(stated, complete_, null);
}

/** 15 % and above in second place is CO2 in every shop; below, oxygen mixes are sold as well. */
function fromBarePair(stated: string, [base, second]: readonly number[]): Gas {
  if (base === undefined || second === undefined || base < second) {
    throw ambiguous(stated, [
      [`Ar+${base ?? 0}CO2`, 'argon with CO2'],
      [`Ar+${second ?? 0}CO2`, 'argon with CO2, argon named last'],
      [`${second ?? 0}He+${base ?? 0}Ar`, 'helium with argon'],
    ]);
  }
  if (second < 8) {
    throw ambiguous(stated, [
      [`Ar+${second}CO2`, 'argon with CO2'],
      [`Ar+${second}O2`, 'argon with oxygen'],
    ]);
  }
  const gas = complete(stated, { ...EMPTY, ar: base, co2: second });
  return fromComposition(
    stated,
    gas,
    message('gas-read-as', { stated, gas: { symbol: gasSymbol(gas), composition: gas } }),
  );
}

const EMPTY: GasComposition = { ar: 0, he: 0, co2: 0, o2: 0, h2: 0, n2: 0 };

/** Fills the unnumbered base gas up to 100 % (one gas is marked NaN where it had no number). */
function complete(stated: string, gas: GasComposition): GasComposition {
  const entries = Object.entries(gas) as [keyof GasComposition, number][];
  const sum = entries.reduce((total, [, share]) => total + (Number.isNaN(share) ? 0 : share), 0);
  const open = entries.filter(([, share]) => Number.isNaN(share)).map(([key]) => key);
  const rest = 100 - sum;
  if (open.length > 1) {
    throw refuse('bad-gas', {
      what: message('gas-leaves-open', { stated }),
      expected: message('expected-shares-but-one'),
      todo: message('write-like-mix'),
    });
  }
  if (open.length === 0 ? Math.abs(rest) > 0.51 : rest <= 0) {
    throw refuse('bad-gas', {
      what: message('gas-parts-sum', { stated, sumPercent: sum }),
      expected: message('expected-hundred'),
      todo: message('check-numbers'),
    });
  }
  const filled = { ...gas };
  for (const key of open) filled[key] = Number(rest.toFixed(6));
  return filled;
}

function fromComposition(stated: string, gas: GasComposition, assumption: Made | null): Gas {
  return {
    stated,
    symbol: gasSymbol(gas),
    composition: gas,
    co2: { min: gas.co2, max: gas.co2 },
    o2: { min: gas.o2, max: gas.o2 },
    text: describeComposition(gas),
    assumption: assumption?.text ?? null,
    ...(assumption && { assumptionMessage: said(assumption) }),
  };
}

function ambiguous(
  stated: string,
  meanings: readonly (readonly [write: string, means: GasMeaning | null])[],
): ArcError {
  const each = meanings.map(([write, means]) => ({ write, means }));
  return refuse('ambiguous-gas', {
    what: message('gas-ambiguous', { stated, meanings: each }),
    expected: message('expected-clear-gas'),
    todo: message('write-one-of', { writings: meanings.map(([write]) => write) }),
  });
}
