import { isIP } from 'node:net';

/** Object identifier of the extension (RFC 5280, 4.2.1.10). */
export const NAME_CONSTRAINTS = '2.5.29.30';

/**
 * Value of the extension that limits an authority to these addresses and host names, in DER.
 * @param addresses IPv4 or IPv6, each permitted by itself
 */
export function permittedOnly(
  addresses: readonly string[],
  names: readonly string[],
): Uint8Array<ArrayBuffer> {
  const subtrees = [
    ...names.map((name) => subtree(2, new TextEncoder().encode(name))),
    ...addresses.map((one) => subtree(7, withFullMask(one))),
  ];
  return tagged(0x30, [tagged(0xa0, subtrees)]);
}

/** `GeneralSubtree` with a base of the given number in the choice `GeneralName`. */
function subtree(choice: number, value: Uint8Array): Uint8Array<ArrayBuffer> {
  return tagged(0x30, [tagged(0x80 + choice, [value])]);
}

/** The bytes of an address, then as many of a mask that lets no other address pass. */
function withFullMask(address: string): Uint8Array<ArrayBuffer> {
  const bytes = isIP(address) === 6 ? sixteenBytes(address) : address.split('.').map(Number);
  return Uint8Array.from([...bytes, ...bytes.map(() => 0xff)]);
}

function sixteenBytes(address: string): number[] {
  const { hostname } = new URL(`http://[${address.split('%')[0]}]/`);
  const [head = '', tail] = hostname.slice(1, -1).split('::');
  const words = (part: string | undefined): number[] =>
    part ? part.split(':').map((one) => Number.parseInt(one, 16)) : [];
  const front = words(head);
  const back = words(tail);
  const gap = Array.from({ length: 8 - front.length - back.length }, () => 0);
  return [...front, ...gap, ...back].flatMap((one) => [one >> 8, one & 0xff]);
}

function tagged(tag: number, parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const body = parts.flatMap((part) => [...part]);
  const { length } = body;
  const size =
    length < 0x80 ? [length] : length < 0x100 ? [0x81, length] : [0x82, length >> 8, length & 0xff];
  return Uint8Array.from([tag, ...size, ...body]);
}
