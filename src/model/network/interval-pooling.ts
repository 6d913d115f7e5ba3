import type { HeardBlock } from '../../features/index.js';
import type { Network } from './document.js';

/** What the network says of an interval: its outputs as they are (logits), in the order of the document. */
export type IntervalOutput = readonly number[];

/** Sums over the blocks of an interval, each with its weight. They add up, so that intervals can be joined. */
export class HeardSums {
  #weight = 0;
  #blocks = 0;
  #mean: Float64Array;
  #square: Float64Array;
  #top: Float64Array;
  #between: Float64Array;

  /** @param width figures of a block, where an output is wanted before the first block */
  constructor(width = 0) {
    this.#mean = new Float64Array(width);
    this.#square = new Float64Array(width);
    this.#top = new Float64Array(width);
    this.#between = new Float64Array(width);
  }

  /** Blocks that were added. */
  get blocks(): number {
    return this.#blocks;
  }

  /** Total weight. */
  get weight(): number {
    return this.#weight;
  }

  add(block: HeardBlock): void {
    const { weight } = block;
    this.#open(block.mean.length);
    this.#blocks++;
    this.#weight += weight;
    for (let c = 0; c < block.mean.length; c++) {
      const mean = block.mean[c]!;
      this.#mean[c]! += weight * mean;
      this.#square[c]! += weight * block.square[c]!;
      this.#top[c]! += weight * block.top[c]!;
      this.#between[c]! += weight * mean * mean;
    }
  }

  /** Joins the blocks of another interval. */
  merge(other: HeardSums): void {
    if (other.#blocks === 0) return;
    this.#open(other.#mean.length);
    this.#blocks += other.#blocks;
    this.#weight += other.#weight;
    for (let c = 0; c < this.#mean.length; c++) {
      this.#mean[c]! += other.#mean[c]!;
      this.#square[c]! += other.#square[c]!;
      this.#top[c]! += other.#top[c]!;
      this.#between[c]! += other.#between[c]!;
    }
  }

  /** Mean, spread within blocks, mean of the largest, and spread between blocks of each figure, one after the other. */
  pooled(varianceFloor: number): Float64Array {
    const width = this.#mean.length;
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
    return pooled;
  }

  #open(width: number): void {
    if (this.#mean.length === width) return;
    this.#mean = new Float64Array(width);
    this.#square = new Float64Array(width);
    this.#top = new Float64Array(width);
    this.#between = new Float64Array(width);
  }
}

/** What the last layers make of an interval of known width: the hidden figures and the outputs. */
export function outputOf(
  network: Network,
  sums: HeardSums,
): { hidden: number[]; outputs: IntervalOutput } {
  const pooled = sums.pooled(network.header.varianceFloor);
  const hidden = dense(network, 'hidden', pooled).map((x) => Math.max(0, x));
  return { hidden, outputs: dense(network, 'out', hidden) };
}

function dense(network: Network, kind: 'hidden' | 'out', x: ArrayLike<number>): number[] {
  const { spec, arrays } = network.layers.find((layer) => layer.spec.kind === kind)!;
  const [weights, bias] = arrays;
  return Array.from({ length: spec.outputs ?? 0 }, (_, o) => {
    let sum = bias![o]!;
    for (let i = 0; i < spec.inputs; i++) sum += weights![o * spec.inputs + i]! * x[i]!;
    return sum;
  });
}
