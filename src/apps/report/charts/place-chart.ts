import { inSystem, unitOf } from '../../../core/index.js';
import { MODE_LETTERS } from '../../../setup/index.js';
import type { Placement } from '../../view/evidence/index.js';
import type { Words } from '../../view/index.js';
import { type Frame, frame } from './frame.js';
import { modeClass, modeFill } from './mode-marks.js';
import { sayPlace, sayWindow } from './place-said.js';
import { el, hint, picture, text } from './svg.js';

const SIZE = { width: 360, height: 450 };
const BOX = { left: 46, right: 336, top: 34, bottom: 360 };

/**
 * The run among published windows. Each source is an outline with the letter of its mode; where outlines
 * of different modes overlap, the sources disagree. Hatched zones are where the boundaries are disputed.
 */
export function placeChart(place: Placement, id: string, words: Words): string {
  const range = limits(place);
  const axes = frame(
    BOX,
    { from: range.a[0], to: range.a[1], label: words.place.currentAxis },
    { from: range.v[0], to: range.v[1], label: words.place.voltageAxis },
    words.numbers,
  );
  return picture(
    SIZE,
    { id, title: words.titles.place, description: sayPlace(place, words) },
    [axes.svg, ...[zones, bands, run, feeds].map((part) => part(place, axes, words))].join(''),
  );
}

function limits({ bands, run }: Placement): { a: [number, number]; v: [number, number] } {
  const a = [...bands.map((one) => one.currentA), ...(run.currentA ? [run.currentA] : [])];
  const v = [...bands.map((one) => one.voltageV), ...(run.voltageV ? [run.voltageV] : [])];
  const edge = (of: number[], way: (...values: number[]) => number, fallback: number) =>
    of.length > 0 ? way(...of) : fallback;
  return {
    a: [
      Math.max(
        0,
        edge(
          a.map((one) => one.min),
          Math.min,
          50,
        ) - 20,
      ),
      edge(
        a.map((one) => one.max),
        Math.max,
        350,
      ) + 20,
    ],
    v: [
      Math.max(
        0,
        edge(
          v.map((one) => one.min),
          Math.min,
          12,
        ) - 1.5,
      ),
      edge(
        v.map((one) => one.max),
        Math.max,
        36,
      ) + 1.5,
    ],
  };
}

function zones(place: Placement, { x, y }: Frame, words: Words): string {
  const { dipZone, sprayZone, transition: name } = words.place;
  const across = (range: { min: number; max: number }, label: string) => {
    const top = y(Math.min(range.max, y.domain()[1]!));
    const height = Math.max(1, y(Math.max(range.min, y.domain()[0]!)) - top);
    return (
      el('rect', {
        class: 'zone',
        fill: 'url(#pattern-none)',
        x: BOX.left,
        y: top,
        width: BOX.right - BOX.left,
        height,
      }) +
      text(BOX.right - 6, top + Math.min(13, height - 3), label, {
        class: 'zone-name',
        'text-anchor': 'end',
      })
    );
  };
  const transition = place.transitionA;
  return [
    across(place.dipTopV, dipZone),
    place.sprayFloorV ? across(place.sprayFloorV, sprayZone) : '',
    transition
      ? el('rect', {
          class: 'zone',
          fill: 'url(#pattern-none)',
          x: x(transition.min),
          width: Math.max(1, x(transition.max) - x(transition.min)),
          y: BOX.top,
          height: BOX.bottom - BOX.top,
        }) + text(x(transition.max) + 4, BOX.bottom - 6, name, { class: 'zone-name' })
      : '',
  ].join('');
}

function bands(place: Placement, { x, y }: Frame, words: Words): string {
  return place.bands
    .map((band) => {
      const letter = MODE_LETTERS[band.mode];
      const rect = {
        x: x(band.currentA.min),
        width: Math.max(2, x(band.currentA.max) - x(band.currentA.min)),
        y: y(band.voltageV.max),
        height: Math.max(2, y(band.voltageV.min) - y(band.voltageV.max)),
      };
      return el(
        'g',
        { class: `band ${modeClass(band.mode)}` },
        [
          hint(sayWindow(band, words)),
          el('rect', { class: 'band-box', fill: modeFill(band.mode), ...rect }),
          text(rect.x + 4, rect.y + 13, letter, { class: 'band-letter' }),
        ].join(''),
      );
    })
    .join('');
}

/** A cross with the box of what is not known better; a bar where only one of the two is known. */
function run({ run: { voltageV, currentA } }: Placement, { x, y }: Frame, words: Words): string {
  const left = currentA ? x(currentA.min) : BOX.left;
  const right = currentA ? x(currentA.max) : BOX.right;
  const top = voltageV ? y(voltageV.max) : BOX.top;
  const bottom = voltageV ? y(voltageV.min) : BOX.bottom;
  const [cx, cy] = [(left + right) / 2, (top + bottom) / 2];
  return [
    el('rect', {
      class: 'run-box',
      x: left,
      y: top,
      width: Math.max(3, right - left),
      height: Math.max(3, bottom - top),
    }),
    currentA && voltageV
      ? el('path', { class: 'run-cross', d: `M${cx - 9} ${cy}h18M${cx} ${cy - 9}v18` })
      : '',
    text(Math.min(cx + 12, BOX.right - 60), Math.max(BOX.top + 12, cy - 12), words.place.thisRun, {
      class: 'run-name',
    }),
  ].join('');
}

function feeds({ feeds: scale }: Placement, { x }: Frame, words: Words): string {
  const shown = scale.filter(({ currentA }) => x(currentA) >= BOX.left && x(currentA) <= BOX.right);
  if (shown.length === 0) return '';
  const at = BOX.bottom + 52;
  return [
    el('line', { class: 'axis', x1: BOX.left, x2: BOX.right, y1: at, y2: at }),
    ...shown.map(
      ({ currentA, feedMPerMin }) =>
        el('line', { class: 'axis', x1: x(currentA), x2: x(currentA), y1: at, y2: at + 4 }) +
        text(
          x(currentA),
          at + 17,
          words.numbers.figure(Number(inSystem(feedMPerMin, 'feed', words.units).toPrecision(2))),
          {
            class: 'tick',
            'text-anchor': 'middle',
          },
        ),
    ),
    text(BOX.right, at + 31, words.place.feeds(unitOf('feed', words.units).unit), {
      class: 'label',
      'text-anchor': 'end',
    }),
  ].join('');
}
