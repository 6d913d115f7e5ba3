import FFT from 'fft.js';

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

/** Spectral subtraction with a noise floor that falls at once and creeps up; root-Hann, half overlap. */
export function suppressNoise(
  samples: Float64Array,
  spec: SuppressSpec,
  rateHz: number,
): Float64Array {
  const size = spec.frame;
  const hop = size / 2;
  const fft = new FFT(size);
  const window = Float64Array.from({ length: size }, (_, i) =>
    Math.sin((Math.PI * (i + 0.5)) / size),
  );
  const block = new Array<number>(2 * size).fill(0);
  const spectrum = fft.createComplexArray();
  const back = fft.createComplexArray();
  const state = newState(size, spec, hop / rateHz);
  const out = new Float64Array(samples.length);
  for (let at = -hop; at < samples.length; at += hop) {
    for (let i = 0; i < size; i++) block[2 * i] = (samples[at + i] ?? 0) * window[i]!;
    fft.transform(spectrum, block);
    attenuate(spectrum, state);
    fft.inverseTransform(back, spectrum);
    for (let i = 0; i < size; i++) {
      if (at + i >= 0 && at + i < out.length) out[at + i]! += back[2 * i]! * window[i]!;
    }
  }
  return out;
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
