/** What a column can be measured in. `factor` turns a value into seconds, volts or amperes. */
export interface LogUnit {
  quantity: 'time' | 'voltage' | 'current';
  factor: number;
  /** The unit in the usual spelling. */
  symbol: string;
}

const PREFIX: Record<string, number> = { n: 1e-9, u: 1e-6, m: 1e-3, '': 1, k: 1e3 };

/** Full words for a base unit, in the languages that loggers are sold in. */
const WORDS: Record<LogUnit['quantity'], RegExp> = {
  time: /^(s|sec|secs|second|seconds|sek|sekunde|sekunden|seconde|secondes|segundo|segundos|secondo|secondi|秒|с|сек)$/,
  voltage: /^(v|volt|volts|voltios|伏|伏特|в|вольт)$/,
  current: /^(a|amp|amps|ampere|amperes|ampère|ampères|amperios|安|安培|а|ампер)$/,
};
const BASE = { time: 's', voltage: 'V', current: 'A' } as const;

/** Spelled-out prefixes, longest first so that `milli` is not read as `m`. */
const PREFIX_WORDS: [RegExp, string][] = [
  [/^(micro|mikro)/, 'u'],
  [/^(milli|mili)/, 'm'],
  [/^(nano)/, 'n'],
  [/^(kilo)/, 'k'],
  [/^毫/, 'm'],
  [/^微/, 'u'],
  [/^千/, 'k'],
  [/^[numk]/, ''],
];

/** Minutes and hours, which take no prefix. */
const LONG_TIMES: Record<string, number> = { min: 60, minutes: 60, h: 3600 };

/**
 * Reads `mV`, `[kA]`, `(µs)`, `Millisekunden`, `second`; undefined for anything else, so that an
 * unknown unit is never taken for a known one. Case is ignored: a megavolt is no arc voltage.
 */
export function parseUnit(text: string): LogUnit | undefined {
  const word = text
    .trim()
    .replace(/^[[({<]+|[\])}>.]+$/g, '')
    .trim()
    .toLowerCase()
    .replace(/[µμ]/g, 'u');
  const long = Object.hasOwn(LONG_TIMES, word) ? LONG_TIMES[word] : undefined;
  if (long !== undefined) return { quantity: 'time', factor: long, symbol: word };
  return baseUnit(word, '') ?? prefixedUnit(word);
}

function prefixedUnit(word: string): LogUnit | undefined {
  for (const [pattern, letter] of PREFIX_WORDS) {
    const found = pattern.exec(word)?.[0];
    if (found === undefined || found === word) continue;
    const unit = baseUnit(word.slice(found.length), letter === '' ? found : letter);
    if (unit !== undefined) return unit;
  }
  return undefined;
}

function baseUnit(word: string, prefix: string): LogUnit | undefined {
  for (const quantity of ['time', 'voltage', 'current'] as const) {
    if (WORDS[quantity].test(word)) {
      const shown = prefix === 'u' ? 'µ' : prefix;
      return { quantity, factor: PREFIX[prefix] ?? 1, symbol: `${shown}${BASE[quantity]}` };
    }
  }
  return undefined;
}
