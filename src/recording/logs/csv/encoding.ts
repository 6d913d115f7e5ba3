import { hasBytes } from '../../sniff.js';

/** How the characters of a text file are stored. */
export interface Encoding {
  label: 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252' | 'gb18030';
  /** Length of the byte-order mark. */
  markBytes: number;
}

/** Reads the byte-order mark, else looks at where zero bytes lie, else tries UTF-8. */
export function detectEncoding(head: Uint8Array): Encoding {
  if (hasBytes(head, 0, [0xef, 0xbb, 0xbf])) return { label: 'utf-8', markBytes: 3 };
  if (hasBytes(head, 0, [0xff, 0xfe])) return { label: 'utf-16le', markBytes: 2 };
  if (hasBytes(head, 0, [0xfe, 0xff])) return { label: 'utf-16be', markBytes: 2 };
  const wide = wideWithoutMark(head);
  if (wide !== undefined) return { label: wide, markBytes: 0 };
  if (isUtf8(head)) return { label: 'utf-8', markBytes: 0 };
  const chinese = decode(head, 'gb18030');
  return { label: /时间|电压|电流|采样/.test(chinese) ? 'gb18030' : 'windows-1252', markBytes: 0 };
}

/** Decodes leniently: what is no valid text becomes U+FFFD. */
export function decode(bytes: Uint8Array, label: Encoding['label']): string {
  return new TextDecoder(label).decode(bytes);
}

/** Latin text in UTF-16 has a zero in every second byte. */
function wideWithoutMark(head: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  const length = Math.min(head.length, 512) & ~1;
  if (length < 4) return undefined;
  const zeros = [0, 0];
  for (let i = 0; i < length; i++) if (head[i] === 0) zeros[i & 1]!++;
  const [even = 0, odd = 0] = zeros;
  if (odd > 0.4 * length && even === 0) return 'utf-16le';
  if (even > 0.4 * length && odd === 0) return 'utf-16be';
  return undefined;
}

function isUtf8(head: Uint8Array): boolean {
  try {
    // `stream` lets a character be cut at the end of the head.
    new TextDecoder('utf-8', { fatal: true }).decode(head, { stream: true });
    return true;
  } catch {
    return false;
  }
}
