import { scaleLinear } from 'd3-scale';
import type { ThinnedTrace } from '../../view/evidence/index.js';
import type { NumberWords, TimePictureWords } from '../../view/index.js';
import type { TimeRun } from '../run-view.js';
import { say } from './frame.js';
import { inArc, type TrackArea, timeScale } from './mode-tracks.js';
import { el, short, text } from './svg.js';
import { tracePaths } from './thin-path.js';

/** Limits that several runs share when they stand side by side. */
export interface SharedLimits {
  durationS?: number;
  traces?: Partial<Record<ThinnedTrace['quantity'], [number, number]>>;
  rateHz?: number;
}

/** Smallest and largest value of a trace, with zero and a little air for voltage and current. */
export function traceLimits(trace: ThinnedTrace): [number, number] {
  const low = least(trace.min);
  const high = -least(trace.max.map((value) => -value));
  if (!(low <= high)) return [0, 1];
  if (trace.quantity === 'sound') {
    const most = Math.max(-low, high, 1e-6);
    return [-most, most];
  }
  return [Math.min(0, low), high > low ? high : low + 1];
}

/** NaN is passed over, as `Math.min` would not. */
function least(values: Float64Array): number {
  let low = Number.POSITIVE_INFINITY;
  for (const value of values) if (value < low) low = value;
  return low;
}

/** A trace with its value axis; `height` pixels from `area.top`. */
export function traceRow(
  run: TimeRun,
  index: number,
  area: TrackArea & { height: number },
  words: TimePictureWords,
  limits?: [number, number],
): string {
  const trace = run.evidence.traces[index]!;
  const { top, height } = area;
  const y = scaleLinear(limits ?? traceLimits(trace), [top + height - 4, top + 16]).clamp(true);
  const { coarse, fine } = tracePaths(trace, run.evidence.closeUps, index, { ...area, y });
  return [
    valueAxis(y, area, words.numbers),
    text(area.left + 4, top + 11, `${words.name(trace.quantity)}, ${words.name(trace.unit)}`, {
      class: 'row-name',
    }),
    coarse &&
      el('path', { class: `trace trace-${trace.quantity}${fine ? ' dim' : ''}`, d: coarse }),
    fine && el('path', { class: `trace trace-${trace.quantity} fine`, d: fine }),
  ].join('');
}

function valueAxis(
  y: { ticks(count: number): number[]; (value: number): number },
  area: TrackArea & { height: number },
  numbers: NumberWords,
): string {
  return y
    .ticks(area.height / 30)
    .map((value) => {
      const at = y(value);
      return (
        el('line', { class: 'grid', x1: area.left, x2: area.right, y1: at, y2: at }) +
        text(area.left - 8, at + 4, say(value, numbers), { class: 'tick', 'text-anchor': 'end' })
      );
    })
    .join('');
}

/** Events a second over time; nothing outside the arc. */
export function rateRow(
  run: TimeRun,
  area: TrackArea & { height: number },
  words: TimePictureWords,
  mostHz?: number,
): string {
  const rate = run.evidence.eventRate;
  if (!rate || !hasRate(run)) return '';
  const x = timeScale(area);
  const { top, height } = area;
  const y = scaleLinear([0, mostHz ?? rateLimit(run)], [top + height - 4, top + 18]).clamp(true);
  const dots: string[] = [];
  const first = Math.max(0, Math.floor((area.window.fromS - rate.startS) / rate.stepS));
  for (let k = first; k < rate.values.length; k++) {
    const timeS = rate.startS + (k + 0.5) * rate.stepS;
    if (timeS > area.window.toS) break;
    if (timeS < area.window.fromS || Number.isNaN(rate.values[k]!) || !inArc(run, timeS)) continue;
    const from = Math.max(area.left, x(timeS - rate.stepS / 2) + 0.3);
    const to = Math.min(area.right, Math.max(from + 2, x(timeS + rate.stepS / 2) - 0.3));
    dots.push(`M${short(from)} ${short(y(rate.values[k]!))}h${short(to - from)}`);
  }
  return [
    valueAxis(y, area, words.numbers),
    text(area.left + 4, top + 11, words.time.perSecond(words.name(rate.of)), { class: 'row-name' }),
    el('path', { class: 'rate', d: dots.join('') }),
  ].join('');
}

/** True where at least one moment of the arc has a rate. */
export function hasRate(run: TimeRun): boolean {
  const rate = run.evidence.eventRate;
  return (
    rate?.values.some(
      (value, k) => !Number.isNaN(value) && inArc(run, rate.startS + (k + 0.5) * rate.stepS),
    ) ?? false
  );
}

/** Highest rate shown: well above most of those within the arc, so that a single outlier is cut off. */
export function rateLimit(run: TimeRun): number {
  const rate = run.evidence.eventRate;
  if (!rate) return 1;
  const inside = rate.values
    .filter((value, k) => value > 0 && inArc(run, rate.startS + (k + 0.5) * rate.stepS))
    .sort();
  const high = inside[Math.floor(0.9 * (inside.length - 1))] ?? 1;
  return Math.max(1, 1.5 * high);
}

/** `1.234 s`, with as many decimals as the window shows. */
export function sayMoment(timeS: number, spanS: number, numbers: NumberWords): string {
  if (spanS > 60) return numbers.time(timeS);
  const digits = spanS > 20 ? 2 : spanS > 2 ? 3 : 4;
  return `${numbers.decimal(timeS.toFixed(digits))} s`;
}
