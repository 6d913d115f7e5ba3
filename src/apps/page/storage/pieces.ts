import { type Database, openDatabase, type Piece } from './database.js';

/** Keeps samples of a recording under way, a second at a time. */
export class PieceStore {
  readonly #head: Omit<Piece, 'index' | 'samples'>;
  readonly #onFailure: (reason: string) => void;
  readonly #database: Promise<Database>;
  #waiting: Int16Array[] = [];
  #length = 0;
  #index = 0;
  #failed = false;
  #last: Promise<void> = Promise.resolve();

  /** `onFailure` is told once, when nothing more can be kept (no room, no store). */
  constructor(id: string, rateHz: number, name: string, onFailure: (reason: string) => void) {
    this.#head = { recording: id, rateHz, name, createdMs: Date.now() };
    this.#onFailure = onFailure;
    this.#database = openDatabase();
    this.#database.catch((error) => this.#fail(error));
  }

  add(samples: Int16Array): void {
    this.#waiting.push(samples);
    this.#length += samples.length;
    if (this.#length >= this.#head.rateHz) void this.flush();
  }

  /** Resolves when all that came so far is kept, or could not be. */
  flush(): Promise<void> {
    const samples = joined(this.#waiting, this.#length);
    this.#waiting = [];
    this.#length = 0;
    if (samples.length > 0) {
      const piece = { ...this.#head, index: this.#index++, samples };
      this.#last = this.#last.then(() => this.#put(piece));
    }
    return this.#last;
  }

  async #put(piece: Piece): Promise<void> {
    if (this.#failed) return;
    try {
      await (await this.#database).put('pieces', piece);
    } catch (error) {
      this.#fail(error);
    }
  }

  #fail(error: unknown): void {
    if (this.#failed) return;
    this.#failed = true;
    this.#onFailure(error instanceof Error ? error.name : String(error));
  }
}

/** Recordings that were never finished, oldest first. */
export async function unfinished(database: Database): Promise<Piece[]> {
  const firsts: Piece[] = [];
  let cursor = await database.transaction('pieces').store.openCursor();
  while (cursor) {
    if (firsts.at(-1)?.recording !== cursor.value.recording) firsts.push(cursor.value);
    cursor = await cursor.continue();
  }
  return firsts;
}

/** All samples of an unfinished recording, in order. */
export async function piecesOf(database: Database, id: string): Promise<Int16Array[]> {
  const found = await database.getAll('pieces', range(id));
  return found.map((one) => one.samples);
}

/** Forgets the pieces of a recording, which is kept as a run or not wanted. */
export async function dropPieces(database: Database, id: string): Promise<void> {
  await database.delete('pieces', range(id));
}

function range(id: string): IDBKeyRange {
  return IDBKeyRange.bound([id, 0], [id, Number.MAX_SAFE_INTEGER]);
}

function joined(parts: readonly Int16Array[], length: number): Int16Array {
  const whole = new Int16Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
