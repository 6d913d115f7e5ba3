// IMA ADPCM, 4 bits a sample, low half of a byte first, no blocks: the predictor begins at 0, the step at its least.
// Tables and rule: IMA Digital Audio Focus and Technical Working Groups, "Recommended Practices for Enhancing
// Digital Audio Compatibility in Multimedia Systems", revision 3.00, 1992 (from memory of it).
const INDEX = [-1, -1, -1, -1, 2, 4, 6, 8];
const LAST = 88;

/** The 89 steps: 7 to 32,767, each a tenth larger than the one before. */
export const STEPS = [
  7, 8, 9, 10, 11, 12, 13, 14, 16, 17, 19, 21, 23, 25, 28, 31, 34, 37, 41, 45, 50, 55, 60, 66, 73,
  80, 88, 97, 107, 118, 130, 143, 157, 173, 190, 209, 230, 253, 279, 307, 337, 371, 408, 449, 494,
  544, 598, 658, 724, 796, 876, 963, 1060, 1166, 1282, 1411, 1552, 1707, 1878, 2066, 2272, 2499,
  2749, 3024, 3327, 3660, 4026, 4428, 4871, 5358, 5894, 6484, 7132, 7845, 8630, 9493, 10442, 11487,
  12635, 13899, 15289, 16818, 18500, 20350, 22385, 24623, 27086, 29794, 32767,
];

/** Samples at full scale 1 to bytes. */
export function encodeAdpcm(samples) {
  const bytes = new Uint8Array(Math.ceil(samples.length / 2));
  let value = 0;
  let index = 0;
  samples.forEach((sample, i) => {
    const wanted = Math.max(-32768, Math.min(32767, Math.round(32768 * sample)));
    let step = STEPS[index];
    let left = Math.abs(wanted - value);
    let moved = step >> 3;
    let code = wanted < value ? 8 : 0;
    for (const bit of [4, 2, 1]) {
      if (left >= step) {
        code |= bit;
        left -= step;
        moved += step;
      }
      step >>= 1;
    }
    value = Math.max(-32768, Math.min(32767, value + (code & 8 ? -moved : moved)));
    index = Math.max(0, Math.min(LAST, index + INDEX[code & 7]));
    bytes[i >> 1] |= code << (i % 2 === 0 ? 0 : 4);
  });
  return bytes;
}
