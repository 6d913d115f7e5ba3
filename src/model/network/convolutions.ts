import type { Layer } from './document.js';
import { byEight, type Kernels, MOST_ROWS } from './kernels.js';
import { type MixShape, mixRows } from './mix-rows.js';
import { RowQueue } from './rows.js';

/** A layer over time with carried state: rows in, rows out, zeros before the first and after the last. */
export interface StreamLayer {
  push(rows: Float32Array): Float32Array;
  /** What is left after the last row. */
  flush(): Float32Array;
}

/** The layer that the weights describe (`full` or `separable`); without kernels it runs in plain JavaScript. */
export function streamLayer(layer: Layer, kernels: Kernels | null): StreamLayer {
  return new Convolution(layer, kernels);
}

/** Where the weights lie in the memory of the kernels. */
interface Kept {
  kernels: Kernels;
  mix: number;
  mixBias: number;
  deep: number;
  deepBias: number;
}

/**
 * Convolution over time, then negative values to 0. `full`: every output hears every input at every step of the
 * kernel. `separable`: each input by itself over time (negative values to 0), then mixed at each time; where `residual`,
 * the input is added before the last step.
 */
class Convolution implements StreamLayer {
  readonly #queue: RowQueue;
  readonly #kernel: number;
  readonly #stride: number;
  readonly #reach: number;
  readonly #pad: number;
  readonly #outputs: number;
  readonly #isFull: boolean;
  readonly #residual: boolean;
  /** Weights that mix: by output, then by step and input for a full convolution, by input for a separable one. */
  readonly #mix: Float32Array;
  readonly #mixBias: Float32Array;
  /** Weights over time by step, then by input; empty for a full convolution. */
  readonly #deep: Float32Array;
  readonly #deepBias: Float32Array;
  readonly #kept: Kept | null;

  constructor({ spec, arrays }: Layer, kernels: Kernels | null) {
    const { inputs } = spec;
    const dilation = spec.dilation ?? 1;
    this.#kernel = spec.kernel ?? 1;
    this.#stride = spec.stride ?? 1;
    this.#reach = dilation * inputs;
    this.#outputs = spec.outputs ?? 1;
    this.#pad = (dilation * (this.#kernel - 1)) / 2;
    this.#queue = new RowQueue(inputs, this.#pad);
    this.#isFull = spec.kind === 'full';
    this.#residual = spec.residual === true;
    const [first, firstBias, second, secondBias] = arrays as [
      Float32Array,
      Float32Array,
      Float32Array,
      Float32Array,
    ];
    this.#mix = this.#isFull ? byStep(first, this.#outputs, inputs, this.#kernel) : second;
    this.#mixBias = this.#isFull ? firstBias : secondBias;
    this.#deep = this.#isFull ? new Float32Array(0) : byStep(first, 1, inputs, this.#kernel);
    this.#deepBias = this.#isFull ? new Float32Array(0) : firstBias;
    const fits = this.#outputs % 8 === 0 && (this.#isFull || inputs % 4 === 0);
    this.#kept = kernels !== null && fits ? this.#keep(kernels) : null;
  }

  #keep(kernels: Kernels): Kept {
    return {
      kernels,
      mix: kernels.keep(byEight(this.#mix, this.#outputs, this.#mix.length / this.#outputs)),
      mixBias: kernels.keep(this.#mixBias),
      deep: kernels.keep(this.#deep),
      deepBias: kernels.keep(this.#deepBias),
    };
  }

  push(rows: Float32Array): Float32Array {
    this.#queue.push(rows);
    const { width } = this.#queue;
    const span = 2 * this.#pad + 1;
    const ready = Math.max(0, Math.floor((this.#queue.count - span) / this.#stride) + 1);
    const out = new Float32Array(ready * this.#outputs);
    for (let at = 0; at < ready; at += MOST_ROWS) {
      const part = out.subarray(at * this.#outputs, (at + MOST_ROWS) * this.#outputs);
      const data = this.#queue.data.subarray(at * this.#stride * width);
      this.#work(part, data);
      this.#finish(part, data);
    }
    this.#queue.drop(ready * this.#stride);
    return out;
  }

  flush(): Float32Array {
    return this.push(new Float32Array(this.#pad * this.#queue.width));
  }

  #work(out: Float32Array, data: Float32Array): void {
    const rows = out.length / this.#outputs;
    if (this.#kept !== null) this.#bySimd(this.#kept, out, data, rows);
    else if (this.#isFull) mixRows(this.#mix, this.#mixBias, data, out, this.#shape(rows));
    else
      mixRows(this.#mix, this.#mixBias, this.#overTime(rows, data), out, {
        ...this.#shape(rows),
        rowStep: this.#queue.width,
      });
  }

  /** Steps next to each other in time lie next to each other in memory: a full convolution mixes them all. */
  #shape(rows: number): MixShape {
    const outputs = this.#outputs;
    const inputs = this.#mix.length / outputs;
    return { rows, inputs, outputs, rowStep: this.#stride * this.#queue.width };
  }

  #overTime(rows: number, data: Float32Array): Float32Array {
    const { width } = this.#queue;
    const out = new Float32Array(rows * width);
    for (let r = 0; r < rows; r++) {
      const from = r * this.#stride * width;
      for (let c = 0; c < width; c++) {
        let sum = this.#deepBias[c]!;
        for (let k = 0, at = from + c, w = c; k < this.#kernel; k++, at += this.#reach, w += width)
          sum += this.#deep[w]! * data[at]!;
        out[r * width + c] = Math.max(0, sum);
      }
    }
    return out;
  }

  #bySimd(kept: Kept, out: Float32Array, data: Float32Array, rows: number): void {
    const { kernels, mix, mixBias, deep, deepBias } = kept;
    const { width } = this.#queue;
    const { inputs, outputs, rowStep } = this.#shape(rows);
    // Up to three rows more are read and written than there are.
    const used = ((rows - 1) * this.#stride + 2 * this.#pad + 1) * width;
    const heard = kernels.region('in', used + 3 * rowStep);
    const result = kernels.region('out', (rows + 3) * outputs);
    kernels.write(heard, data.subarray(0, used));
    if (this.#isFull) {
      const place = { weights: mix, bias: mixBias, data: heard, out: result };
      kernels.mix(place, rows, inputs, outputs, rowStep);
    } else {
      const middle = kernels.region('middle', (rows + 3) * width);
      const reach = this.#reach;
      const first = { weights: deep, bias: deepBias, data: heard, out: middle };
      kernels.deep(first, rows, this.#kernel, width, { rowStep, reach });
      const second = { weights: mix, bias: mixBias, data: middle, out: result };
      kernels.mix(second, rows, inputs, outputs, width);
    }
    out.set(kernels.read(result, out.length));
  }

  #finish(out: Float32Array, data: Float32Array): void {
    const add = this.#pad * this.#queue.width;
    if (this.#residual) for (let i = 0; i < out.length; i++) out[i]! += data[add + i]!;
    for (let i = 0; i < out.length; i++) if (out[i]! < 0) out[i] = 0;
  }
}

/** [outputs][inputs][steps] to [outputs][steps][inputs]. */
function byStep(from: Float32Array, outputs: number, inputs: number, steps: number): Float32Array {
  const out = new Float32Array(from.length);
  for (let o = 0; o < outputs; o++)
    for (let i = 0; i < inputs; i++)
      for (let k = 0; k < steps; k++)
        out[(o * steps + k) * inputs + i] = from[(o * inputs + i) * steps + k]!;
  return out;
}
