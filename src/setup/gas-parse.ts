import type { ArcError } from '../core/index.js';
import { ENGLISH, type GasReading, type Made, message, refusal, said } from '../messages/index.js';
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
      { written: 'Ar+2CO2', is: '2-co2' },
      { written: 'ISO 14175-C2', is: 'co2-oxygen' },
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
    const readings = [`${a}He+${b}Ar+${c}CO2`, `${a}Ar+${b}He+${c}CO2`, `${a}Ar+${b}CO2+${c}O2`];
    throw ambiguous(
      stated,
      readings.map((written) => ({ written, is: null })),
    );
  }
  const next = /^[MR]\d?$/iu.test(text) ? 'name-whole-symbol' : 'name-each-gas';
  throw refusal(
    'bad-gas',
    message('gas-not-understood', { stated }),
    message('expect-gas'),
    message(next),
  );
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
    const mix = { symbol: right, composition: complete_ };
    throw refusal(
      'contradictory-gas',
      message('gas-against-symbol', { stated, symbol, mix }),
      message('expect-agreement'),
      message('give-mix-or-symbol', { symbol: right }),
    );
  }
  return fromComposition(stated, complete_, null);
}

/** 15 % and above in second place is CO2 in every shop; below, oxygen mixes are sold as well. */
function fromBarePair(stated: string, [base, second]: readonly number[]): Gas {
  if (base === undefined || second === undefined || base < second) {
    throw ambiguous(stated, [
      { written: `Ar+${base ?? 0}CO2`, is: 'argon-co2' },
      { written: `Ar+${second ?? 0}CO2`, is: 'argon-last' },
      { written: `${second ?? 0}He+${base ?? 0}Ar`, is: 'helium-argon' },
    ]);
  }
  if (second < 8) {
    throw ambiguous(stated, [
      { written: `Ar+${second}CO2`, is: 'argon-co2' },
      { written: `Ar+${second}O2`, is: 'argon-oxygen' },
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
    throw refusal(
      'bad-gas',
      message('gas-shares-open', { stated }),
      message('expect-shares'),
      message('write-like-mix'),
    );
  }
  if (open.length === 0 ? Math.abs(rest) > 0.51 : rest <= 0) {
    throw refusal(
      'bad-gas',
      message('gas-parts-sum', { stated, percent: sum }),
      message('expect-sum'),
      message('check-numbers'),
    );
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

function ambiguous(stated: string, readings: GasReading[]): ArcError {
  return refusal(
    'ambiguous-gas',
    message('gas-ambiguous', { stated, readings }),
    message('expect-one-meaning'),
    message('write-one-of', { written: readings.map(({ written }) => written) }),
  );
}
