/**
 * IMA ADPCM, 4 bits a sample, low half of a byte first, without blocks: the predictor begins at 0, the step at its
 * least. Tables and rule: IMA Digital Audio Focus and Technical Working Groups, "Recommended Practices for
 * Enhancing Digital Audio Compatibility in Multimedia Systems", revision 3.00, 1992 (from memory of it).
 */

const MOVES = [-1, -1, -1, -1, 2, 4, 6, 8];
const STEPS = [
  7, 8, 9, 10, 11, 12, 13, 14, 16, 17, 19, 21, 23, 25, 28, 31, 34, 37, 41, 45, 50, 55, 60, 66, 73,
  80, 88, 97, 107, 118, 130, 143, 157, 173, 190, 209, 230, 253, 279, 307, 337, 371, 408, 449, 494,
  544, 598, 658, 724, 796, 876, 963, 1060, 1166, 1282, 1411, 1552, 1707, 1878, 2066, 2272, 2499,
  2749, 3024, 3327, 3660, 4026, 4428, 4871, 5358, 5894, 6484, 7132, 7845, 8630, 9493, 10442, 11487,
  12635, 13899, 15289, 16818, 18500, 20350, 22385, 24623, 27086, 29794, 32767,
];
const FULL = 32768;

/** Predictor and step, which coder and decoder move alike. */
class Predictor {
  value = 0;
  #index = 0;

  get step(): number {
    return STEPS[this.#index] ?? 7;
  }

  move(code: number): void {
    const { step } = this;
    let by = step >> 3;
    if (code & 4) by += step;
    if (code & 2) by += step >> 1;
    if (code & 1) by += step >> 2;
    this.value = Math.max(-FULL, Math.min(FULL - 1, this.value + (code & 8 ? -by : by)));
    this.#index = Math.max(0, Math.min(STEPS.length - 1, this.#index + (MOVES[code & 7] ?? 0)));
  }
}

/** Samples at full scale 1 to bytes. */
export function encodeAdpcm(samples: ArrayLike<number>): Uint8Array {
  const bytes = new Uint8Array(Math.ceil(samples.length / 2));
  const predictor = new Predictor();
  for (let i = 0; i < samples.length; i++) {
    const difference = Math.round(FULL * (samples[i] ?? 0)) - predictor.value;
    let left = Math.abs(difference);
    let code = difference < 0 ? 8 : 0;
    for (const [bit, part] of [
      [4, predictor.step],
      [2, predictor.step >> 1],
      [1, predictor.step >> 2],
    ] as const) {
      if (left < part) continue;
      code |= bit;
      left -= part;
    }
    predictor.move(code);
    bytes[i >> 1] = (bytes[i >> 1] ?? 0) | (code << (i % 2 === 0 ? 0 : 4));
  }
  return bytes;
}

/** Bytes to `count` samples at full scale 1. */
export function decodeAdpcm(bytes: Uint8Array, count: number): Float32Array<ArrayBuffer> {
  const samples = new Float32Array(count);
  const predictor = new Predictor();
  for (let i = 0; i < count; i++) {
    predictor.move(((bytes[i >> 1] ?? 0) >> (i % 2 === 0 ? 0 : 4)) & 15);
    samples[i] = predictor.value / FULL;
  }
  return samples;
}
