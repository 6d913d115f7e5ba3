import { KERNELS_WASM } from './kernels-wasm.js';

interface Exports {
  memory: WebAssembly.Memory;
  mix: (...args: number[]) => void;
  deep: (...args: number[]) => void;
  dot: (a: number, b: number, count: number) => number;
}

/** Rows that one call works on at most; bounds the memory. */
export const MOST_ROWS = 128;

/** Whether this machine runs the SIMD kernels at all; asked once. */
let compiled: WebAssembly.Module | null | undefined;

function moduleOf(): WebAssembly.Module | null {
  if (compiled !== undefined) return compiled;
  compiled = null;
  if (typeof WebAssembly === 'undefined') return compiled;
  const text = atob(KERNELS_WASM);
  const bytes = Uint8Array.from(text, (letter) => letter.charCodeAt(0));
  if (WebAssembly.validate(bytes)) compiled = new WebAssembly.Module(bytes);
  return compiled;
}

/** The inner loops of the layers in WebAssembly with SIMD (`kernels.wat`), with a memory of their own. */
export class Kernels {
  readonly #exports: Exports;
  #floats: Float32Array;
  /** First free float. */
  #top = 0;
  readonly #regions = new Map<string, { at: number; size: number }>();

  private constructor(module: WebAssembly.Module) {
    this.#exports = new WebAssembly.Instance(module).exports as unknown as Exports;
    this.#floats = new Float32Array(this.#exports.memory.buffer);
  }

  /** Null where WebAssembly or its SIMD instructions are missing. */
  static create(): Kernels | null {
    const module = moduleOf();
    return module && new Kernels(module);
  }

  /** Puts numbers into the memory for good; the index of the first. */
  keep(values: Float32Array): number {
    const at = this.#reserve(values.length);
    this.#floats.set(values, at);
    return at;
  }

  /** Index of a part of the memory that is used again and again, at least so many numbers long. */
  region(name: string, size: number): number {
    const there = this.#regions.get(name);
    if (there !== undefined && there.size >= size) return there.at;
    const at = this.#reserve(size);
    this.#regions.set(name, { at, size });
    return at;
  }

  write(at: number, values: Float32Array | Float64Array): void {
    this.#floats.set(values, at);
  }

  read(at: number, count: number): Float32Array {
    return this.#floats.subarray(at, at + count);
  }

  /** `out[r][o] = bias[o] + Σ weights·data[r·rowStep + i]`; weights as {@link byEight} lays them out; whole fours of rows are written. */
  mix(place: MixPlace, rows: number, inputs: number, outputs: number, rowStep: number): void {
    const { weights, bias, data, out } = place;
    this.#exports.mix(4 * weights, 4 * bias, 4 * data, 4 * out, rows, inputs, outputs, 4 * rowStep);
  }

  /** `out[r][c] = max(0, bias[c] + Σ_k weights[k][c]·data[r·rowStep + k·reach + c])`; a width in whole fours. */
  deep(place: MixPlace, rows: number, kernel: number, width: number, steps: DeepSteps): void {
    const { weights, bias, data, out } = place;
    const { rowStep, reach } = steps;
    this.#exports.deep(
      4 * weights,
      4 * bias,
      4 * data,
      4 * out,
      rows,
      kernel,
      width,
      4 * rowStep,
      4 * reach,
    );
  }

  /** Sum of products of numbers from two places, in whole eights. */
  dot(a: number, b: number, count: number): number {
    return this.#exports.dot(4 * a, 4 * b, count);
  }

  #reserve(size: number): number {
    const at = this.#top;
    // Whole lines of sixteen bytes, so that loads are aligned.
    this.#top += 4 * Math.ceil(size / 4);
    const { memory } = this.#exports;
    const missing = 4 * this.#top - memory.buffer.byteLength;
    if (missing > 0) {
      memory.grow(Math.ceil(missing / 65536));
      this.#floats = new Float32Array(memory.buffer);
    }
    return at;
  }
}

/** Where in the memory the numbers lie, as indices of floats. */
export interface MixPlace {
  weights: number;
  bias: number;
  data: number;
  out: number;
}

/** Numbers from one row to the next, and from one step of the kernel to the next. */
export interface DeepSteps {
  rowStep: number;
  reach: number;
}

/** [outputs][inputs] to groups of eight outputs, in each [inputs][8]; outputs in whole eights. */
export function byEight(weights: Float32Array, outputs: number, inputs: number): Float32Array {
  const out = new Float32Array(weights.length);
  for (let o = 0; o < outputs; o++)
    for (let i = 0; i < inputs; i++)
      out[((o >> 3) * inputs + i) * 8 + (o & 7)] = weights[o * inputs + i]!;
  return out;
}
