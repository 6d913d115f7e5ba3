import { mkdir, readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { writeWhole } from '../weld-folder.js';

const NAME = /^\d{13}-\d{6,}\.json$/;

/**
 * Messages that wait on the disk until they were acknowledged, in order. A message may be sent twice after a
 * crash between the two, but none is lost.
 */
export class Outbox {
  readonly #folder: string;
  #draining: Promise<void> | undefined;
  #again = false;

  constructor(folder: string) {
    this.#folder = folder;
  }

  async open(): Promise<void> {
    await mkdir(this.#folder, { recursive: true });
  }

  async put(number: number, text: string): Promise<void> {
    const name = `${String(Date.now()).padStart(13, '0')}-${String(number).padStart(6, '0')}.json`;
    await writeWhole(this.#folder, name, text);
  }

  async waiting(): Promise<string[]> {
    return (await readdir(this.#folder)).filter((name) => NAME.test(name)).sort();
  }

  /** Sends what waits; `send` settles when the message was acknowledged. One drain at a time. */
  drain(send: (text: string) => Promise<void>): Promise<void> {
    this.#again = true;
    this.#draining ??= this.#run(send).finally(() => {
      this.#draining = undefined;
    });
    return this.#draining;
  }

  async #run(send: (text: string) => Promise<void>): Promise<void> {
    while (this.#again) {
      this.#again = false;
      for (const name of await this.waiting()) {
        const path = join(this.#folder, name);
        await send(await readFile(path, 'utf8'));
        await rm(path, { force: true });
      }
    }
  }
}
