import fc from 'fast-check';
import { createRandom } from '../../../src/core/index.js';

/** One way to spoil a file. Places are shares of its length, so that they fit any file. */
export interface Damage {
  cutTo: number;
  flips: number;
  zeroFrom: number;
  zeroLength: number;
  /** From here on the file follows itself once more. */
  doubledAt: number;
  /** A piece copied over another place. */
  splice: { from: number; to: number; length: number };
  /** Numbers where a count, a size or an offset may stand. */
  counts: { at: number; inHead: boolean; bytes: number; bigEndian: boolean; value: string }[];
  seed: number;
}

const share = fc.double({ min: 0, max: 1, noNaN: true });
/** Most cases get one or two kinds of damage: a file spoilt in every way is refused at its first bytes. */
const mostly = <T>(usual: T, other: fc.Arbitrary<T>): fc.Arbitrary<T> =>
  fc.oneof({ weight: 4, arbitrary: fc.constant(usual) }, { weight: 1, arbitrary: other });

/** Counts that lie: nothing, signs, the most that a width holds, just beyond what is there. */
const ABSURD = ['0', '1', '7f', '80', '7fff', 'ffff', '7fffffff', '80000000', 'ffffffff'].concat([
  '100000000',
  '7fffffffffffffff',
  'ffffffffffffffff',
]);

const count: fc.Arbitrary<Damage['counts'][number]> = fc.record({
  at: share,
  inHead: fc.boolean(),
  bytes: fc.constantFrom(1, 2, 4, 8),
  bigEndian: fc.boolean(),
  value: fc.constantFrom(...ABSURD),
});

export const damage: fc.Arbitrary<Damage> = fc.record({
  cutTo: mostly(1, share),
  flips: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 4 }), fc.integer({ min: 0, max: 40 })),
  zeroFrom: share,
  zeroLength: mostly(0, fc.integer({ min: 0, max: 5000 })),
  doubledAt: mostly(1, share),
  splice: fc.record({
    from: share,
    to: share,
    length: mostly(0, fc.integer({ min: 0, max: 3000 })),
  }),
  counts: fc.oneof(fc.constant<Damage['counts']>([]), fc.array(count, { maxLength: 2 })),
  seed: fc.integer(),
});

const HEAD_BYTES = 300;

/** The file with the damage done; the same for the same damage. */
export function spoil(good: Uint8Array, how: Damage): Uint8Array {
  const split = Math.floor(good.length * how.doubledAt);
  const joined = new Uint8Array(good.length + (good.length - split));
  joined.set(good);
  joined.set(good.subarray(split), good.length);
  const bytes = joined.slice(0, Math.floor(joined.length * how.cutTo));
  if (bytes.length === 0) return bytes;
  flip(bytes, how);
  for (const one of how.counts) {
    const reach = one.inHead ? Math.min(HEAD_BYTES, bytes.length) : bytes.length;
    write(bytes, Math.floor(one.at * (reach - 1)), one);
  }
  const from = Math.floor(bytes.length * how.splice.from);
  bytes.copyWithin(Math.floor(bytes.length * how.splice.to), from, from + how.splice.length);
  const zeroFrom = Math.floor(bytes.length * how.zeroFrom);
  bytes.fill(0, zeroFrom, zeroFrom + how.zeroLength);
  return bytes;
}

/** Half of the hits change one bit, half the whole byte; 6 of 10 go to head or tail, where the structure is. */
function flip(bytes: Uint8Array, { flips, seed }: Damage): void {
  const random = createRandom(seed);
  const edge = Math.min(HEAD_BYTES, bytes.length);
  for (let i = 0; i < flips; i++) {
    const where = random.next();
    const reach = where < 0.6 ? edge : bytes.length;
    const offset = random.integer(0, reach - 1);
    const at = where > 0.4 && where < 0.6 ? bytes.length - 1 - offset : offset;
    if (random.next() < 0.5) bytes[at]! ^= 1 << random.integer(0, 7);
    else bytes[at] = random.integer(0, 255);
  }
}

function write(bytes: Uint8Array, at: number, one: Damage['counts'][number]): void {
  const value = BigInt(`0x${one.value}`);
  for (let i = 0; i < one.bytes && at + i < bytes.length; i++) {
    const shift = BigInt(8 * (one.bigEndian ? one.bytes - 1 - i : i));
    bytes[at + i] = Number((value >> shift) & 0xffn);
  }
}
