import { inOverlappingBlocks } from './overlap.js';

/** Noise suppression as in call and phone software. */
export interface SuppressSpec {
  /** Largest attenuation of a bin, dB. */
  depthDb: number;
  /** How much of the estimated noise is taken away (1 is all of it). */
  strength: number;
  /** Time constant with which the noise estimate rises, s: short ones eat steady hiss. */
  adaptS: number;
  frame: number;
}

/** Spectral subtraction with a noise floor that falls at once and creeps up. */
export function suppressNoise(
  samples: Float64Array,
  spec: SuppressSpec,
  rateHz: number,
): Float64Array {
  const state = newState(spec.frame, spec, spec.frame / 2 / rateHz);
  return inOverlappingBlocks(samples, spec.frame, (spectrum) => attenuate(spectrum, state));
}

interface State {
  size: number;
  smooth: Float64Array;
  floor: Float64Array;
  gain: Float64Array;
  rise: number;
  least: number;
  strength: number;
  fresh: boolean;
}

function newState(size: number, spec: SuppressSpec, hopS: number): State {
  const bins = size / 2 + 1;
  return {
    size,
    smooth: new Float64Array(bins),
    floor: new Float64Array(bins),
    gain: new Float64Array(bins).fill(1),
    rise: Math.exp(hopS / spec.adaptS),
    least: 10 ** (-spec.depthDb / 20),
    strength: spec.strength,
    fresh: true,
  };
}

function attenuate(spectrum: number[], state: State): void {
  const { size, smooth, floor, gain } = state;
  for (let k = 0; k <= size / 2; k++) {
    const power = spectrum[2 * k]! ** 2 + spectrum[2 * k + 1]! ** 2;
    smooth[k] = state.fresh ? power : 0.7 * smooth[k]! + 0.3 * power;
    const low = smooth[k]!;
    floor[k] = state.fresh || low < floor[k]! ? low : Math.min(low, floor[k]! * state.rise + 1e-20);
    const wanted = Math.max(
      state.least,
      1 - state.strength * Math.sqrt((2 * floor[k]!) / (power + 1e-20)),
    );
    gain[k] = 0.5 * gain[k]! + 0.5 * wanted;
    spectrum[2 * k]! *= gain[k]!;
    spectrum[2 * k + 1]! *= gain[k]!;
    if (k === 0 || k === size / 2) continue;
    spectrum[2 * (size - k)]! *= gain[k]!;
    spectrum[2 * (size - k) + 1]! *= gain[k]!;
  }
  state.fresh = false;
}
