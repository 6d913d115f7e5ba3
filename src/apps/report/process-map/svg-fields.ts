import type { processMaps } from '../../../setup/index.js';
import type { MapWords } from '../../view/index.js';
import { MAP_HUES } from '../../view/index.js';
import { el, short, text } from '../charts/svg.js';

type MapPicture = processMaps.MapPicture;
type Outcome = processMaps.Outcome;

/** Outer edges of the grid and the steps between its middles. */
export function edgesOf({ currentA, voltsV }: MapPicture) {
  const stepA = currentA[1]! - currentA[0]!;
  const stepV = voltsV[0]! - voltsV[1]!;
  return {
    leastA: currentA[0]! - stepA / 2,
    mostA: currentA.at(-1)! + stepA / 2,
    leastV: voltsV.at(-1)! - stepV / 2,
    mostV: voltsV[0]! + stepV / 2,
    stepA,
    stepV,
  };
}

export type Axis = (value: number) => number;

/** One path for each outcome and strength: runs of equal cells in a column become one rectangle. */
export function fields(map: MapPicture, id: string, x: Axis, y: Axis): string {
  const { stepA, stepV } = edgesOf(map);
  const paths = new Map<string, string>();
  map.currentA.forEach((amps, column) => {
    const [left, right] = [x(amps - stepA / 2), x(amps + stepA / 2)];
    let start = 0;
    for (let row = 1; row <= map.voltsV.length; row++) {
      const name = keyOf(map.cells[start]![column]!);
      if (row < map.voltsV.length && keyOf(map.cells[row]![column]!) === name) continue;
      const top = y(map.voltsV[start]! + stepV / 2);
      const bottom = y(map.voltsV[row - 1]! - stepV / 2);
      const rectangle = `M${short(left)} ${short(top)}H${short(right)}V${short(bottom)}H${short(left)}Z`;
      paths.set(name, (paths.get(name) ?? '') + rectangle);
      start = row;
    }
  });
  return [...paths]
    .map(([name, d]) => {
      const [outcome, strength] = name.split(' ') as [Outcome, string];
      const fill = `url(#${id}-${outcome})`;
      const opacity = strength === 'mixed' ? 0.45 : 1;
      return el('path', { class: `mode-${MAP_HUES[outcome]}`, d, fill, opacity: String(opacity) });
    })
    .join('');
}

const keyOf = (cell: MapPicture['cells'][number][number]): string =>
  `${cell.outcome} ${cell.second === null ? 'clear' : 'mixed'}`;

/** The name of each field, in the middle of its clearest part; too small a field has none. */
export function names(map: MapPicture, x: Axis, y: Axis, words: MapWords): string {
  const edges = edgesOf(map);
  const outcomes = [...new Set(map.cells.flat().map((cell) => cell.outcome))];
  const placed: { x: number; y: number; half: number }[] = [];
  return outcomes
    .map((outcome) => {
      const large = (spots: readonly unknown[]): boolean =>
        spots.length >= map.cells.flat().length * 0.012;
      const clear = spotsOf(map, outcome, true);
      // A field that is a mixed zone all over is named as well.
      const spots = large(clear) ? clear : spotsOf(map, outcome, false);
      if (!large(spots)) return '';
      const half = words.outcome[outcome].length * 4.2;
      const apart = ({ a, v }: Spot): boolean =>
        placed.every(
          (one) => Math.abs(one.x - x(a)) > one.half + half || Math.abs(one.y - y(v)) > 15,
        );
      const fits = spots.filter(
        (spot) =>
          x(spot.a) - half > x(edges.leastA) && x(spot.a) + half < x(edges.mostA) && apart(spot),
      );
      const best = widest(map, outcome, fits.length > 0 ? fits : spots, spots === clear);
      placed.push({ x: x(best.a), y: y(best.v), half });
      return text(x(best.a), y(best.v) + 4, words.outcome[outcome], {
        class: 'zone-name map-name',
        'text-anchor': 'middle',
      });
    })
    .join('');
}

type Spot = { v: number; a: number; row: number; column: number };

/** Where an outcome is the likeliest and no mark stands; `clear`: with none near to it. */
function spotsOf(map: MapPicture, outcome: Outcome, clear: boolean): Spot[] {
  return map.voltsV.flatMap((v, row) =>
    map.currentA.flatMap((a, column) => {
      const cell = map.cells[row]![column]!;
      const free = cell.outcome === outcome && (!clear || cell.second === null);
      return free && !nearPoint(map, v, a) ? [{ v, a, row, column }] : [];
    }),
  );
}

/** Names keep off the setting and the measured place. */
function nearPoint({ point, measured, currentA }: MapPicture, v: number, a: number): boolean {
  const span = currentA.at(-1)! - currentA[0]!;
  return [point?.at, measured].some(
    (one) => one && Math.abs(one.currentA - a) < 0.14 * span && Math.abs(one.voltageV - v) < 1.6,
  );
}

/** The spot with most room around it: the name has to fit. */
function widest({ cells }: MapPicture, outcome: Outcome, spots: readonly Spot[], clear: boolean) {
  const same = (row: number, column: number): boolean =>
    cells[row]?.[column]?.outcome === outcome && (!clear || cells[row][column].second === null);
  const room = ({ row, column }: { row: number; column: number }): number => {
    let [across, down] = [0, 0];
    while (same(row, column - across - 1) && same(row, column + across + 1)) across++;
    while (same(row - down - 1, column) && same(row + down + 1, column)) down++;
    return Math.min(across, 3 * down);
  };
  return spots.reduce((best, one) => (room(one) > room(best) ? one : best));
}
