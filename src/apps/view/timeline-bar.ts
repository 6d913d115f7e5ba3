import type { Result } from '../../analysis/result/index.js';
import { MODES } from '../../core/index.js';
import type { Look } from './layout.js';
import { MODE_WORDS, percent, sayTime } from './words.js';

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
export function timelineBar(result: Result, look: Look, rates?: EventRates): string[] {
  const durationS = result.source.durationS ?? 0;
  if (!(durationS > 0)) return [];
  const columns = Math.max(10, look.width - 14);
  const cells = Array.from({ length: columns }, (_, i) =>
    cellAt(result, (i * durationS) / columns, ((i + 1) * durationS) / columns),
  );
  const letters = cells.map((cell) => look.paint.mode(cell.mode ?? '', cell.mark)).join('');
  const heights = cells.map((cell) => (cell.mode ? bar(cell.confidence) : ' ')).join('');
  const end = sayTime(durationS);
  const line = rates && rateLine(cells, durationS / columns, rates);
  return [
    `  mode  ${letters}`,
    `  sure  ${heights}`.trimEnd(),
    ...(line ? [`  rate  ${line.bars}`.trimEnd()] : []),
    `        0 s${end.padStart(Math.max(0, columns - 3))}`,
    ...legend(cells, look),
    ...(line ? [look.paint.dim(`        rate: events a second, full height ${line.mostHz}`)] : []),
  ];
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
    const mark = segment.mode ? MODE_WORDS[segment.mode].letter : '?';
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

function legend(cells: readonly Cell[], look: Look): string[] {
  const marks = new Set(cells.map((cell) => cell.mark));
  const parts = MODES.map((mode) => `${MODE_WORDS[mode].letter} ${MODE_WORDS[mode].name}`);
  parts.push('? arc, mode not clear', '- arc, left out', '· no arc');
  const shown = parts.filter((part) => marks.has(part[0] ?? ''));
  const lines: string[] = [];
  for (const part of shown) {
    const line = lines.at(-1);
    const longer = line === undefined ? part : `${line}   ${part}`;
    if (line !== undefined && longer.length + 8 <= look.width) lines[lines.length - 1] = longer;
    else lines.push(part);
  }
  return lines.map((line) => look.paint.dim(`        ${line}`));
}

/** Shares of the judged arc time in words: `short-circuit 62 %, globular 38 %`, largest first. */
export function sayShares(shares: NonNullable<Result['shareOfArcTime']>): string {
  return Object.entries(shares)
    .filter(([, share]) => share > 0)
    .sort(([, a], [, b]) => b - a)
    .map(([name, share]) => `${nameOf(name)} ${percent(share)}`)
    .join(', ');
}

function nameOf(name: string): string {
  const mode = MODES.find((one) => one === name);
  return mode ? MODE_WORDS[mode].name : 'not clear';
}
