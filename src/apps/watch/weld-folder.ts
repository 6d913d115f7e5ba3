import { mkdir, open, readdir, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { ArcError } from '../../core/index.js';
import type { Observer, WatchEvent } from './events.js';
import { sayShort } from './words.js';

const NAME = /^weld-(\d{6,})\.json$/;
/** Welds kept in memory while the folder refuses them. */
const MOST_UNSAVED = 200;

/** Writes bytes so that they are on the disk under their name, or not there at all. */
export type WriteWhole = (folder: string, name: string, text: string) => Promise<void>;

/** A result document for each weld in a folder. What cannot be written is tried again with the next weld. */
export class WeldFolder implements Observer {
  readonly firstWeld: number;
  readonly #folder: string;
  readonly #write: WriteWhole;
  readonly #say: (text: string) => void;
  #unsaved: { name: string; text: string }[] = [];
  #lost = 0;
  #failing = false;

  constructor(
    folder: string,
    firstWeld: number,
    say: (text: string) => void,
    write: WriteWhole = writeWhole,
  ) {
    this.#folder = folder;
    this.firstWeld = firstWeld;
    this.#say = say;
    this.#write = write;
  }

  /** Welds that are not on the disk. */
  get unsaved(): number {
    return this.#unsaved.length + this.#lost;
  }

  async tell(event: WatchEvent): Promise<void> {
    if (event.event !== 'weld') return;
    const name = `weld-${String(event.weld).padStart(6, '0')}.json`;
    this.#unsaved.push({ name, text: `${JSON.stringify(event.result, null, 2)}\n` });
    await this.#save();
    if (this.#unsaved.length <= MOST_UNSAVED) return;
    this.#unsaved.shift();
    this.#lost++;
  }

  async close(): Promise<void> {
    await this.#save();
    if (this.unsaved > 0)
      this.#say(`${this.unsaved} weld(s) could not be written to ${this.#folder}`);
  }

  async #save(): Promise<void> {
    while (this.#unsaved[0]) {
      const { name, text } = this.#unsaved[0];
      try {
        await this.#write(this.#folder, name, text);
      } catch (error) {
        if (!this.#failing)
          this.#say(`${name} cannot be written (${sayShort(error)}); it is kept and tried again`);
        this.#failing = true;
        return;
      }
      this.#failing = false;
      this.#unsaved.shift();
    }
  }
}

/** Makes the folder and goes on with the number after the highest in it. @throws ArcError `cannot-write` */
export async function openWeldFolder(
  folder: string,
  say: (text: string) => void,
): Promise<WeldFolder> {
  try {
    await mkdir(folder, { recursive: true });
    const numbers = (await readdir(folder)).map((name) => Number(NAME.exec(name)?.[1] ?? 0));
    const firstWeld = 1 + numbers.reduce((most, one) => Math.max(most, one), 0);
    await writeWhole(folder, '.writable', '');
    await rm(join(folder, '.writable'));
    return new WeldFolder(folder, firstWeld, say);
  } catch (error) {
    throw new ArcError({
      code: 'cannot-write',
      what: `Welds cannot be written to ${folder}: ${sayShort(error)}.`,
      expected: 'a folder with room that this user may write to',
      todo: 'Choose another folder with --welds.',
      cause: error,
    });
  }
}

/** Writes beside, forces to the disk, then renames: a reader or a power cut never meets half a file. */
export async function writeWhole(folder: string, name: string, text: string): Promise<void> {
  const partial = join(folder, `.${name}.${process.pid}.partial`);
  try {
    const file = await open(partial, 'w');
    try {
      await file.writeFile(text);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(partial, join(folder, name));
  } catch (error) {
    await rm(partial, { force: true }).catch(() => {});
    throw error;
  }
}
