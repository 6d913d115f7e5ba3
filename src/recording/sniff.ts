/** True when the ASCII text stands at the offset. False beyond the end. */
export function hasAscii(head: Uint8Array, offset: number, text: string): boolean {
  if (offset < 0 || offset + text.length > head.length) return false;
  for (let i = 0; i < text.length; i++) {
    if (head[offset + i] !== text.charCodeAt(i)) return false;
  }
  return true;
}

/** True when the bytes stand at the offset. False beyond the end. */
export function hasBytes(head: Uint8Array, offset: number, bytes: readonly number[]): boolean {
  if (offset < 0 || offset + bytes.length > head.length) return false;
  return bytes.every((byte, i) => head[offset + i] === byte);
}

/**
 * True when the bytes read as text: UTF-16 with a mark, or no control bytes other than tab, line and
 * page ends. Empty input is not text.
 */
export function looksLikeText(head: Uint8Array): boolean {
  if (head.length === 0) return false;
  if (hasBytes(head, 0, [0xff, 0xfe]) || hasBytes(head, 0, [0xfe, 0xff])) return true;
  const length = Math.min(head.length, 4096);
  for (let i = 0; i < length; i++) {
    const byte = head[i]!;
    if (byte < 0x20 && byte !== 9 && byte !== 10 && byte !== 12 && byte !== 13) return false;
    if (byte === 0x7f) return false;
  }
  return true;
}

const SIGNATURES: readonly (readonly [offset: number, text: string, meaning: string])[] = [
  [0, '%PDF', 'a PDF document'],
  [0, 'PK\x03\x04', 'a ZIP archive (or an office document)'],
  [0, '\x1f\x8b', 'a gzip archive'],
  [0, '7z\xbc\xaf', 'a 7-Zip archive'],
  [0, 'Rar!', 'a RAR archive'],
  [0, '\x89PNG', 'a PNG picture'],
  [0, '\xff\xd8\xff', 'a JPEG picture'],
  [0, 'GIF8', 'a GIF picture'],
  [8, 'AVI ', 'an AVI video'],
  [8, 'WEBP', 'a WebP picture'],
  [0, '\x30\x26\xb2\x75', 'Windows Media (WMA or WMV)'],
  [0, 'MThd', 'MIDI notes without sound'],
  [0, 'MAC ', "Monkey's Audio"],
  [0, 'wvpk', 'WavPack'],
  [0, '\x7fELF', 'a program'],
  [0, 'MZ', 'a Windows program'],
  [0, '<!DOCTYPE', 'a web page'],
  [0, '<html', 'a web page'],
  [0, 'TDSm', 'a TDMS log'],
];

/** In words, what an unreadable source seems to be. For error messages only. */
export function describeContent(head: Uint8Array): string {
  for (const [offset, text, meaning] of SIGNATURES)
    if (hasAscii(head, offset, text)) return meaning;
  if (head.every((byte) => byte === 0)) return 'nothing but zero bytes';
  if (looksLikeText(head)) return `text (“${firstWords(head)}”)`;
  const bytes = Array.from(head.slice(0, 8), (byte) => byte.toString(16).padStart(2, '0'));
  return `unknown binary data (first bytes ${bytes.join(' ')})`;
}

function firstWords(head: Uint8Array): string {
  const line = new TextDecoder().decode(head.slice(0, 160)).trim().split(/\r?\n/)[0] ?? '';
  return line.length > 40 ? `${line.slice(0, 40)}…` : line;
}
