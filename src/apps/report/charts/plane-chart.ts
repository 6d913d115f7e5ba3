import type { Plane } from '../../view/evidence/index.js';
import type { PictureWords } from '../../view/index.js';
import { frame } from './frame.js';
import { SHAPE, SHAPE_BOX, sum } from './shape-charts.js';
import { el, picture, short, text } from './svg.js';

/** Voltage over current: each phase of the arc has its own mark, larger where more time is spent. */
export function planeChart(plane: Plane, id: string, words: PictureWords): string {
  const { columns, rows } = limits(plane);
  const { svg, x, y } = frame(
    SHAPE_BOX,
    { from: 0, to: columns * plane.widthA, label: words.shape.currentAxis },
    { from: 0, to: rows * plane.heightV, label: words.shape.voltageAxis },
    words.numbers,
  );
  const largest = Math.min((x(plane.widthA) - x(0)) / 2, (y(0) - y(plane.heightV)) / 2);
  const most = plane.phases.reduce(
    (top, { counts }) => counts.reduce((a, b) => Math.max(a, b), top),
    1,
  );
  const groups = plane.phases.map(({ name, counts }) => {
    let path = '';
    counts.forEach((count, k) => {
      const share = Math.log1p(count) / Math.log1p(most);
      if (count === 0 || share < 0.15) return;
      const column = k % plane.columns;
      const row = Math.floor(k / plane.columns);
      if (column >= columns || row >= rows) return;
      const at = { x: x((column + 0.5) * plane.widthA), y: y((row + 0.5) * plane.heightV) };
      path += shapeOf(name, at, Math.max(0.8, share * largest * 1.15));
    });
    return el('path', { class: `phase phase-${name.replaceAll(' ', '-')}`, d: path });
  });
  const total = plane.phases.reduce((all, { counts }) => all + sum(counts), 0);
  const parts = plane.phases.map(
    ({ name, counts }) => `${words.name(name)} ${words.numbers.percent(sum(counts) / total)}`,
  );
  return picture(
    SHAPE,
    {
      id,
      title: words.titles.plane,
      description: words.shape.planeDescription(parts),
    },
    svg + groups.join('') + key(plane, words),
  );
}

type PhaseName = Plane['phases'][number]['name'];

/** Arc: circle; short circuit: square; just after: upright triangle. */
function shapeOf(name: PhaseName, at: { x: number; y: number }, r: number): string {
  const [cx, cy] = [short(at.x), short(at.y)];
  const d = short(2 * r);
  if (name === 'short circuit') return `M${short(at.x - r)} ${short(at.y - r)}h${d}v${d}h-${d}Z`;
  if (name === 'just after')
    return `M${cx} ${short(at.y - r)}L${short(at.x + r)} ${short(at.y + r)}L${short(at.x - r)} ${short(at.y + r)}Z`;
  return `M${short(at.x - r)} ${cy}a${short(r)} ${short(r)} 0 1 0 ${d} 0a${short(r)} ${short(r)} 0 1 0 -${d} 0Z`;
}

function key({ phases }: Plane, words: PictureWords): string {
  let x = SHAPE_BOX.right;
  return phases
    .toReversed()
    .map(({ name }) => {
      const said = words.name(name);
      x -= said.length * 7.2 + 24;
      const mark = shapeOf(name, { x: x + 5, y: 16 }, 4.5);
      return (
        el('path', { class: `phase phase-${name.replaceAll(' ', '-')}`, d: mark }) +
        text(x + 14, 20, said, { class: 'label' })
      );
    })
    .join('');
}

/** Columns and rows up to the last that holds anything, with one to spare. */
function limits(plane: Plane): { columns: number; rows: number } {
  let columns = 10;
  let rows = 20;
  for (const { counts } of plane.phases)
    counts.forEach((count, k) => {
      if (count === 0) return;
      columns = Math.max(columns, (k % plane.columns) + 2);
      rows = Math.max(rows, Math.floor(k / plane.columns) + 2);
    });
  return { columns: Math.min(columns, plane.columns), rows: Math.min(rows, plane.rows) };
}
