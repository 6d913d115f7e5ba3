import type { Expectation, Setup } from '../../../setup/index.js';
import { type Look, type Words, wrap } from '../../view/index.js';

const CELL = 5;

/** The map over feeder volts and wire feed; a frame marks what is stated. Empty without a diameter. */
export function mapLines(
  { map, point }: Expectation,
  setup: Setup,
  look: Look,
  { expect }: Words,
): string[] {
  if (map === null) return [];
  const { bold, dim } = look.paint;
  const feed = nearest(map.feedsMPerMin, setup.wireFeedMPerMin);
  const rows = map.voltsV.map((volts, row) => {
    const inside = point.voltageV !== null && within(map.voltsV, row, point.voltageV);
    const cells = map.cells[row]!.map((letters, column) => {
      const marked = inside && column === feed;
      return (marked ? `[${letters}]` : ` ${letters} `).padEnd(CELL);
    });
    return `  ${String(volts).padStart(3)} ${cells.join('')}`.trimEnd();
  });
  const feeds = map.feedsMPerMin.map((one) => ` ${one}`.padEnd(CELL)).join('');
  return [
    '',
    bold(expect.map),
    ...rows,
    `      ${feeds}`.trimEnd(),
    ...wrap(expect.mapKey, look.width, 2).map(dim),
  ];
}

function nearest(values: readonly number[], wanted: number | null): number {
  if (wanted === null) return -1;
  return values.reduce(
    (best, value, i) => (Math.abs(value - wanted) < Math.abs(values[best]! - wanted) ? i : best),
    0,
  );
}

/** A row stands for the volts halfway to its neighbours. */
function within(rows: readonly number[], row: number, { min, max }: { min: number; max: number }) {
  const here = rows[row]!;
  const top = row === 0 ? here + 1 : (here + rows[row - 1]!) / 2;
  const bottom = row === rows.length - 1 ? here - 1 : (here + rows[row + 1]!) / 2;
  return min < top && max >= bottom;
}
