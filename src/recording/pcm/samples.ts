import type { PcmEncoding, PcmFormat } from './format.js';

/** Writes the samples of one channel of interleaved frames to `out`, full scale at 1. */
export type ChannelDecoder = (bytes: Uint8Array, channel: number, out: Float64Array) => void;

/** Makes the decoder for a frame-wise format. Companded formats need their table of 256 values. */
export function channelDecoder(
  format: PcmFormat,
  bigEndian: boolean,
  table?: Float64Array,
): ChannelDecoder {
  const stride = format.channels;
  if (table) return byTable(stride, table);
  switch (format.encoding as Exclude<PcmEncoding, 'a-law' | 'mu-law' | 'ima-adpcm'>) {
    case 'u8':
      return byTable(
        stride,
        Float64Array.from({ length: 256 }, (_, i) => (i - 128) / 128),
      );
    case 's8':
      return byView(stride, false, Int8Array, 1 / 128);
    case 's16':
      return byView(stride, bigEndian, Int16Array, 1 / 32768);
    case 's24':
      return (bytes, channel, out) => decode24(bytes, channel, stride, bigEndian, out);
    case 's32':
      return byView(stride, bigEndian, Int32Array, 1 / 2147483648);
    case 'f32':
      return byView(stride, bigEndian, Float32Array, 1);
    case 'f64':
      return byView(stride, bigEndian, Float64Array, 1);
  }
}

function byTable(stride: number, table: Float64Array): ChannelDecoder {
  return (bytes, channel, out) => {
    for (let i = 0, at = channel; i < out.length; i++, at += stride) out[i] = table[bytes[at]!]!;
  };
}

interface NumberArray {
  readonly [index: number]: number;
}
interface NumberArrayType {
  readonly BYTES_PER_ELEMENT: number;
  new (buffer: ArrayBufferLike, byteOffset: number, length: number): NumberArray;
}

function byView(
  stride: number,
  bigEndian: boolean,
  Type: NumberArrayType,
  factor: number,
): ChannelDecoder {
  const width = Type.BYTES_PER_ELEMENT;
  const swap = bigEndian === hostIsLittleEndian();
  return (bytes, channel, out) => {
    const length = out.length * stride;
    let source = bytes;
    if (swap) source = swapped(bytes.subarray(0, length * width), width);
    else if (bytes.byteOffset % width !== 0) source = bytes.slice(0, length * width);
    const values = new Type(source.buffer, source.byteOffset, length);
    for (let i = 0, at = channel; i < out.length; i++, at += stride) out[i] = values[at]! * factor;
  };
}

function decode24(
  bytes: Uint8Array,
  channel: number,
  stride: number,
  bigEndian: boolean,
  out: Float64Array,
): void {
  const low = bigEndian ? 2 : 0;
  const high = 2 - low;
  for (let i = 0, at = channel * 3; i < out.length; i++, at += 3 * stride) {
    // Into the top of 32 bits, so that the sign comes along.
    const value = (bytes[at + high]! << 24) | (bytes[at + 1]! << 16) | (bytes[at + low]! << 8);
    out[i] = value / 2147483648;
  }
}

function swapped(bytes: Uint8Array, width: number): Uint8Array {
  const copy = new Uint8Array(bytes.length);
  for (let at = 0; at + width <= bytes.length; at += width) {
    for (let k = 0; k < width; k++) copy[at + k] = bytes[at + width - 1 - k]!;
  }
  return copy;
}

function hostIsLittleEndian(): boolean {
  return new Uint8Array(new Uint16Array([1]).buffer)[0] === 1;
}
