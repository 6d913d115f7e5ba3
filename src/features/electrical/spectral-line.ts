import { median } from '../../dsp/index.js';

/** The strongest line of a spectrum above the floor around it. */
export interface SpectralLine {
  /** NaN when the spectrum holds no power in the span. */
  rateHz: number;
  /** Power over the floor there: about 3 to 4 for the highest of pure noise in four averaged segments. */
  prominence: number;
}

const NO_LINE: SpectralLine = { rateHz: Number.NaN, prominence: 0 };
/** Floor bands a factor of this wide: wider than a drop line, narrower than the fall of an arc's noise. */
const BAND_RATIO = 1.6;

/**
 * The floor under the lines: medians of bands of constant ratio, joined by straight lines in log power
 * over log frequency. Same length as `power`; NaN outside the span.
 */
export function spectralFloor(power: Float64Array, first: number, last: number): Float64Array {
  const floor = new Float64Array(power.length).fill(Number.NaN);
  const centres: number[] = [];
  const levels: number[] = [];
  for (let from = first; from <= last; ) {
    const to = Math.min(last + 1, Math.max(from + 8, Math.round(from * BAND_RATIO)));
    centres.push(Math.log((from + to - 1) / 2));
    levels.push(Math.log(Math.max(1e-30, median(power.subarray(from, to)))));
    from = to;
  }
  let band = 0;
  for (let k = first; k <= last; k++) {
    const x = Math.log(k);
    while (band < centres.length - 2 && x > centres[band + 1]!) band++;
    floor[k] = Math.exp(interpolate(x, centres, levels, band));
  }
  return floor;
}

function interpolate(x: number, xs: number[], ys: number[], at: number): number {
  const next = Math.min(at + 1, xs.length - 1);
  if (next === at) return ys[at]!;
  const share = Math.min(1, Math.max(0, (x - xs[at]!) / (xs[next]! - xs[at]!)));
  return ys[at]! + share * (ys[next]! - ys[at]!);
}

/**
 * The most prominent line from `fromHz` to `toHz`; bins for which `isExcluded` answers true are passed
 * over. Flat zero or an empty span gives no line.
 */
export function findLine(
  power: Float64Array,
  binHz: number,
  span: { fromHz: number; toHz: number },
  isExcluded: (hz: number) => boolean = () => false,
): SpectralLine {
  const first = Math.max(1, Math.ceil(span.fromHz / binHz));
  const last = Math.min(power.length - 2, Math.floor(span.toHz / binHz));
  if (last - first < 8) return NO_LINE;
  const floor = spectralFloor(power, first, last);
  let best = -1;
  let prominence = 0;
  for (let k = first; k <= last; k++) {
    if (power[k]! < power[k - 1]! || power[k]! < power[k + 1]! || power[k]! < 1e-20) continue;
    const ratio = power[k]! / floor[k]!;
    if (ratio > prominence && !isExcluded(k * binHz)) {
      prominence = ratio;
      best = k;
    }
  }
  return best < 0 ? NO_LINE : { rateHz: (best + peakOffset(power, best)) * binHz, prominence };
}

/** Power of a line and two bins either side above the floor there; never less than one bin of the floor. */
export function lineExcess(power: Float64Array, binHz: number, line: SpectralLine): number {
  const peak = Math.round(line.rateHz / binHz);
  const floor = (power[peak] ?? Number.NaN) / line.prominence;
  let sum = -5 * floor;
  for (let k = Math.max(0, peak - 2); k <= peak + 2; k++) sum += power[k] ?? 0;
  return Math.max(sum, floor);
}

/**
 * Share of a line's excess that lies within one bin of its peak, against four bins: above about 0.95 for
 * an exact tone under a Hann window, less for a train with jitter.
 */
export function lineNarrowness(power: Float64Array, binHz: number, line: SpectralLine): number {
  const peak = Math.round(line.rateHz / binHz);
  const floor = (power[peak] ?? Number.NaN) / line.prominence;
  let [near, all] = [0, 0];
  for (let k = Math.max(0, peak - 4); k <= peak + 4; k++) {
    const excess = (power[k] ?? 0) - floor;
    all += excess;
    if (Math.abs(k - peak) <= 1) near += excess;
  }
  return near / Math.max(all, near);
}

/** Where between −½ and ½ bin the peak of a parabola through three log powers lies. */
function peakOffset(power: Float64Array, k: number): number {
  const a = Math.log(power[k - 1]! + 1e-30);
  const b = Math.log(power[k]! + 1e-30);
  const c = Math.log(power[k + 1]! + 1e-30);
  const bend = a - 2 * b + c;
  return bend < 0 ? Math.min(0.5, Math.max(-0.5, (0.5 * (a - c)) / bend)) : 0;
}
