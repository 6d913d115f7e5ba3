const RATE =
  /(sampl(e|ing)[ _-]*(rate|freq\w*)|samples? *(per|\/) *s\w*|abtast(rate|frequenz)|fr[ée]quence d.[ée]chantillonnage|frecuencia de muestreo|采样(率|频率)|\bfs\b)/i;
const INTERVAL =
  /(sampl(e|ing)[ _-]*(interval|period|time)|\bx[ _-]?incr\w*|\bdt\b|delta[ _-]?t\b|abtast(intervall|zeit)|p[ée]riode d.[ée]chantillonnage|采样间隔)/i;
const VALUE =
  /^[^\d+-]*([+-]?\d+(?:[.,]\d+)?(?:[eE][+-]?\d+)?)\s*["\])]?\s*[,;\t ]*\s*"?([^\s",;\])]*)/;

/** Characters of a line above the table that are looked at. */
const LONGEST_LINE = 1000;

const RATE_UNITS: [RegExp, number][] = [
  [/^(m(hz|s\/s|sps))/i, 1e6],
  [/^(k(hz|s\/s|sps))/i, 1e3],
  [/^(hz|s\/s|sps|1\/s)?$/i, 1],
];
const INTERVAL_UNITS: [RegExp, number][] = [
  [/^(ms|msec)$/i, 1e-3],
  [/^([uµμ]s|usec)$/i, 1e-6],
  [/^ns$/i, 1e-9],
  [/^(s|sec|second|seconds|sek)?$/i, 1],
];

/** A rate (or an interval) written in the lines above the table, with the line it stood in. */
export function readStatedRate(
  lines: readonly string[],
): { rateHz: number; from: string } | undefined {
  for (const line of lines) {
    const rate = valueAfter(line, RATE, RATE_UNITS);
    if (rate !== undefined) return { rateHz: rate, from: line.trim().slice(0, 80) };
    const interval = valueAfter(line, INTERVAL, INTERVAL_UNITS);
    if (interval !== undefined) return { rateHz: 1 / interval, from: line.trim().slice(0, 80) };
  }
  return undefined;
}

function valueAfter(line: string, key: RegExp, units: typeof RATE_UNITS): number | undefined {
  const found = key.exec(line.slice(0, LONGEST_LINE));
  if (found === null) return undefined;
  const rest = line.slice(found.index + found[0].length, LONGEST_LINE);
  const value = VALUE.exec(rest);
  if (value?.[1] === undefined) return undefined;
  // The unit may also stand in brackets between key and value: `Sample rate [kHz]; 10`.
  const bracket = /^\s*[[(]\s*([^\])]+?)\s*[\])]/.exec(rest)?.[1];
  const unit = units.find(([pattern]) => pattern.test(bracket ?? value[2] ?? ''))?.[1];
  const number = Number(value[1].replace(',', '.'));
  return unit !== undefined && number > 0 && Number.isFinite(number) ? number * unit : undefined;
}
