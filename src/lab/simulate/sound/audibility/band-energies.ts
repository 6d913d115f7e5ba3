import FFT from 'fft.js';

/** Edges of the listening bands, Hz; a bin at an edge belongs to the band above it. */
export const LISTENING_BANDS_HZ = [400, 1200, 2200, 3200, 4700, 7200] as const;
export const BAND_COUNT = LISTENING_BANDS_HZ.length - 1;

/** Length of a frame, s; frames follow each other by half of it. */
const FRAME_S = 0.002;

/** Energy by frame and band: value `frame · BAND_COUNT + band`. */
export interface BandEnergies {
  /** Samples of a frame, and from one frame to the next. */
  frame: number;
  hop: number;
  frames: number;
  /** One series for each sound that was put in. */
  series: Float64Array[];
}

/**
 * Energies of sounds of one length in the listening bands: frames of 2 ms under a Hann window, every millisecond.
 * Only frames from `from` to `to` are computed; the others are 0.
 */
export function bandEnergies(
  sounds: readonly ArrayLike<number>[],
  rateHz: number,
  from = 0,
  to = Number.POSITIVE_INFINITY,
): BandEnergies {
  const hop = Math.max(1, Math.round((FRAME_S / 2) * rateHz));
  const frame = 2 * hop;
  const length = sounds[0]?.length ?? 0;
  const frames = Math.max(0, Math.floor((length - frame) / hop) + 1);
  const series = sounds.map(() => new Float64Array(frames * BAND_COUNT));
  const size = 2 ** Math.max(1, Math.ceil(Math.log2(frame)));
  const fft = new FFT(size);
  const window = Float64Array.from(
    { length: frame },
    (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / frame),
  );
  const bands = bandBins(size, rateHz);
  const block = new Array<number>(2 * size).fill(0);
  const spectrum = fft.createComplexArray();
  const last = Math.min(frames, to);
  // Two sounds at a time: one as the real, one as the imaginary part of a single transform.
  for (let s = 0; s < sounds.length; s += 2) {
    const one = sounds[s]!;
    const two = sounds[s + 1];
    for (let f = Math.max(0, from); f < last; f++) {
      let sum = 0;
      for (let i = 0; i < frame; i++) {
        const a = window[i]! * one[f * hop + i]!;
        const b = two === undefined ? 0 : window[i]! * two[f * hop + i]!;
        block[2 * i] = a;
        block[2 * i + 1] = b;
        sum += Math.abs(a) + Math.abs(b);
      }
      if (sum === 0) continue;
      fft.transform(spectrum, block);
      split(spectrum, size, bands, f, series[s]!, series[s + 1]);
    }
  }
  return { frame, hop, frames, series };
}

/** First bin of each band and of what lies above the last. */
function bandBins(size: number, rateHz: number): number[] {
  return LISTENING_BANDS_HZ.map((hz) => Math.min(size / 2, Math.ceil((hz * size) / rateHz - 1e-9)));
}

/** Energies of the real and the imaginary input of one transform. */
function split(
  spectrum: number[],
  size: number,
  bands: readonly number[],
  frame: number,
  one: Float64Array,
  two: Float64Array | undefined,
): void {
  for (let b = 0; b < BAND_COUNT; b++) {
    let first = 0;
    let second = 0;
    for (let k = bands[b]!; k < bands[b + 1]!; k++) {
      const re = spectrum[2 * k]!;
      const im = spectrum[2 * k + 1]!;
      const mirrorRe = spectrum[2 * (size - k)]!;
      const mirrorIm = spectrum[2 * (size - k) + 1]!;
      first += (re + mirrorRe) ** 2 + (im - mirrorIm) ** 2;
      second += (im + mirrorIm) ** 2 + (mirrorRe - re) ** 2;
    }
    one[frame * BAND_COUNT + b] = 0.25 * first;
    if (two !== undefined) two[frame * BAND_COUNT + b] = 0.25 * second;
  }
}
