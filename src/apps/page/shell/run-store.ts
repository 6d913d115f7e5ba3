import { type Database, openDatabase, type Run } from '../storage/database.js';
import { dropPieces, piecesOf, unfinished } from '../storage/pieces.js';
import {
  boothNames,
  dropEverything,
  dropRun,
  fileOf,
  keepRun,
  keepSetup,
  listRuns,
  room,
  setupOf,
} from '../storage/runs.js';
import type { Leftover } from './state.js';
import type { Store } from './store.js';

/** Largest file that is kept beside its result, bytes. */
export const LARGEST_KEPT = 64e6;

/** The device's store as the page uses it: what can't be kept is said, never dropped in silence. */
export class RunStore {
  readonly #store: Store;
  #database: Database | null = null;
  #opened: () => void = () => {};
  /** A set-up may be typed before the store is open. */
  readonly #opening = new Promise<void>((resolve) => {
    this.#opened = resolve;
  });

  constructor(store: Store) {
    this.#store = store;
  }

  async open(): Promise<void> {
    try {
      this.#database = await openDatabase();
      this.#opened();
      this.#store.set({ store: 'open', leftovers: await this.#leftovers() });
      await this.refresh();
    } catch {
      this.#opened();
      this.#store.set({ store: 'none' });
    }
  }

  async refresh(): Promise<void> {
    if (!this.#database) return;
    const runs = await listRuns(this.#database);
    const booths = await boothNames(this.#database);
    this.#store.set({ runs, booths, room: await room() });
  }

  /** Keeps a run; without a store, or where there is no room, the answer is `no`. */
  async keep(run: Run, file: Blob | null): Promise<'yes' | 'only-result' | 'no'> {
    if (!this.#database) return 'no';
    const fits = file !== null && file.size <= LARGEST_KEPT;
    try {
      await keepRun(this.#database, { ...run, hasFile: fits }, fits ? file : null);
      await dropPieces(this.#database, run.id);
      await this.refresh();
      return fits || file === null ? 'yes' : 'only-result';
    } catch {
      return 'no';
    }
  }

  /** Keeps what changed of a run that is kept already; its file stays. */
  async update(run: Run): Promise<void> {
    if (this.#database) await keepRun(this.#database, run, null).catch(() => {});
    await this.refresh();
  }

  async file(id: string): Promise<Blob | null> {
    return (this.#database && (await fileOf(this.#database, id))) ?? null;
  }

  async remove(id: string): Promise<void> {
    if (this.#database) await dropRun(this.#database, id);
    await this.refresh();
  }

  async clear(): Promise<void> {
    if (this.#database) await dropEverything(this.#database);
    await this.refresh();
  }

  async setup(booth: string): Promise<Record<string, string>> {
    await this.#opening;
    return this.#database ? { ...(await setupOf(this.#database, booth)) } : {};
  }

  async keepSetup(booth: string, setup: Readonly<Record<string, string>>): Promise<void> {
    await this.#opening;
    // Losing a remembered set-up loses nothing that was recorded.
    if (this.#database) await keepSetup(this.#database, booth, setup).catch(() => {});
  }

  /** The samples of a recording that was cut short, with their rate. */
  async pieces(id: string): Promise<Int16Array[]> {
    return this.#database ? piecesOf(this.#database, id) : [];
  }

  async dropPieces(id: string): Promise<void> {
    if (this.#database) await dropPieces(this.#database, id);
    this.#store.set({ leftovers: await this.#leftovers() });
  }

  async #leftovers(): Promise<Leftover[]> {
    if (!this.#database) return [];
    const database = this.#database;
    const firsts = await unfinished(database);
    return Promise.all(
      firsts.map(async ({ recording, name, rateHz, createdMs }) => {
        const samples = (await piecesOf(database, recording)).reduce(
          (sum, one) => sum + one.length,
          0,
        );
        return { id: recording, name, createdMs, rateHz, seconds: samples / rateHz };
      }),
    );
  }
}
