import type { Network } from './document.js';

/** What the network heard in one block: mean, mean square and largest of each embedding, and how sure an arc burns. */
export interface PooledBlock {
  mean: Float32Array;
  square: Float32Array;
  top: Float32Array;
  /** Mean belief that an arc burns, 0 to 1. */
  arc: number;
}

/** What the network says of an interval; the probabilities are those of the network, not calibrated. */
export interface IntervalOutput {
  /** Probability of each mode of the header, given that there is an arc. */
  modes: number[];
  /** Probability that an arc is to be heard at all. */
  arc: number;
  /** Probability that the size of free drops is audible. */
  dropsHeard: number;
  /** The outputs themselves (logits), in the order of the header: modes, arc, drops heard. */
  outputs: number[];
}

/** Gathers blocks of an interval, each with a weight; the order does not matter. */
export class IntervalPooling {
  readonly #network: Network;
  readonly #width: number;
  #weight = 0;
  readonly #mean: Float64Array;
  readonly #square: Float64Array;
  readonly #top: Float64Array;
  readonly #between: Float64Array;

  constructor(network: Network) {
    this.#network = network;
    this.#width = network.layers.find(({ spec }) => spec.kind === 'arc')!.spec.inputs;
    this.#mean = new Float64Array(this.#width);
    this.#square = new Float64Array(this.#width);
    this.#top = new Float64Array(this.#width);
    this.#between = new Float64Array(this.#width);
  }

  add(block: PooledBlock, weight: number): void {
    this.#weight += weight;
    for (let c = 0; c < this.#width; c++) {
      const mean = block.mean[c]!;
      this.#mean[c]! += weight * mean;
      this.#square[c]! += weight * block.square[c]!;
      this.#top[c]! += weight * block.top[c]!;
      this.#between[c]! += weight * mean * mean;
    }
  }

  /** Takes a block out again that was added with the same weight. */
  remove(block: PooledBlock, weight: number): void {
    this.add(block, -weight);
  }

  output(): IntervalOutput {
    const width = this.#width;
    const { varianceFloor, modes } = this.#network.header;
    const weight = Math.max(this.#weight, 1e-6);
    const pooled = new Float64Array(4 * width);
    for (let c = 0; c < width; c++) {
      const mean = this.#mean[c]! / weight;
      const inside = this.#square[c]! / weight - mean * mean;
      const between = this.#between[c]! / weight - mean * mean;
      pooled[c] = mean;
      pooled[width + c] = Math.sqrt(Math.max(0, inside) + varianceFloor);
      pooled[2 * width + c] = this.#top[c]! / weight;
      pooled[3 * width + c] = Math.sqrt(Math.max(0, between) + varianceFloor);
    }
    const hidden = this.#dense('hidden', pooled).map((x) => Math.max(0, x));
    const outputs = this.#dense('out', hidden);
    const logits = outputs.slice(0, modes.length);
    const most = Math.max(...logits);
    const shares = logits.map((x) => Math.exp(x - most));
    const total = shares.reduce((sum, x) => sum + x, 0);
    return {
      modes: shares.map((x) => x / total),
      arc: sigmoid(outputs[modes.length]!),
      dropsHeard: sigmoid(outputs[modes.length + 1]!),
      outputs,
    };
  }

  #dense(kind: 'hidden' | 'out', x: ArrayLike<number>): number[] {
    const { spec, arrays } = this.#network.layers.find((layer) => layer.spec.kind === kind)!;
    const [weights, bias] = arrays;
    return Array.from({ length: spec.outputs ?? 0 }, (_, o) => {
      let sum = bias![o]!;
      for (let i = 0; i < spec.inputs; i++) sum += weights![o * spec.inputs + i]! * x[i]!;
      return sum;
    });
  }
}

function sigmoid(x: number): number {
  return 1 / (1 + Math.exp(-x));
}
