/** Coefficients of one second-order section with a0 = 1. */
export interface BiquadCoefficients {
  b0: number;
  b1: number;
  b2: number;
  a1: number;
  a2: number;
}

/**
 * Butterworth low- or high-pass of even order as second-order sections, by the bilinear transform with
 * the cut-off prewarped (any text on digital filters, e.g. Oppenheim & Schafer, ch. 7).
 * @throws RangeError when the cut-off is not between 0 and half the rate, or the order is odd.
 */
export function butterworth(
  kind: 'low-pass' | 'high-pass',
  order: number,
  cutoffHz: number,
  rateHz: number,
): BiquadCoefficients[] {
  if (order < 2 || order % 2 !== 0) throw new RangeError(`order must be even, got ${order}`);
  if (!(cutoffHz > 0 && cutoffHz < rateHz / 2))
    throw new RangeError(`cut-off must lie in (0, ${rateHz / 2}) Hz, got ${cutoffHz}`);
  const k = Math.tan((Math.PI * cutoffHz) / rateHz);
  return Array.from({ length: order / 2 }, (_, section) => {
    const inverseQ = 2 * Math.sin((Math.PI * (2 * section + 1)) / (2 * order));
    const norm = 1 / (1 + inverseQ * k + k * k);
    const gain = kind === 'low-pass' ? k * k * norm : norm;
    return {
      b0: gain,
      b1: kind === 'low-pass' ? 2 * gain : -2 * gain,
      b2: gain,
      a1: 2 * (k * k - 1) * norm,
      a2: (1 - inverseQ * k + k * k) * norm,
    };
  });
}

/** A cascade of second-order sections whose state is carried from block to block. */
export class BiquadCascade {
  readonly #sections: readonly BiquadCoefficients[];
  readonly #state: Float64Array;

  constructor(sections: readonly BiquadCoefficients[]) {
    this.#sections = sections;
    this.#state = new Float64Array(2 * sections.length);
  }

  /** Filters `length` samples of `input` into `output`, which may be the same array. */
  process(input: Float64Array, output: Float64Array, length = input.length): void {
    let source = input;
    for (let s = 0; s < this.#sections.length; s++) {
      this.#section(s, source, output, length);
      source = output;
    }
    if (this.#sections.length === 0 && input !== output) output.set(input.subarray(0, length));
  }

  reset(): void {
    this.#state.fill(0);
  }

  /** Transposed direct form II: two state values a section and good rounding behaviour. */
  #section(index: number, input: Float64Array, output: Float64Array, length: number): void {
    const { b0, b1, b2, a1, a2 } = this.#sections[index]!;
    let s1 = this.#state[2 * index]!;
    let s2 = this.#state[2 * index + 1]!;
    for (let i = 0; i < length; i++) {
      const x = input[i]!;
      const y = b0 * x + s1;
      s1 = b1 * x - a1 * y + s2;
      s2 = b2 * x - a2 * y;
      output[i] = y;
    }
    // Denormal numbers after silence slow the loop a hundredfold.
    this.#state[2 * index] = Math.abs(s1) < 1e-200 ? 0 : s1;
    this.#state[2 * index + 1] = Math.abs(s2) < 1e-200 ? 0 : s2;
  }
}
