import type { CloseUp, ThinnedTrace } from '../../view/evidence/index.js';
import type { TimeWindow } from '../run-view.js';
import { short } from './svg.js';

/** Where a trace is drawn: pixels of the time axis and the scale of its values. */
export interface TraceArea {
  window: TimeWindow;
  left: number;
  right: number;
  y: (value: number) => number;
}

/** Values from `fromS` on, `binS` apart, each a smallest and a largest. */
interface Bins {
  fromS: number;
  binS: number;
  min: Float64Array;
  max: Float64Array;
}

/**
 * The trace as SVG paths. With more bins than pixels each pixel shows its smallest and largest value,
 * so no extreme is lost; with fewer, values are joined by a line. Where a close-up holds every sample
 * and the trace is too coarse for the window, the close-up is drawn over it.
 */
export function tracePaths(
  trace: ThinnedTrace,
  closeUps: readonly CloseUp[],
  index: number,
  area: TraceArea,
): { coarse: string; fine: string } {
  const { fromS, toS } = area.window;
  const pixelS = (toS - fromS) / (area.right - area.left);
  const coarse = binPath({ fromS: 0, ...trace }, area, pixelS);
  if (trace.everySample || trace.binS < 0.5 * pixelS) return { coarse, fine: '' };
  const fine = closeUps
    .filter((one) => one.startS < toS && one.startS + one.traces[index]!.length * one.binS > fromS)
    .map((one) => {
      const values = one.traces[index]!;
      return binPath({ fromS: one.startS, binS: one.binS, min: values, max: values }, area, pixelS);
    });
  return { coarse, fine: fine.join('') };
}

function binPath(bins: Bins, area: TraceArea, pixelS: number): string {
  const { fromS, toS } = area.window;
  const first = Math.max(0, Math.floor((fromS - bins.fromS) / bins.binS));
  const last = Math.min(bins.min.length, Math.ceil((toS - bins.fromS) / bins.binS) + 1);
  if (last <= first) return '';
  const group = Math.max(1, Math.floor(pixelS / bins.binS));
  const x = (k: number) => area.left + (bins.fromS + k * bins.binS - fromS) / pixelS;
  return group === 1 && bins.min === bins.max
    ? joined(bins.min, first, last, x, area.y)
    : band(bins, { first, last, group }, x, area.y);
}

function joined(
  values: Float64Array,
  first: number,
  last: number,
  x: (k: number) => number,
  y: (value: number) => number,
): string {
  let path = '';
  let pen = false;
  for (let k = first; k < last; k++) {
    const value = values[k]!;
    if (Number.isNaN(value)) {
      pen = false;
      continue;
    }
    path += `${pen ? 'L' : 'M'}${short(x(k + 0.5))} ${short(y(value))}`;
    pen = true;
  }
  return path;
}

/** One upright stroke a group of bins, joined to the next so that no gap shows. */
function band(
  bins: Bins,
  { first, last, group }: { first: number; last: number; group: number },
  x: (k: number) => number,
  y: (value: number) => number,
): string {
  let path = '';
  let pen = false;
  // Groups begin at multiples of their length, so that they stand still while the window moves.
  for (let k = Math.floor(first / group) * group; k < last; k += group) {
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    const end = Math.min(k + group, bins.min.length);
    for (let n = k; n < end; n++) {
      if (bins.min[n]! < low) low = bins.min[n]!;
      if (bins.max[n]! > high) high = bins.max[n]!;
    }
    if (low > high) {
      pen = false;
      continue;
    }
    const at = short(x((k + end) / 2));
    path += `${pen ? 'L' : 'M'}${at} ${short(y(high))}L${at} ${short(y(low))}`;
    pen = true;
  }
  return path;
}
