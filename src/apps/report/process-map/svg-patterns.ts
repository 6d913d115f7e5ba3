import type { processMaps } from '../../../setup/index.js';
import { MAP_HUES } from '../../view/index.js';
import { el } from '../charts/svg.js';

type Outcome = processMaps.Outcome;

const ground = (opacity: number): string =>
  el('rect', { class: 'map-ground', width: 12, height: 12, 'fill-opacity': String(opacity) });

const dots = (...places: readonly [number, number, number][]): string =>
  places.map(([cx, cy, r]) => el('circle', { class: 'ink', cx, cy, r })).join('');

/** Plain short-circuit, dots globular, fine grain spray, bars for shorts within it, hatching for faults. */
const MOTIFS: Readonly<Record<Outcome, string>> = {
  stubbing: ground(0.3) + el('path', { class: 'ink-line', d: 'M0 12L12 0M-3 3L3 -3M9 15L15 9' }),
  dip: ground(0.6),
  globular: ground(0.3) + dots([3, 3, 2], [9, 9, 2]),
  'spray-with-shorts': ground(0.3) + el('path', { class: 'ink-line', d: 'M3 0V12M9 0V12' }),
  spray:
    ground(0.3) +
    dots([2, 2, 0.8], [6, 5, 0.8], [10, 2, 0.8], [2, 8, 0.8], [6, 11, 0.8], [10, 8, 0.8]),
  'long-arc': ground(0.12) + el('path', { class: 'ink-line', d: 'M0 6H12' }),
  'burn-back': ground(0.3) + el('path', { class: 'ink-line', d: 'M0 0L12 12M9 -3L15 3M-3 9L3 15' }),
};

/** Fill patterns of a map, named after the picture so that two maps on a page do not share them. */
export function mapPatterns(id: string): string {
  return (Object.keys(MOTIFS) as Outcome[])
    .map((outcome) =>
      el(
        'pattern',
        {
          id: `${id}-${outcome}`,
          class: `mode-${MAP_HUES[outcome]}`,
          width: 12,
          height: 12,
          patternUnits: 'userSpaceOnUse',
        },
        MOTIFS[outcome],
      ),
    )
    .join('');
}
