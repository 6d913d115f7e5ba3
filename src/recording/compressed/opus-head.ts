/**
 * Pre-skip of an Opus identification header (RFC 7845) or of the `dOps` box, in samples of 48 kHz.
 * 0 when there is no header.
 */
export function opusPreSkip(description: Uint8Array | undefined): number {
  if (!description || description.length < 12) return 0;
  return description[10]! | (description[11]! << 8);
}

/** Stream layout of an Opus identification header; mono or stereo without one (family 0). */
export interface OpusLayout {
  channels: number;
  streams: number;
  coupled: number;
  mapping: number[];
}

/** @returns the layout, with the plain one of RFC 7845 family 0 where the header gives none. */
export function opusLayout(description: Uint8Array | undefined, channels: number): OpusLayout {
  const count = description?.[9] ?? channels;
  const family = description?.[18] ?? 0;
  if (family === 0 || !description || description.length < 21 + count) {
    const mapping = count === 2 ? [0, 1] : [0];
    return { channels: Math.min(count, 2), streams: 1, coupled: count === 2 ? 1 : 0, mapping };
  }
  return {
    channels: count,
    streams: description[19]!,
    coupled: description[20]!,
    mapping: Array.from(description.subarray(21, 21 + count)),
  };
}
