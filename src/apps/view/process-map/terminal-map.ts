import { type processMaps, rangeText } from '../../../setup/index.js';
import { type Look, wrap } from '../layout.js';
import { MAP_HUES } from './hues.js';
import type { MapWords } from './words.js';

type MapPicture = processMaps.MapPicture;
type Outcome = processMaps.Outcome;

/** Letters of ISO 4063 where there is one; signs for faults and for spray with shorts. */
const MARKS: Readonly<Record<Outcome, string>> = {
  stubbing: '_',
  dip: 'D',
  globular: 'G',
  'spray-with-shorts': '+',
  spray: 'S',
  'long-arc': '^',
  'burn-back': '!',
};

/** How feeds are shown under the map. */
export interface FeedScale {
  unit: string;
  /** m/min to the unit shown. */
  factor: number;
  digits: number;
}

/** The map in letters, volts down and amperes across, with the feed under them. */
export function mapInLetters(
  picture: MapPicture,
  look: Look,
  feed: FeedScale,
  words: MapWords,
): string[] {
  const { bold, dim } = look.paint;
  const rows = picture.voltsV.map((volts, row) => {
    const cells = picture.cells[row]!.map((cell, column) => {
      const mark = MARKS[cell.outcome];
      const shown = cell.second === null ? mark : mark.toLowerCase();
      const [left, right] = bracketsAt(picture, row, column);
      const body = look.paint.mode(MAP_HUES[cell.outcome], shown);
      return `${left}${body}${right}`;
    });
    return `  ${volts.toFixed(0).padStart(3)} ${cells.join('')}`.trimEnd();
  });
  return [
    bold(`${words.voltageAxis} ↓   ${words.currentAxis} →`),
    ...rows,
    scaleLine(
      picture.currentA.map((amps) => amps.toFixed(0)),
      'A',
    ),
    scaleLine(
      picture.feedMPerMin.map((one) => feedText(one, feed)),
      feed.unit,
    ),
    ...legend(picture, look, words).map(dim),
  ];
}

function feedText(mPerMin: number | null, { factor, digits }: FeedScale): string {
  return mPerMin === null ? '' : (mPerMin * factor).toFixed(digits);
}

/** Every second column is named, so that numbers do not touch. */
function scaleLine(values: readonly string[], unit: string): string {
  const cells = values.map((value, i) => (i % 2 === 0 ? value.padEnd(6) : ''));
  return `      ${cells.join('')} ${unit}`.trimEnd();
}

function bracketsAt(picture: MapPicture, row: number, column: number): readonly [string, string] {
  const { measured, point, wanted } = picture;
  if (measured !== null && isAt(picture, measured, row, column)) return ['(', ')'];
  if (
    point !== null &&
    (isAt(picture, point.at, row, column) || inside(picture, point.edge, row, column))
  ) {
    return ['[', ']'];
  }
  return inside(picture, wanted, row, column) ? ['·', '·'] : [' ', ' '];
}

interface Spot {
  voltageV: number;
  currentA: number;
}

function isAt({ voltsV, currentA }: MapPicture, at: Spot, row: number, column: number): boolean {
  const halfV = Math.abs(voltsV[0]! - voltsV[1]!) / 2;
  const halfA = (currentA[1]! - currentA[0]!) / 2;
  return (
    Math.abs(at.voltageV - voltsV[row]!) <= halfV &&
    Math.abs(at.currentA - currentA[column]!) <= halfA
  );
}

/** Even-odd rule: is the middle of the cell within a closed edge? */
function inside(
  { voltsV, currentA }: MapPicture,
  edge: readonly Spot[],
  row: number,
  column: number,
): boolean {
  const [v, a] = [voltsV[row]!, currentA[column]!];
  let within = false;
  edge.forEach((one, i) => {
    const next = edge[(i + 1) % edge.length]!;
    if (one.voltageV > v === next.voltageV > v) return;
    const cross =
      one.currentA +
      ((v - one.voltageV) / (next.voltageV - one.voltageV)) * (next.currentA - one.currentA);
    if (a < cross) within = !within;
  });
  return within;
}

function legend(picture: MapPicture, look: Look, words: MapWords): string[] {
  const seen = new Set(picture.cells.flat().map((cell) => cell.outcome));
  const names = (Object.keys(MARKS) as Outcome[])
    .filter((one) => seen.has(one))
    .map((one) => `${MARKS[one]} ${words.outcome[one]}`);
  const { transitionA, point, measured, wanted } = picture;
  const parts = [
    ...names,
    words.marks.unsure,
    ...(point === null ? [] : [words.marks.stated]),
    ...(measured === null ? [] : [words.marks.measured]),
    ...(wanted.length === 0 ? [] : [words.marks.wanted]),
    ...(transitionA === null
      ? []
      : [`${words.transition}: ${rangeText({ min: transitionA.from, max: transitionA.to }, 0)} A`]),
  ];
  return wrap(parts.join('; '), look.width, 2);
}
