import { Inflate, Unzlib } from 'fflate';
import { ArcError } from '../../../core/index.js';
import type { ByteSource } from '../../types.js';
import type { ByteStream } from './byte-stream.js';

/** Compressed bytes unpacked at a time: at most some 4 MB come out of them. */
const STEP = 4 * 1024;
/** Compressed bytes read at a time. */
const READ = 256 * 1024;
/** More than this out of one entry (500 million float64 values) is no recording. */
const MAX_OUTPUT = 4 * 1024 ** 3;

/**
 * Decompresses part of a source as it is asked for. Memory is bounded whatever the entry claims.
 *
 * @throws ArcError `damaged-file`, `too-large` while reading.
 */
export function inflateStream(
  source: ByteSource,
  offset: number,
  length: number,
  wrapper: 'zlib' | 'none',
): ByteStream {
  const end = Math.min(source.size, offset + length);
  const pieces: Uint8Array[] = [];
  let held = 0;
  let at = offset;
  let position = 0;
  let done = false;
  const take = (piece: Uint8Array, final: boolean): void => {
    if (piece.length > 0) pieces.push(piece);
    held += piece.length;
    done ||= final;
  };
  const inflater = wrapper === 'zlib' ? new Unzlib(take) : new Inflate(take);

  let packed = new Uint8Array(0);
  const more = async (): Promise<void> => {
    if (packed.length === 0) {
      packed = (await source.read(at, Math.min(READ, end - at))).slice();
      at += packed.length;
    }
    const step = packed.subarray(0, STEP);
    packed = packed.subarray(step.length);
    const last = step.length === 0 || (packed.length === 0 && at >= end);
    try {
      inflater.push(step, last);
    } catch (cause) {
      throw damaged(source.name, cause);
    }
    done ||= last;
    if (position + held > MAX_OUTPUT) throw tooLarge(source.name);
  };
  const drop = (count: number): void => {
    held -= count;
    position += count;
    let left = count;
    while (left > 0) {
      const first = pieces[0] as Uint8Array;
      if (first.length > left) pieces[0] = first.subarray(left);
      else pieces.shift();
      left -= Math.min(left, first.length);
    }
  };

  return {
    get position() {
      return position;
    },
    async read(wanted) {
      while (held < wanted && !done) await more();
      const bytes = new Uint8Array(Math.min(wanted, held));
      let filled = 0;
      for (const piece of pieces) {
        if (filled === bytes.length) break;
        const part = piece.subarray(0, bytes.length - filled);
        bytes.set(part, filled);
        filled += part.length;
      }
      drop(bytes.length);
      return bytes;
    },
    async skip(wanted) {
      let left = wanted;
      while (left > 0) {
        while (held === 0 && !done) await more();
        if (held === 0) return;
        const step = Math.min(held, left);
        drop(step);
        left -= step;
      }
    },
  };
}

function damaged(name: string, cause: unknown): ArcError {
  return new ArcError({
    code: 'damaged-file',
    what: `${name}: its compressed data is damaged (${cause instanceof Error ? cause.message : cause}).`,
    expected: 'an intact file',
    todo: 'Copy or export the file again.',
    cause,
  });
}

function tooLarge(name: string): ArcError {
  return new ArcError({
    code: 'too-large',
    what: `${name}: one of its entries unpacks to more than ${MAX_OUTPUT / 1024 ** 3} GiB.`,
    expected: 'a recording',
    todo: 'Cut the recording into parts.',
  });
}
