import { deflateSync, inflateSync } from 'fflate';
import { fromBase64, toBase64 } from './base64.js';

/**
 * Plain data with typed arrays as text: the arrays are taken out, made small and deflated together.
 * `Float64Array` is kept to 1/65,000 of its range (NaN stays), `Uint32Array` as differences; both, and
 * `Int16Array` and `Uint8Array`, come back as what they were.
 */
export interface Packed {
  tree: unknown;
  bytes: string;
}

type Kind = 'f' | 'u' | 'i' | 'b';
interface Reference {
  $: [kind: Kind, from: number, length: number, low: number, high: number];
}

const HOLE = 0xffff;
const STEPS = 0xfffe;

/** Packs a tree of objects, arrays, numbers, texts and typed arrays. */
export function pack(value: unknown): Packed {
  const parts: Uint8Array[] = [];
  let total = 0;
  const put = (kind: Kind, bytes: Uint8Array, length: number, low = 0, high = 0): Reference => {
    const from = total;
    parts.push(bytes);
    total += bytes.length;
    return { $: [kind, from, length, low, high] };
  };
  const walk = (node: unknown): unknown => {
    if (node instanceof Float64Array) return packFloats(node, put);
    if (node instanceof Uint32Array)
      return put('u', planes(new Uint8Array(differences(node).buffer), 4), node.length);
    if (node instanceof Int16Array)
      return put('i', planes(new Uint8Array(node.slice().buffer), 2), node.length);
    if (node instanceof Uint8Array) return put('b', node, node.length);
    if (Array.isArray(node)) return node.map(walk);
    if (typeof node === 'object' && node !== null)
      return Object.fromEntries(Object.entries(node).map(([key, one]) => [key, walk(one)]));
    return node;
  };
  const tree = walk(value);
  const all = new Uint8Array(total);
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return { tree, bytes: toBase64(deflateSync(all, { level: 6 })) };
}

/** What {@link pack} was given, floats to the precision it states. */
export function unpack(packed: Packed): unknown {
  const all = inflateSync(fromBase64(packed.bytes));
  const walk = (node: unknown): unknown => {
    if (Array.isArray(node)) return node.map(walk);
    if (typeof node !== 'object' || node === null) return node;
    const reference = (node as Partial<Reference>).$;
    if (reference) return unpackArray(all, reference);
    return Object.fromEntries(Object.entries(node).map(([key, one]) => [key, walk(one)]));
  };
  return walk(packed.tree);
}

function packFloats(
  values: Float64Array,
  put: (kind: Kind, bytes: Uint8Array, length: number, low: number, high: number) => Reference,
): Reference {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  if (!(low <= high)) [low, high] = [0, 0];
  const scale = high > low ? STEPS / (high - low) : 0;
  const steps = Uint16Array.from(values, (value) =>
    Number.isNaN(value) ? HOLE : Math.round((value - low) * scale),
  );
  return put('f', planes(new Uint8Array(steps.buffer), 2), values.length, low, high);
}

function unpackArray(all: Uint8Array, [kind, from, length, low, high]: Reference['$']): unknown {
  const width = { f: 2, u: 4, i: 2, b: 1 }[kind];
  const bytes = all.slice(from, from + length * width);
  if (kind === 'b') return bytes;
  const joined = together(bytes, width).buffer as ArrayBuffer;
  if (kind === 'i') return new Int16Array(joined);
  if (kind === 'f') {
    const step = (high - low) / STEPS;
    return Float64Array.from(new Uint16Array(joined), (one) =>
      one === HOLE ? Number.NaN : low + one * step,
    );
  }
  const values = new Uint32Array(joined);
  for (let k = 1; k < values.length; k++) values[k] = (values[k]! + values[k - 1]!) >>> 0;
  return values;
}

function differences(values: Uint32Array): Uint32Array {
  return values.map((value, k) => (k === 0 ? value : value - values[k - 1]!));
}

/** All first bytes, then all second bytes, …: like with like deflates better. */
function planes(bytes: Uint8Array, width: number): Uint8Array {
  const count = bytes.length / width;
  const out = new Uint8Array(bytes.length);
  for (let plane = 0; plane < width; plane++)
    for (let n = 0; n < count; n++) out[plane * count + n] = bytes[n * width + plane]!;
  return out;
}

function together(bytes: Uint8Array, width: number): Uint8Array {
  const count = bytes.length / width;
  const out = new Uint8Array(bytes.length);
  for (let plane = 0; plane < width; plane++)
    for (let n = 0; n < count; n++) out[n * width + plane] = bytes[plane * count + n]!;
  return out;
}
