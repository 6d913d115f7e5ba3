import type { PcmFormat } from './format.js';

/** Step sizes of the IMA Digital Audio Focus group's ADPCM recommendation (1992), 89 entries. */
const STEPS = [
  7, 8, 9, 10, 11, 12, 13, 14, 16, 17, 19, 21, 23, 25, 28, 31, 34, 37, 41, 45, 50, 55, 60, 66, 73,
  80, 88, 97, 107, 118, 130, 143, 157, 173, 190, 209, 230, 253, 279, 307, 337, 371, 408, 449, 494,
  544, 598, 658, 724, 796, 876, 963, 1060, 1166, 1282, 1411, 1552, 1707, 1878, 2066, 2272, 2499,
  2749, 3024, 3327, 3660, 4026, 4428, 4871, 5358, 5894, 6484, 7132, 7845, 8630, 9493, 10442, 11487,
  12635, 13899, 15289, 16818, 18500, 20350, 22385, 24623, 27086, 29794, 32767,
] as const;
const INDEX_MOVES = [-1, -1, -1, -1, 2, 4, 6, 8] as const;

/**
 * Decodes one channel of one IMA ADPCM block (the layout of WAVE format tag 0x11) to `out`, full scale
 * at 1. `out` is as long as the block has frames. A step index beyond the table counts as its last.
 */
export function decodeImaBlock(
  block: Uint8Array,
  format: PcmFormat,
  channel: number,
  out: Float64Array,
): void {
  const { channels } = format;
  const header = channel * 4;
  let value = ((block[header]! | (block[header + 1]! << 8)) << 16) >> 16;
  let index = Math.min(block[header + 2]!, STEPS.length - 1);
  out[0] = value / 32768;
  for (let i = 1; i < out.length; i++) {
    const word = (i - 1) >> 3;
    const inWord = (i - 1) & 7;
    const at = 4 * channels * (1 + word) + 4 * channel + (inWord >> 1);
    const code = (block[at]! >> ((inWord & 1) * 4)) & 15;
    const step = STEPS[index]!;
    let change = step >> 3;
    if (code & 4) change += step;
    if (code & 2) change += step >> 1;
    if (code & 1) change += step >> 2;
    value = Math.max(-32768, Math.min(32767, code & 8 ? value - change : value + change));
    index = Math.max(0, Math.min(STEPS.length - 1, index + INDEX_MOVES[code & 7]!));
    out[i] = value / 32768;
  }
}
