import type { Result } from '../../analysis/result/index.js';
import { DISTURBANCE_KINDS, type DisturbanceKind, MODES } from '../../core/index.js';
import { MODE_LETTERS } from '../../setup/index.js';
import type { Look } from './layout.js';
import { ENGLISH, type Words } from './words/index.js';

/** Events a second over time; null where none stand clear. */
export interface EventRates {
  meanHz(fromS: number, toS: number): number | null;
}

type Cell = { mark: string; mode: string | null; confidence: number };

/** A rate that is clear for less of the arc than this says little of the run. */
const SHOWN_SHARE = 1 / 3;

const BARS = '▁▂▃▄▅▆▇█';

/**
 * The run as a bar of letters (D G S P, `?` arc on but no mode named, `-` arc on but left out, `·` no
 * arc) with the confidence as the height of a second line, and the event rate as that of a third where
 * rates are given and stand clear for a third of the arc. Empty when the duration is unknown or 0.
 */
export function timelineBar(
  result: Result,
  look: Look,
  rates?: EventRates,
  words: Words = ENGLISH,
): string[] {
  const durationS = result.source.durationS ?? 0;
  if (!(durationS > 0)) return [];
  const { bar: names } = words.terminal;
  const marked = (result.arcCondition?.marks.length ?? 0) > 0;
  const label = Math.max(
    names.mode.length,
    names.sure.length,
    names.rate.length,
    marked ? names.disturbed.length : 0,
  );
  const head = (name: string): string => `  ${name.padEnd(label)}  `;
  const blank = ' '.repeat(label + 4);
  const columns = Math.max(10, look.width - label - 10);
  const cells = Array.from({ length: columns }, (_, i) =>
    cellAt(result, (i * durationS) / columns, ((i + 1) * durationS) / columns),
  );
  const disturbed = disturbances(result, columns);
  const letters = cells.map((cell) => look.paint.mode(cell.mode ?? '', cell.mark)).join('');
  const heights = cells.map((cell) => (cell.mode ? bar(cell.confidence) : ' ')).join('');
  const end = words.numbers.time(durationS);
  const line = rates && rateLine(cells, durationS / columns, rates);
  return [
    `${head(names.mode)}${letters}`,
    `${head(names.sure)}${heights}`.trimEnd(),
    ...(disturbed ? [`${head(names.disturbed)}${look.paint.warn(disturbed)}`.trimEnd()] : []),
    ...(line ? [`${head(names.rate)}${line.bars}`.trimEnd()] : []),
    `${blank}0 s${end.padStart(Math.max(0, columns - 3))}`,
    ...legend(cells, words, look).map((one) => look.paint.dim(`${blank}${one}`)),
    ...fitted(
      DISTURBANCE_KINDS.map((kind) => names.disturbances[kind]).filter((one) =>
        disturbed?.includes(one[0]!),
      ),
      look,
    ).map((one) => look.paint.dim(`${blank}${one}`)),
    ...(line ? [look.paint.dim(`${blank}${names.rateKey(line.mostHz)}`)] : []),
  ];
}

/** The first letters of the disturbances where they lie; undefined where there are none. */
const DISTURBANCE_SIGNS: Readonly<Record<DisturbanceKind, string>> = {
  'long-arc': '^',
  'current-dip': 'v',
  'long-short': '|',
  'arc-out': 'o',
  'burn-back': 'b',
};

function disturbances({ arcCondition, source }: Result, columns: number): string | undefined {
  const durationS = source.durationS ?? 0;
  if (!arcCondition || arcCondition.marks.length === 0) return undefined;
  const cells = Array.from({ length: columns }, () => ' ');
  // The rarer and the worse are drawn over the others.
  for (const kind of ['long-arc', 'current-dip', 'long-short', 'arc-out', 'burn-back'] as const)
    for (const one of arcCondition.marks) {
      if (one.kind !== kind) continue;
      const from = Math.floor((one.startS / durationS) * columns);
      const to = Math.max(from + 1, Math.ceil((one.endS / durationS) * columns));
      cells.fill(DISTURBANCE_SIGNS[kind], Math.min(from, columns - 1), to);
    }
  return cells.join('');
}

/** Rates over the judged cells, as heights below a round number. Undefined where none stands clear. */
function rateLine(cells: readonly Cell[], cellS: number, rates: EventRates) {
  const hz = cells.map(({ mark }, i) =>
    mark === '·' ? null : rates.meanHz(i * cellS, (i + 1) * cellS),
  );
  const most = Math.max(...hz.map((one) => one ?? 0));
  const shown = hz.filter((one) => one !== null).length;
  const judged = cells.filter(({ mark }) => mark !== '·').length;
  if (most === 0 || shown < SHOWN_SHARE * judged) return undefined;
  const mostHz = roundUp(most);
  return { bars: hz.map((one) => (one === null ? ' ' : bar(one / mostHz))).join(''), mostHz };
}

/** The next of 1, 2, 5, 10, 20, 50 and so on. */
function roundUp(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value));
  return ([1, 2, 5].find((step) => step * power >= value) ?? 10) * power;
}

/** The mark of the longest part within `[fromS, toS)`. */
function cellAt(result: Result, fromS: number, toS: number): Cell {
  let best: Cell = { mark: '·', mode: null, confidence: 0 };
  let longest = 0;
  const arcS = sum(result.arcStretches.map((one) => overlap(one, fromS, toS)));
  if (arcS * 2 >= toS - fromS) best = { mark: '-', mode: null, confidence: 0 };
  for (const segment of result.segments) {
    const length = overlap(segment, fromS, toS);
    if (length <= longest || length * 2 < arcS) continue;
    longest = length;
    const mark = segment.mode ? MODE_LETTERS[segment.mode] : '?';
    best = { mark, mode: segment.mode, confidence: segment.confidence };
  }
  return best;
}

function overlap(part: { startS: number; endS: number }, fromS: number, toS: number): number {
  return Math.max(0, Math.min(part.endS, toS) - Math.max(part.startS, fromS));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function bar(share: number): string {
  return BARS[Math.min(BARS.length - 1, Math.floor(share * BARS.length))] ?? ' ';
}

/** What the marks that were drawn mean, as many on a line as fit. */
function legend(cells: readonly Cell[], { mode: nameOf, terminal }: Words, look: Look): string[] {
  const { unclear, leftOut, noArc } = terminal.bar;
  const marks = new Set(cells.map((cell) => cell.mark));
  const parts = [
    ...MODES.map((mode) => `${MODE_LETTERS[mode]} ${nameOf(mode)}`),
    unclear,
    leftOut,
    noArc,
  ];
  return fitted(
    parts.filter((one) => marks.has(one[0] ?? '')),
    look,
  );
}

/** As many on a line as fit. */
function fitted(parts: readonly string[], look: Look): string[] {
  const lines: string[] = [];
  for (const part of parts) {
    const line = lines.at(-1);
    const longer = line === undefined ? part : `${line}   ${part}`;
    if (line !== undefined && longer.length + 8 <= look.width) lines[lines.length - 1] = longer;
    else lines.push(part);
  }
  return lines;
}
