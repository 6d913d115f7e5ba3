import type { ByteSource } from '../../../recording/index.js';

/** Larger than any stream, and exact as a number. */
const ENDLESS = 2 ** 50;
/** Kept from the start, so that a reader may look at the head more than once. */
const HEAD_BYTES = 64 * 1024;
/** Least bytes handed on before the end: a frame of 256 channels of 8 bytes. */
const LEAST_BYTES = 2048;

/**
 * A stream as a byte source of unknown length that is read forwards. A read gives what is there, at least a
 * frame; at the end of the stream the rest, then nothing.
 */
export class ByteFeed implements ByteSource {
  readonly name: string;
  readonly size = ENDLESS;
  readonly #chunks: AsyncIterator<Uint8Array>;
  #head = new Uint8Array(0);
  #buffer = new Uint8Array(0);
  /** Place of the first byte of the buffer in the stream. */
  #at = 0;
  #ended = false;

  constructor(name: string, chunks: AsyncIterable<Uint8Array>) {
    this.name = name;
    this.#chunks = chunks[Symbol.asyncIterator]();
  }

  get ended(): boolean {
    return this.#ended;
  }

  /** Bytes that were given but not handed on yet. */
  get waiting(): number {
    return this.#buffer.length;
  }

  /** The first bytes: all of `length` unless the stream ends before. */
  async peek(length: number): Promise<Uint8Array> {
    while (this.#at + this.#buffer.length < length && (await this.#more()));
    return this.#head.subarray(0, length);
  }

  async read(offset: number, length: number): Promise<Uint8Array> {
    const inHead = offset + length <= this.#head.length && offset < this.#at;
    if (inHead) return this.#head.subarray(offset, offset + length);
    if (offset < this.#at && offset < this.#head.length)
      return this.#head.subarray(offset, Math.min(this.#head.length, offset + length));
    this.#forget(offset);
    const least = Math.min(length, LEAST_BYTES) + (offset - this.#at);
    while (this.#buffer.length < least && (await this.#more())) this.#forget(offset);
    const from = offset - this.#at;
    return this.#buffer.subarray(from, from + length);
  }

  /** The head stays; of the rest only what lies from `offset` on. */
  #forget(offset: number): void {
    const drop = Math.min(this.#buffer.length, Math.max(0, offset - this.#at));
    this.#buffer = this.#buffer.subarray(drop);
    this.#at += drop;
  }

  async #more(): Promise<boolean> {
    if (this.#ended) return false;
    const { value, done } = await this.#chunks.next();
    if (done) {
      this.#ended = true;
      return false;
    }
    if (this.#head.length < HEAD_BYTES) this.#extendHead(value);
    this.#buffer = joinBytes(this.#buffer, value);
    return true;
  }

  #extendHead(value: Uint8Array): void {
    const known = this.#head.length;
    this.#head = joinBytes(this.#head, value.subarray(0, HEAD_BYTES - known));
  }
}

export function joinBytes(a: Uint8Array, b: Uint8Array): Uint8Array<ArrayBuffer> {
  const both = new Uint8Array(a.length + b.length);
  both.set(a);
  both.set(b, a.length);
  return both;
}
