import type { HeardBlock } from '../../features/index.js';
import { type StreamLayer, streamLayer } from './convolutions.js';
import type { Network } from './document.js';
import { FrontEnd } from './front-end.js';
import { HeardSums, type IntervalOutput, outputOf } from './interval-pooling.js';
import { Kernels } from './kernels.js';
import { Resampler } from './resampler.js';

/**
 * Listens with a network: sound of any rate in, block by block, each second worked on once. Rows (16 ms each) say how
 * sure an arc burns; eight rows make a block (0.128 s), from which any interval can be judged. Blocks come about a
 * second late, at the end with `flush`; what is taken is forgotten here, so that memory need not grow.
 */
export class StreamingNetwork {
  /** Seconds from one row, and from one block, to the next. */
  readonly rowS: number;
  readonly blockS: number;
  /** The blocks that were not taken, in order. */
  blocks: HeardBlock[] = [];
  #count = 0;
  readonly #network: Network;
  readonly #resampler: Resampler;
  readonly #frontEnd: FrontEnd;
  readonly #layers: StreamLayer[];
  readonly #arc: Float32Array;
  readonly #arcBias: number;
  readonly #width: number;
  #pool: number[] = [];
  #beliefs: number[] = [];

  /**
   * @param rateHz rate of the sound that will come, above 0
   * @param options `simd: false` keeps to plain JavaScript also where WebAssembly with SIMD is there
   */
  constructor(network: Network, rateHz: number, options: { simd?: boolean } = {}) {
    this.#network = network;
    const { frontEnd, pool } = network.header;
    const kernels = options.simd === false ? null : Kernels.create();
    this.#resampler = new Resampler(rateHz, frontEnd.rateHz, kernels);
    this.#frontEnd = new FrontEnd(frontEnd);
    const stack = network.layers.filter(
      ({ spec }) => spec.kind === 'full' || spec.kind === 'separable',
    );
    this.#layers = stack.map((layer) => streamLayer(layer, kernels));
    const arc = network.layers.find(({ spec }) => spec.kind === 'arc')!;
    this.#arc = arc.arrays[0]!;
    this.#arcBias = arc.arrays[1]![0]!;
    this.#width = arc.spec.inputs;
    const strides = stack.reduce((all, { spec }) => all * (spec.stride ?? 1), 1);
    this.rowS = (strides * frontEnd.hop) / frontEnd.rateHz;
    this.blockS = this.rowS * pool;
  }

  /** Takes samples, full scale 1; gives the logits of "an arc burns" of the rows that came of them. */
  push(samples: ArrayLike<number>): number[] {
    return this.#through(this.#frontEnd.push(this.#resampler.push(samples)));
  }

  /** The end of the recording: the rest of rows and blocks. */
  flush(): number[] {
    const logits = this.#through(this.#frontEnd.push(this.#resampler.flush()));
    logits.push(...this.#through(this.#frontEnd.flush()));
    for (let k = 0; k < this.#layers.length; k++) {
      const rest = this.#layers[k]!.flush();
      logits.push(...this.#rows(this.#onward(rest, k + 1)));
    }
    if (this.#pool.length > 0) this.#closeBlock();
    return logits;
  }

  /** The blocks that came since it was asked last. */
  take(): HeardBlock[] {
    const { blocks } = this;
    this.blocks = [];
    return blocks;
  }

  /** Output for all blocks that were not taken, each weighed by how sure an arc burns in it. */
  judge(): IntervalOutput {
    const sums = new HeardSums(this.#width);
    for (const block of this.blocks) sums.add(block);
    return outputOf(this.#network, sums).outputs;
  }

  #through(features: Float32Array): number[] {
    return this.#rows(this.#onward(features, 0));
  }

  #onward(rows: Float32Array, first: number): Float32Array {
    let out = rows;
    for (let k = first; k < this.#layers.length && out.length > 0; k++)
      out = this.#layers[k]!.push(out);
    return out;
  }

  #rows(rows: Float32Array): number[] {
    const width = this.#width;
    const logits: number[] = [];
    for (let at = 0; at < rows.length; at += width) {
      let logit = this.#arcBias;
      for (let c = 0; c < width; c++) {
        logit += this.#arc[c]! * rows[at + c]!;
        this.#pool.push(rows[at + c]!);
      }
      logits.push(logit);
      this.#beliefs.push(1 / (1 + Math.exp(-logit)));
      if (this.#beliefs.length === this.#network.header.pool) this.#closeBlock();
    }
    return logits;
  }

  #closeBlock(): void {
    const width = this.#width;
    const count = this.#beliefs.length;
    const mean = new Float32Array(width);
    const square = new Float32Array(width);
    const top = new Float32Array(width);
    for (let c = 0; c < width; c++) {
      let sum = 0;
      let squares = 0;
      let most = Number.NEGATIVE_INFINITY;
      for (let r = 0; r < count; r++) {
        const x = this.#pool[r * width + c]!;
        sum += x;
        squares += x * x;
        if (x > most) most = x;
      }
      mean[c] = sum / count;
      square[c] = squares / count;
      top[c] = most;
    }
    const arc = this.#beliefs.reduce((sum, one) => sum + one, 0) / count;
    const weight = arc + this.#network.header.leastWeight;
    this.blocks.push({ index: this.#count++, mean, square, top, arc, weight });
    this.#pool = [];
    this.#beliefs = [];
  }
}
