import { ArcError } from '../../core/index.js';

/** How the features of a network are made; see {@link FrontEnd}. */
export interface FrontEndSpec {
  /** Rate at which the network hears, Hz. */
  rateHz: number;
  /** Samples in a window and from one to the next. */
  window: number;
  hop: number;
  /** First and last bin of each band. */
  bands: [number, number][];
  /** Frames that share one level, and the blocks before and after over which it is taken. */
  blockFrames: number;
  blocksBack: number;
  blocksAhead: number;
  /** What counts for nothing: share of the level, and mean square of full scale. */
  relativeFloor: number;
  absoluteFloor: number;
}

/** One layer as the header names it. */
export interface LayerSpec {
  kind: 'full' | 'separable' | 'arc' | 'hidden' | 'out';
  kernel?: number;
  stride?: number;
  dilation?: number;
  inputs: number;
  outputs?: number;
  /** The input is added to the output. */
  residual?: boolean;
}

export interface NetworkHeader {
  format: string;
  frontEnd: FrontEndSpec;
  modes: string[];
  /** Rows of the last layer that make one block. */
  pool: number;
  varianceFloor: number;
  /** What every block of an interval counts at least. */
  leastWeight: number;
  layers: LayerSpec[];
  multiplyAddsPerS: number;
  facts?: unknown;
}

export interface Layer {
  spec: LayerSpec;
  /** Kernels and biases in the order of the file. */
  arrays: Float32Array[];
}

/** A network as the runtime uses it. */
export interface Network {
  header: NetworkHeader;
  layers: Layer[];
}

/** Form of the header that this runtime reads. */
export const NETWORK_FORMAT = 'arc-transfer network 1';

/**
 * Header and weights (half-precision floats, little-endian, layer after layer) made one.
 * @throws ArcError `bad-network` when form or size do not fit
 */
export function readNetwork(header: NetworkHeader, weights: Uint8Array): Network {
  if (header.format !== NETWORK_FORMAT) throw bad(`its form is "${header.format}"`);
  const view = new DataView(weights.buffer, weights.byteOffset, weights.byteLength);
  let at = 0;
  const layers = header.layers.map((spec) => ({
    spec,
    arrays: sizesOf(spec).map((size) => {
      if (at + 2 * size > weights.byteLength) throw bad('its weights are cut short');
      const array = new Float32Array(size);
      for (let i = 0; i < size; i++) array[i] = fromHalf(view.getUint16(at + 2 * i, true));
      at += 2 * size;
      return array;
    }),
  }));
  if (at !== weights.byteLength) throw bad('it holds more weights than its layers need');
  return { header, layers };
}

function sizesOf(spec: LayerSpec): number[] {
  const { inputs } = spec;
  const kernel = spec.kernel ?? 1;
  const outputs = spec.outputs ?? 1;
  if (spec.kind === 'full') return [outputs * inputs * kernel, outputs];
  if (spec.kind === 'separable') return [inputs * kernel, inputs, outputs * inputs, outputs];
  return [outputs * inputs, outputs];
}

function bad(what: string): ArcError {
  return new ArcError({
    code: 'bad-network',
    what: `The network cannot be read: ${what}.`,
    expected: `a header of the form "${NETWORK_FORMAT}" and the weights that belong to it`,
    todo: 'Install the package anew, or use the weights and the header of one training.',
  });
}

/** The number that 16 bits of half precision stand for. */
export function fromHalf(bits: number): number {
  const sign = bits & 0x8000 ? -1 : 1;
  const exponent = (bits >> 10) & 0x1f;
  const fraction = bits & 0x3ff;
  if (exponent === 0) return sign * fraction * 2 ** -24;
  if (exponent === 31) return fraction ? Number.NaN : sign * Number.POSITIVE_INFINITY;
  return sign * (1 + fraction / 1024) * 2 ** (exponent - 15);
}
