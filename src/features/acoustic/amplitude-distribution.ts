/** How the amplitude of the envelope frames is distributed over a window. */
export interface AmplitudeDistribution {
  mean: number;
  coefficientOfVariation: number;
  p05: number;
  p50: number;
  p95: number;
  /** Skewness of the step from frame to frame of the logarithm: positive when sound leaps up and dies away. */
  riseSkew: number;
}

const BINS_AN_OCTAVE = 32;
const LOWEST_OCTAVE = -60;
const BINS = (4 - LOWEST_OCTAVE) * BINS_AN_OCTAVE;

/** Percentiles from a histogram of 1/32 octave (2 % wide), much cheaper than sorting each window. */
export class AmplitudeDistributions {
  readonly #histogram = new Uint32Array(BINS);

  /**
   * @param amplitude frame amplitudes, at least 0
   * @param log2Amplitude the same as powers of two
   */
  describe(amplitude: Float64Array, log2Amplitude: Float64Array): AmplitudeDistribution {
    const histogram = this.#histogram.fill(0);
    const n = amplitude.length;
    let sum = 0;
    let squares = 0;
    let previous = 0;
    let stepSquares = 0;
    let stepCubes = 0;
    for (let i = 0; i < n; i++) {
      const value = amplitude[i]!;
      sum += value;
      squares += value * value;
      const octave = log2Amplitude[i]!;
      const bin = Math.floor((octave - LOWEST_OCTAVE) * BINS_AN_OCTAVE);
      const clamped = Math.min(BINS - 1, Math.max(0, bin));
      histogram[clamped] = histogram[clamped]! + 1;
      if (i > 0) {
        const step = octave - previous;
        stepSquares += step * step;
        stepCubes += step * step * step;
      }
      previous = octave;
    }
    const mean = sum / n;
    const variance = Math.max(0, squares / n - mean * mean);
    const [p05, p50, p95] = this.#quantiles(n);
    return {
      mean,
      coefficientOfVariation: mean > 0 ? Math.sqrt(variance) / mean : NaN,
      p05: p05!,
      p50: p50!,
      p95: p95!,
      riseSkew: stepSquares > 0 ? stepCubes / n / (stepSquares / n) ** 1.5 : NaN,
    };
  }

  #quantiles(n: number): number[] {
    const wanted = [0.05, 0.5, 0.95];
    const found: number[] = [];
    let below = 0;
    for (let bin = 0; bin < BINS && found.length < wanted.length; bin++) {
      const count = this.#histogram[bin]!;
      while (found.length < wanted.length && below + count >= wanted[found.length]! * n) {
        const within = count > 0 ? (wanted[found.length]! * n - below) / count : 0;
        found.push(2 ** (LOWEST_OCTAVE + (bin + within) / BINS_AN_OCTAVE));
      }
      below += count;
    }
    return found;
  }
}
