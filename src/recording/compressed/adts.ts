/** True when an ADTS header (ISO/IEC 14496-3 Annex 1.A) stands at the start. */
export function isAdts(bytes: Uint8Array): boolean {
  return bytes.length >= 7 && bytes[0] === 0xff && (bytes[1]! & 0xf6) === 0xf0;
}

/** The AudioSpecificConfig that an ADTS header stands for; undefined when there is no header. */
export function adtsConfig(bytes: Uint8Array): Uint8Array | undefined {
  if (!isAdts(bytes)) return undefined;
  const objectType = (bytes[2]! >> 6) + 1;
  const rateIndex = (bytes[2]! >> 2) & 15;
  const channels = ((bytes[2]! & 1) << 2) | (bytes[3]! >> 6);
  return Uint8Array.of(
    (objectType << 3) | (rateIndex >> 1),
    ((rateIndex & 1) << 7) | (channels << 3),
  );
}

/** The raw packet behind an ADTS header (7 bytes, or 9 with a checksum); other bytes unchanged. */
export function stripAdts(bytes: Uint8Array): Uint8Array {
  if (!isAdts(bytes)) return bytes;
  const length = ((bytes[3]! & 3) << 11) | (bytes[4]! << 3) | (bytes[5]! >> 5);
  // A raw packet may begin with the same bits; a header also states the packet's own length.
  if (length !== bytes.length) return bytes;
  return bytes.subarray(bytes[1]! & 1 ? 7 : 9);
}

/**
 * Puts an ADTS header before a raw AAC packet. `config` is the AudioSpecificConfig. Undefined where ADTS
 * cannot say it: object types beyond 4, explicit rates, channel layouts in the packet.
 */
export function adtsHeader(config: Uint8Array, packetBytes: number): Uint8Array | undefined {
  const objectType = config[0]! >> 3;
  const rateIndex = ((config[0]! & 7) << 1) | (config[1]! >> 7);
  const channels = (config[1]! >> 3) & 15;
  const length = packetBytes + 7;
  if (objectType < 1 || objectType > 4 || rateIndex > 12 || channels < 1 || channels > 7)
    return undefined;
  if (length > 0x1fff) return undefined;
  return Uint8Array.of(
    0xff,
    0xf1,
    ((objectType - 1) << 6) | (rateIndex << 2) | (channels >> 2),
    ((channels & 3) << 6) | (length >> 11),
    (length >> 3) & 0xff,
    ((length & 7) << 5) | 0x1f,
    0xfc,
  );
}
