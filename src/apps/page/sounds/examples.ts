import type { Mode } from '../../../core/index.js';
import { decodeAdpcm } from './adpcm.js';

/** A simulated sound that comes with the page. */
export interface Example {
  mode: Mode;
  rateHz: number;
  samples: number;
  /** Where its bytes lie. */
  from: number;
  bytes: number;
  /** When the events happen that mark the mode, s from the first sample. */
  marksS: readonly number[];
}

/** The examples of the page, fetched when first asked for. */
export class Examples {
  #list: Promise<Example[]> | null = null;
  #bytes: Promise<Uint8Array> | null = null;

  /** @throws where they can't be fetched; the next call tries again */
  list(): Promise<Example[]> {
    this.#list ??= fetched('sounds/examples.json').then(
      (answer) => answer.json() as Promise<Example[]>,
    );
    this.#list.catch(() => {
      this.#list = null;
    });
    return this.#list;
  }

  async samples({ from, bytes, samples }: Example): Promise<Float32Array<ArrayBuffer>> {
    this.#bytes ??= fetched('sounds/examples.bin').then(
      async (answer) => new Uint8Array(await answer.arrayBuffer()),
    );
    this.#bytes.catch(() => {
      this.#bytes = null;
    });
    return decodeAdpcm((await this.#bytes).subarray(from, from + bytes), samples);
  }
}

async function fetched(path: string): Promise<Response> {
  const answer = await fetch(path);
  if (!answer.ok) throw new Error(path);
  return answer;
}
