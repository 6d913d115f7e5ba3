import type { processMaps } from '../../../setup/index.js';
import type { FeedScale, MapWords, NumberWords } from '../../view/index.js';
import { frame } from '../charts/frame.js';
import { el, picture, short, text } from '../charts/svg.js';
import { type Axis, edgesOf, fields, names } from './svg-fields.js';
import { mapPatterns } from './svg-patterns.js';

type MapPicture = processMaps.MapPicture;
type Spot = { voltageV: number; currentA: number };

const SIZE = { width: 360, height: 450 };
const BOX = { left: 46, right: 336, top: 34, bottom: 330 };

/** The map as a picture: fields of outcomes, paler in mixed zones, with the point, its ellipse and the wanted region. */
export function mapChart(
  map: MapPicture,
  id: string,
  numbers: NumberWords,
  feed: FeedScale,
  words: MapWords,
): string {
  const edges = edgesOf(map);
  const { svg, x, y } = frame(
    BOX,
    { from: edges.leastA, to: edges.mostA, label: words.currentAxis },
    { from: edges.leastV, to: edges.mostV, label: words.voltageAxis },
    numbers,
  );
  const at = ({ voltageV, currentA }: Spot): [number, number] => [x(currentA), y(voltageV)];
  const path = (spots: readonly Spot[], closed: boolean): string =>
    spots.map((spot, i) => `${i === 0 ? 'M' : 'L'}${at(spot).map(short).join(' ')}`).join('') +
    (closed ? 'Z' : '');
  const clip = `${id}-box`;
  const marks = [
    transition(map, x, words),
    el('path', { class: 'map-guide', d: path(map.guide, false) }),
    map.wanted.length === 0 ? '' : el('path', { class: 'map-wanted', d: path(map.wanted, true) }),
    map.point === null ? '' : el('path', { class: 'map-ellipse', d: path(map.point.edge, true) }),
    map.point === null ? '' : cross(at(map.point.at)),
    map.measured === null ? '' : dot(at(map.measured)),
  ].join('');
  const clipPath = el(
    'clipPath',
    { id: clip },
    el('rect', {
      x: BOX.left,
      y: BOX.top,
      width: BOX.right - BOX.left,
      height: BOX.bottom - BOX.top,
    }),
  );
  const clipped = (content: string): string => el('g', { 'clip-path': `url(#${clip})` }, content);
  return picture(
    SIZE,
    { id, title: words.title, description: words.description },
    el('defs', {}, mapPatterns(id) + clipPath) +
      clipped(fields(map, id, x, y)) +
      svg +
      names(map, x, y, words) +
      clipped(marks) +
      feeds(map, x, feed, words, numbers) +
      key(map, words),
  );
}

function transition({ transitionA }: MapPicture, x: Axis, { transition }: MapWords): string {
  if (transitionA === null) return '';
  const at = x(transitionA.best);
  return (
    el('line', { class: 'map-transition', x1: at, x2: at, y1: BOX.top, y2: BOX.bottom }) +
    text(at + 4, BOX.bottom - 7, transition, { class: 'zone-name' })
  );
}

function cross([cx, cy]: [number, number]): string {
  return el('path', {
    class: 'run-cross',
    d: `M${short(cx - 7)} ${short(cy)}h14M${short(cx)} ${short(cy - 7)}v14`,
  });
}

const dot = ([cx, cy]: [number, number]): string =>
  el('circle', { class: 'map-measured', cx, cy, r: 6 });

/** Wire feed under the current that it draws. */
function feeds(
  map: MapPicture,
  x: Axis,
  { unit, factor, digits }: FeedScale,
  words: MapWords,
  numbers: NumberWords,
): string {
  const every = Math.max(1, Math.round(map.currentA.length / 6));
  const ticks = map.feedMPerMin.map((feed, i) =>
    feed === null || i % every !== Math.floor(every / 2)
      ? ''
      : text(
          x(map.currentA[i]!),
          BOX.bottom + 50,
          numbers.decimal((feed * factor).toFixed(digits)),
          {
            class: 'tick',
            'text-anchor': 'middle',
          },
        ),
  );
  if (map.feedMPerMin.every((feed) => feed === null)) return '';
  const label = text((BOX.left + BOX.right) / 2, BOX.bottom + 66, words.feedAxis(unit), {
    class: 'label',
    'text-anchor': 'middle',
  });
  return ticks.join('') + label;
}

/** What the marks mean, below the scales. */
function key({ point, measured, wanted }: MapPicture, words: MapWords): string {
  const parts: [string, string][] = [];
  if (point !== null) parts.push([cross([0, 0]), words.stated]);
  if (measured !== null) parts.push([dot([0, 0]), words.measured]);
  if (wanted.length > 0)
    parts.push([el('path', { class: 'map-wanted', d: 'M-8 -5H8V5H-8Z' }), words.wanted]);
  parts.push([el('path', { class: 'map-guide', d: 'M-9 4L9 -4' }), words.guide]);
  let [left, top] = [BOX.left - 26, BOX.bottom + 86];
  return parts
    .map(([mark, said]) => {
      const width = said.length * 7 + 36;
      if (left > BOX.left && left + width > SIZE.width) [left, top] = [BOX.left - 26, top + 20];
      const place = `translate(${short(left + 10)} ${short(top)})`;
      const drawn =
        el('g', { transform: place }, mark) + text(left + 24, top + 4, said, { class: 'label' });
      left += width;
      return drawn;
    })
    .join('');
}
