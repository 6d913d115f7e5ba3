import type { AverageShort, LevelCounts } from '../../view/evidence/index.js';
import type { PictureWords } from '../../view/index.js';
import { frame } from './frame.js';
import { el, hint, picture, short, text } from './svg.js';

/** Size of the pictures of shape, in pixels: they fill a phone, and stand side by side on wider screens. */
export const SHAPE = { width: 360, height: 300 };
export const SHAPE_BOX = { left: 50, right: 338, top: 48, bottom: 252 };

/** Share of the time at each voltage: shorts and arc as bars of different fill. */
export function levelsChart(
  levels: LevelCounts,
  id: string,
  words: PictureWords,
  shared?: { most: number; span: [number, number] },
): string {
  const total = sum(levels.arc) + sum(levels.short);
  const [from, to] = shared?.span ?? levelsSpan(levels);
  const { svg, x, y } = frame(
    SHAPE_BOX,
    { from, to, label: words.shape.voltageAxis },
    {
      from: 0,
      to: shared?.most ?? levelsMost(levels),
      label: words.shape.levelsAxis,
      root: true,
    },
    words.numbers,
  );
  const bars: string[] = [];
  levels.arc.forEach((arc, k) => {
    const short = levels.short[k]!;
    if (arc + short === 0) return;
    const at = levels.fromValue + k * levels.width;
    if (at < from || at >= to) return;
    const said = sayLevel(at, at + levels.width, { arc, short, total }, words);
    const bar = (share: number, kind: string) =>
      share === 0
        ? ''
        : el('rect', {
            class: `bar ${kind}`,
            x: x(at) + 0.4,
            width: x(at + levels.width) - x(at) - 0.8,
            y: y(100 * share),
            height: y(0) - y(100 * share),
          });
    // Not stacked, which a root scale would distort: the smaller stands before the larger.
    const both = [bar(arc / total, 'bar-arc'), bar(short / total, 'bar-short')];
    bars.push(el('g', {}, hint(said) + (short > arc ? both.toReversed() : both).join('')));
  });
  const key = legend([
    ['bar-short', words.shape.levelsKey[0]],
    ['bar-arc', words.shape.levelsKey[1]],
  ]);
  return picture(
    SHAPE,
    { id, title: words.titles.levels, description: sayLevels(levels, words) },
    svg + bars.join('') + key,
  );
}

function sayLevel(
  from: number,
  to: number,
  { arc, short, total }: { arc: number; short: number; total: number },
  { shape, numbers: { decimal, percent } }: PictureWords,
): string {
  const span = [decimal(String(from)), decimal(String(to))] as const;
  return shape.levelsHint(...span, percent((arc + short) / total), percent(short / (arc + short)));
}

export function levelsMost(levels: LevelCounts): number {
  const total = sum(levels.arc) + sum(levels.short);
  return (
    105 * levels.arc.reduce((a, one, k) => Math.max(a, one / total, levels.short[k]! / total), 0)
  );
}

export function levelsSpan(levels: LevelCounts): [number, number] {
  const total = sum(levels.arc) + sum(levels.short);
  // Bins that hold less than a thousandth in all are left out at either end.
  let from = 0;
  let to = levels.arc.length - 1;
  const at = (k: number) => levels.arc[k]! + levels.short[k]!;
  for (let mass = at(from); mass < 0.0005 * total && from < to; mass += at(++from));
  for (let mass = at(to); mass < 0.0005 * total && to > from; mass += at(--to));
  const low = levels.fromValue + (from - 2) * levels.width;
  const high = levels.fromValue + (to + 3) * levels.width;
  return [Math.min(0, Math.floor(low)), Math.max(10, Math.ceil(high))];
}

function sayLevels(levels: LevelCounts, words: PictureWords): string {
  const arc = sum(levels.arc);
  const short = sum(levels.short);
  return words.shape.levelsDescription(words.numbers.percent(short / (arc + short)));
}

/** Shorts laid over each other: middle curve and the band that holds eight of ten. */
export function averageShortChart(
  average: AverageShort,
  index: number,
  id: string,
  words: PictureWords,
  shared?: [number, number],
): string {
  const { name, unit, curves } = average.quantities[index]!;
  const top = shared?.[1] ?? 1.05 * curves.high.reduce((a, b) => Math.max(a, b), 1);
  const bottom = shared?.[0] ?? curves.low.reduce((a, b) => Math.min(a, b), 0);
  const endMs = 1000 * (average.startS + curves.middle.length * average.stepS);
  const { svg, x, y } = frame(
    SHAPE_BOX,
    { from: 1000 * average.startS, to: endMs, label: words.shape.shortAxis },
    { from: bottom, to: top, label: `${words.name(name)}, ${words.name(unit)}` },
    words.numbers,
  );
  const point = (curve: Float64Array, k: number) =>
    `${short(x(1000 * (average.startS + k * average.stepS)))} ${short(y(curve[k]!))}`;
  const every = Math.max(1, Math.floor(curves.middle.length / 300));
  const ks = Array.from({ length: Math.ceil(curves.middle.length / every) }, (_, k) => k * every);
  const band = `M${ks.map((k) => point(curves.high, k)).join('L')}L${ks
    .toReversed()
    .map((k) => point(curves.low, k))
    .join('L')}Z`;
  const line = `M${ks.map((k) => point(curves.middle, k)).join('L')}`;
  return picture(
    SHAPE,
    {
      id,
      title: words.titles[`short-${name}`],
      description: words.shape.shortDescription(average.count),
    },
    [
      svg,
      el('line', {
        class: 'reference',
        x1: x(0),
        x2: x(0),
        y1: SHAPE_BOX.top,
        y2: SHAPE_BOX.bottom,
      }),
      el('path', { class: 'spread', d: band }),
      el('path', { class: `curve trace-${name}`, d: line }),
      text(SHAPE_BOX.right, 20, words.shape.shortKey(average.count), {
        class: 'label',
        'text-anchor': 'end',
      }),
    ].join(''),
  );
}

/** Key of fills, top right. */
export function legend(entries: readonly (readonly [cls: string, words: string])[]): string {
  let x = SHAPE_BOX.right;
  return entries
    .map(([cls, words]) => {
      x -= words.length * 7 + 24;
      return (
        el('rect', { class: `bar ${cls}`, x, y: 11, width: 11, height: 11 }) +
        text(x + 15, 20, words, { class: 'label' })
      );
    })
    .join('');
}

export function sum(values: Float64Array): number {
  return values.reduce((total, one) => total + one, 0);
}
