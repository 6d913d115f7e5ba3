import { median } from '../../dsp/index.js';

/** Mean voltage and current of a tenth of a second. */
export interface SweepBlock {
  startS: number;
  meanV: number;
  meanA: number;
}

/** A stretch with dial and feed left alone. */
export interface FoundStep {
  fromS: number;
  toS: number;
}

/** Own choice, all of them. */
const BLOCK_S = 0.1;
/** Shorter than this the machine had not settled. */
const LEAST_S = 1.5;
/** What a change must explain, in squared standard deviations, to count as a step. */
const PENALTY = 30;
/** No meter and no arc is steadier than this. */
const LEAST_SD = { volts: 0.15, amperes: 2 };
/** Neighbours nearer than this are one setting. */
const SAME = { volts: 0.4, share: 0.04 };
/** Where an arc burns: as wide as arcs are, so that a pause of the gun splits. */
const ARC = { leastV: 9, mostV: 48, leastA: 10 };

/**
 * Finds where dial or feed were turned, from mean voltage and current of blocks of 0.1 s that follow each other: the
 * division into level stretches of at least 1.5 s with the least squared rest, each further stretch costing a
 * penalty (optimal partitioning; Jackson and others, IEEE Signal Process. Lett. 12 (2005) 105, from memory).
 */
export function findSteps(blocks: readonly SweepBlock[]): FoundStep[] {
  const steps: FoundStep[] = [];
  let from = 0;
  for (let k = 0; k <= blocks.length; k++) {
    if (k < blocks.length && burns(blocks[k]!)) continue;
    steps.push(...levelParts(blocks.slice(from, k)));
    from = k + 1;
  }
  return steps;
}

/** Means of volts and amperes over blocks of 0.1 s; a rest shorter than that is left out. */
export function sweepBlocks(
  volts: Float64Array,
  amperes: Float64Array,
  rateHz: number,
): SweepBlock[] {
  const size = Math.round(BLOCK_S * rateHz);
  const blocks: SweepBlock[] = [];
  for (let from = 0; from + size <= volts.length; from += size) {
    let [sumV, sumA] = [0, 0];
    for (let n = from; n < from + size; n++) {
      sumV += volts[n]!;
      sumA += amperes[n]!;
    }
    blocks.push({ startS: from / rateHz, meanV: sumV / size, meanA: sumA / size });
  }
  return blocks;
}

function burns({ meanV, meanA }: SweepBlock): boolean {
  return meanV >= ARC.leastV && meanV <= ARC.mostV && Math.abs(meanA) >= ARC.leastA;
}

function levelParts(blocks: readonly SweepBlock[]): FoundStep[] {
  const least = Math.round(LEAST_S / BLOCK_S);
  if (blocks.length < least) return [];
  const volts = new Level(
    blocks.map((one) => one.meanV),
    LEAST_SD.volts,
  );
  const amperes = new Level(
    blocks.map((one) => one.meanA),
    LEAST_SD.amperes,
  );
  const count = blocks.length;
  const cost = new Float64Array(count + 1).fill(Number.POSITIVE_INFINITY);
  const cut = new Int32Array(count + 1);
  cost[0] = -PENALTY;
  for (let end = least; end <= count; end++)
    for (let start = 0; start + least <= end; start++) {
      const all = cost[start]! + PENALTY + volts.rest(start, end) + amperes.rest(start, end);
      if (all < cost[end]!) {
        cost[end] = all;
        cut[end] = start;
      }
    }
  const edges = [count];
  while (edges[0]! > 0) edges.unshift(cut[edges[0]!]!);
  const parts: [number, number][] = [];
  for (let k = 1; k < edges.length; k++) {
    const [start, end] = [edges[k - 1]!, edges[k]!];
    const last = parts.at(-1);
    const same =
      last !== undefined &&
      Math.abs(volts.mean(...last) - volts.mean(start, end)) < SAME.volts &&
      Math.abs(amperes.mean(...last) - amperes.mean(start, end)) <
        SAME.share * Math.abs(amperes.mean(start, end));
    if (same) last[1] = end;
    else parts.push([start, end]);
  }
  return parts.map(([start, end]) => ({
    fromS: blocks[start]!.startS,
    toS: blocks[end - 1]!.startS + BLOCK_S,
  }));
}

/** Sums of one quantity, so that the rest around the mean of any stretch costs the same. */
class Level {
  readonly #sums: Float64Array;
  readonly #squares: Float64Array;
  readonly #shift: number;
  readonly #sd: number;

  constructor(values: readonly number[], leastSd: number) {
    const jumps = values.slice(1).map((one, k) => Math.abs(one - values[k]!));
    // Of a normal spread the median jump is 0.954 standard deviations.
    const sd = Math.max(leastSd, jumps.length > 0 ? median(jumps) / 0.954 : 0);
    this.#sums = new Float64Array(values.length + 1);
    this.#squares = new Float64Array(values.length + 1);
    this.#shift = values[0]!;
    this.#sd = sd;
    values.forEach((value, k) => {
      const off = (value - this.#shift) / sd;
      this.#sums[k + 1] = this.#sums[k]! + off;
      this.#squares[k + 1] = this.#squares[k]! + off * off;
    });
  }

  mean(from: number, to: number): number {
    return this.#shift + (this.#sd * (this.#sums[to]! - this.#sums[from]!)) / (to - from);
  }

  rest(from: number, to: number): number {
    const sum = this.#sums[to]! - this.#sums[from]!;
    return this.#squares[to]! - this.#squares[from]! - (sum * sum) / (to - from);
  }
}
