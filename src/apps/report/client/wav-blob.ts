/** A mono 16-bit WAV file of samples that come in pieces: what was captured, bit for bit. */
export function wavBlob(pieces: readonly Int16Array[], rateHz: number): Blob {
  const bytes = 2 * pieces.reduce((sum, one) => sum + one.length, 0);
  const header = new DataView(new ArrayBuffer(44));
  const text = (at: number, word: string): void => {
    for (let k = 0; k < word.length; k++) header.setUint8(at + k, word.charCodeAt(k));
  };
  text(0, 'RIFF');
  header.setUint32(4, 36 + bytes, true);
  text(8, 'WAVEfmt ');
  header.setUint32(16, 16, true);
  header.setUint16(20, 1, true);
  header.setUint16(22, 1, true);
  header.setUint32(24, rateHz, true);
  header.setUint32(28, 2 * rateHz, true);
  header.setUint16(32, 2, true);
  header.setUint16(34, 16, true);
  text(36, 'data');
  header.setUint32(40, bytes, true);
  return new Blob([header, ...(pieces as readonly BlobPart[])], { type: 'audio/wav' });
}
