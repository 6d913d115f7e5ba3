import type { SegmentSpectrum } from './segment-spectra.js';
import { findLine, lineExcess, type SpectralLine } from './spectral-line.js';
import { mainsMultipleNear, tonePower } from './tone.js';

/** Span in which drops and other events of an arc are sought. */
export const LINE_SPAN = { fromHz: 5, toHz: 1200 } as const;
/** A line whose exact tone holds this share of its power is clocked: mains, pulses, a chopper. */
const CLOCKED_SHARE = 0.5;
/** Mains lines looked for at most in a window. */
const MOST_MAINS = 5;

/** The strongest line of a window that is neither mains nor pulses, and the mains lines passed over. */
export interface WindowLine extends SpectralLine {
  tonalShare: number;
  /** Multiples of 50 or 60 Hz found as exact tones. */
  mainsHz: number[];
  /** Root mean square of all of them together. */
  mainsRms: number;
}

/** Mean power of several segments; null when there are none. */
export function meanPower(spectra: readonly SegmentSpectrum[]): Float64Array | null {
  if (spectra.length === 0) return null;
  const mean = new Float64Array(spectra[0]!.power.length);
  for (const { power } of spectra)
    for (let k = 0; k < mean.length; k++) mean[k] = mean[k]! + power[k]!;
  for (let k = 0; k < mean.length; k++) mean[k] = mean[k]! / spectra.length;
  return mean;
}

/**
 * Finds the line of a window. `slow` is the same arc interval of the slow trace, from which exact tones are
 * measured; `clockHz` is the pulse rate whose multiples are passed over (NaN for none).
 */
export function findWindowLine(
  power: Float64Array,
  binHz: number,
  slow: Float64Array,
  slowRateHz: number,
  clockHz: number,
): WindowLine {
  const mainsHz: number[] = [];
  let mainsPower = 0;
  const near = 2.5 * binHz;
  const excluded = (hz: number) =>
    mainsHz.some((mains) => Math.abs(mains - hz) < near) || isMultiple(hz, clockHz, near);
  for (;;) {
    const line = findLine(power, binHz, LINE_SPAN, excluded);
    const around = lineExcess(power, binHz, line);
    const multiple = mainsMultipleNear(line.rateHz, 0.7 * binHz);
    const mains = Number.isNaN(multiple) ? 0 : tonePower(slow, slowRateHz, multiple);
    if (mainsHz.length < MOST_MAINS && line.prominence > 4 && mains > CLOCKED_SHARE * around) {
      mainsHz.push(multiple);
      mainsPower += mains;
      continue;
    }
    const tone = line.prominence > 0 ? tonePower(slow, slowRateHz, line.rateHz) : Number.NaN;
    const tonalShare = Math.min(1, tone / around);
    return { ...line, tonalShare, mainsHz, mainsRms: Math.sqrt(mainsPower) };
  }
}

function isMultiple(hz: number, clockHz: number, withinHz: number): boolean {
  if (!(clockHz > 0)) return false;
  return Math.abs(hz - Math.max(1, Math.round(hz / clockHz)) * clockHz) < withinHz;
}
