import {
  type ScaleLinear,
  type ScaleLogarithmic,
  type ScalePower,
  scaleLinear,
  scaleLog,
  scaleSqrt,
} from 'd3-scale';
import type { NumberWords } from '../../view/index.js';
import { el, text } from './svg.js';

export type Scale =
  | ScaleLinear<number, number>
  | ScaleLogarithmic<number, number>
  | ScalePower<number, number>;

/** The box in which data is drawn, in units of the picture. */
export interface Box {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

export interface Axis {
  from: number;
  to: number;
  log?: boolean;
  /** Square-root scale, which keeps small shares visible beside large ones. */
  root?: boolean;
  label: string;
}

/** A picture's axes: scales, and the text of their lines, ticks and names. */
export interface Frame {
  box: Box;
  x: Scale;
  y: Scale;
  svg: string;
}

/** Draws two axes around a box. Ticks are round numbers; grid lines run across. */
export function frame(box: Box, x: Axis, y: Axis, numbers: NumberWords): Frame {
  const xScale = scaleOf(x, [box.left, box.right]);
  const yScale = scaleOf(y, [box.bottom, box.top]);
  const svg = [
    ...ticksOf(xScale, x, (box.right - box.left) / 75).map((value) => {
      const at = xScale(value);
      return (
        el('line', { class: 'grid', x1: at, x2: at, y1: box.top, y2: box.bottom }) +
        text(at, box.bottom + 15, x.log ? sayPower(value, numbers) : say(value, numbers), {
          class: 'tick',
          'text-anchor': 'middle',
        })
      );
    }),
    ...ticksOf(yScale, y, (box.bottom - box.top) / 28).map((value) => {
      const at = yScale(value);
      return (
        el('line', { class: 'grid', x1: box.left, x2: box.right, y1: at, y2: at }) +
        text(box.left - 6, at + 4, y.log ? sayPower(value, numbers) : say(value, numbers), {
          class: 'tick',
          'text-anchor': 'end',
        })
      );
    }),
    text((box.left + box.right) / 2, box.bottom + 32, x.label, {
      class: 'label',
      'text-anchor': 'middle',
    }),
    text(box.left - 40, box.top - 8, y.label, { class: 'label' }),
    el('line', {
      class: 'axis',
      x1: box.left,
      x2: box.right,
      y1: box.bottom,
      y2: box.bottom,
    }),
  ];
  return { box, x: xScale, y: yScale, svg: svg.join('') };
}

/** Linear, or logarithmic or by root where the axis says so. */
export function scaleOf(axis: Omit<Axis, 'label'>, range: [number, number]): Scale {
  const make = axis.log ? scaleLog() : axis.root ? scaleSqrt() : scaleLinear();
  return make.domain([axis.from, axis.to]).range(range);
}

/** Round tick values, about `count` of them; powers of ten with halves and fifths on a logarithmic axis. */
export function ticksOf(scale: Scale, axis: Omit<Axis, 'label'>, count: number): number[] {
  if (axis.root)
    return [0.2, 1, 5, 10, 20, 40, 60, 80].filter((one) => one < axis.to && one > axis.to / 60);
  if (!axis.log) return scale.ticks(Math.max(2, Math.floor(count)));
  const ticks: number[] = [];
  const decades = Math.log10(axis.to / axis.from);
  const steps = decades * 3 > count ? [1] : [1, 2, 5];
  for (let power = Math.floor(Math.log10(axis.from)); power <= Math.log10(axis.to); power++)
    for (const step of steps) {
      const value = step * 10 ** power;
      if (value >= axis.from * 0.999 && value <= axis.to * 1.001) ticks.push(value);
    }
  return ticks;
}

/** `0.01`, `10⁻⁵`: short on either side of the everyday numbers. */
function sayPower(value: number, numbers: NumberWords): string {
  const power = Math.round(Math.log10(value));
  if (power >= -2 && power <= 4) return say(value, numbers);
  const digits = String(power)
    .replace('-', '⁻')
    .replace(/\d/g, (one) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(one)]!);
  return `10${digits}`;
}

/** A tick in words: a true minus, no long tails. */
export function say(value: number, { figure }: NumberWords): string {
  return value < 0 ? `−${figure(-value)}` : figure(value);
}
