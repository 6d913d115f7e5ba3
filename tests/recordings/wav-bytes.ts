/** Builds WAV files by hand, byte by byte, so that faults can be put in and no reader is trusted. */

export const RATE_HZ = 48_000;
export const FRAMES = 4800;

/** 0.1 s of a 1 kHz sine of amplitude 0.5: plain maths, the expected value of every case. */
export function tone(frames = FRAMES, rateHz = RATE_HZ, hz = 1000, amplitude = 0.5): Float64Array {
  return Float64Array.from(
    { length: frames },
    (_, i) => amplitude * Math.sin((2 * Math.PI * hz * i) / rateHz),
  );
}

export function bytesOf(...parts: (Uint8Array | string | number[])[]): Uint8Array {
  const arrays = parts.map((part) =>
    typeof part === 'string'
      ? Uint8Array.from(part, (c) => c.charCodeAt(0))
      : Uint8Array.from(part),
  );
  const out = new Uint8Array(arrays.reduce((sum, array) => sum + array.length, 0));
  let at = 0;
  for (const array of arrays) {
    out.set(array, at);
    at += array.length;
  }
  return out;
}

export function number(value: number, width: number, bigEndian = false): number[] {
  const out = Array.from({ length: width }, (_, i) => Math.floor(value / 256 ** i) % 256);
  return bigEndian ? out.reverse() : out;
}

export function chunk(
  id: string,
  body: Uint8Array,
  { size = body.length, pad = true, bigEndian = false } = {},
): Uint8Array {
  const padding = pad && body.length % 2 === 1 ? [0] : [];
  return bytesOf(id, number(size, 4, bigEndian), body, padding);
}

export interface FormatParts {
  tag: number;
  channels?: number;
  rateHz?: number;
  bits: number;
  blockBytes?: number;
  extra?: Uint8Array;
  bigEndian?: boolean;
}

export function formatChunk(parts: FormatParts): Uint8Array {
  const { tag, channels = 1, rateHz = RATE_HZ, bits, extra, bigEndian = false } = parts;
  const blockBytes = parts.blockBytes ?? (channels * bits) / 8;
  const n = (value: number, width: number) => number(value, width, bigEndian);
  const body = bytesOf(
    n(tag, 2),
    n(channels, 2),
    n(rateHz, 4),
    n(rateHz * blockBytes, 4),
    n(blockBytes, 2),
    n(bits, 2),
    extra ?? [],
  );
  return chunk('fmt ', body, { bigEndian });
}

/** Extension of the extensible form: valid bits, no speaker mask, sub-format of the given tag. */
export function extensible(tag: number, validBits: number): Uint8Array {
  const guid = [0, 0, 0, 0, 0x10, 0, 0x80, 0, 0, 0xaa, 0, 0x38, 0x9b, 0x71];
  return bytesOf(number(22, 2), number(validBits, 2), number(0, 4), number(tag, 2), guid);
}

export function riff(parts: Uint8Array[], { id = 'RIFF', size = -1, bigEndian = false } = {}) {
  const body = bytesOf('WAVE', ...parts);
  return bytesOf(id, number(size < 0 ? body.length : size, 4, bigEndian), body);
}

/** Interleaves and stores channels as integers (rounded) or floats. */
export function store(
  channels: Float64Array[],
  type: 'u8' | 's16' | 's24' | 's32' | 'f32' | 'f64',
  bigEndian = false,
): Uint8Array {
  const width = { u8: 1, s16: 2, s24: 3, s32: 4, f32: 4, f64: 8 }[type];
  const frames = channels[0]?.length ?? 0;
  const out = new DataView(new ArrayBuffer(frames * channels.length * width));
  let at = 0;
  for (let i = 0; i < frames; i++) {
    for (const samples of channels) {
      const value = samples[i] ?? 0;
      if (type === 'f32') out.setFloat32(at, value, !bigEndian);
      else if (type === 'f64') out.setFloat64(at, value, !bigEndian);
      else if (type === 'u8') out.setUint8(at, Math.round(value * 128) + 128);
      else {
        const whole = Math.round(value * 2 ** (8 * width - 1));
        const bytes = number(whole < 0 ? whole + 256 ** width : whole, width, bigEndian);
        for (const [k, byte] of bytes.entries()) out.setUint8(at + k, byte);
      }
      at += width;
    }
  }
  return new Uint8Array(out.buffer);
}

/** The plainest good file: mono PCM. */
export function pcmFile(samples = tone(), type: 's16' | 's24' = 's16', rateHz = RATE_HZ) {
  const bits = type === 's16' ? 16 : 24;
  return riff([formatChunk({ tag: 1, bits, rateHz }), chunk('data', store([samples], type))]);
}
