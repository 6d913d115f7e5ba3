import { type FileHandle, open } from 'node:fs/promises';
import { ArcError } from '../../core/index.js';
import type { FileKey } from './file-key.js';
import { completeLines, type Place } from './journal-lines.js';
import type { LabelRecord } from './record.js';
import { cannotWrite } from './write-errors.js';

const HEADER = `${JSON.stringify({ journal: 'arc-transfer label', version: 1 })}\n`;
const SYNC_EVERY_MS = 2000;

/** What is kept in memory of a record. */
export interface Remembered {
  place: Place;
  fingerprint: string;
  key: FileKey | null;
  sha256: string | null;
  status: string;
  errorCode: string | null;
  hasWindows: boolean;
}

/**
 * Every answer as soon as it is there, one JSON record a line, appended and never changed. A process
 * may end at any moment: at most the last line is lost, and a new process cuts that off and goes on.
 */
export class Journal {
  readonly path: string;
  /** The newest record of each input that was there when the journal was opened. */
  readonly remembered: ReadonlyMap<string, Remembered>;
  readonly #handle: FileHandle;
  #end: number;
  #syncedMs = performance.now();

  private constructor(
    path: string,
    handle: FileHandle,
    end: number,
    remembered: ReadonlyMap<string, Remembered>,
  ) {
    this.path = path;
    this.#handle = handle;
    this.#end = end;
    this.remembered = remembered;
  }

  /**
   * Opens or begins a journal. `fresh` forgets what is in it.
   *
   * @throws ArcError `not-a-journal` for a file that is something else, `cannot-write`, `disk-full`.
   */
  static async open(path: string, fresh: boolean): Promise<Journal> {
    const handle = await openOrCreate(path);
    try {
      const found = await recall(handle, path);
      const journal = new Journal(
        path,
        handle,
        fresh ? 0 : found.end,
        fresh ? new Map() : found.remembered,
      );
      await handle.truncate(journal.#end);
      if (journal.#end === 0) await journal.#write(HEADER);
      return journal;
    } catch (error) {
      await handle.close();
      throw error;
    }
  }

  /** Adds a record, given as one line of JSON; says where it stands. @throws ArcError `disk-full`, `cannot-write`. */
  async append(line: string): Promise<Place> {
    const offset = this.#end;
    await this.#write(`${line}\n`);
    if (performance.now() - this.#syncedMs > SYNC_EVERY_MS) await this.sync();
    return { offset, length: this.#end - offset - 1 };
  }

  async read(place: Place): Promise<LabelRecord> {
    const bytes = Buffer.alloc(place.length);
    await this.#handle.read(bytes, 0, place.length, place.offset);
    return JSON.parse(bytes.toString('utf8')) as LabelRecord;
  }

  /** Has the disk keep what was written, against a loss of power. */
  async sync(): Promise<void> {
    await this.#handle.datasync();
    this.#syncedMs = performance.now();
  }

  async close(): Promise<void> {
    await this.#handle.close();
  }

  async #write(text: string): Promise<void> {
    const bytes = Buffer.from(text);
    try {
      for (let done = 0; done < bytes.length; ) {
        const at = this.#end + done;
        const { bytesWritten } = await this.#handle.write(bytes, done, bytes.length - done, at);
        done += bytesWritten;
      }
    } catch (error) {
      await this.#handle.truncate(this.#end).catch(() => {});
      throw cannotWrite(this.path, error);
    }
    this.#end += bytes.length;
  }
}

async function openOrCreate(path: string): Promise<FileHandle> {
  try {
    // Reading and writing without cutting off, made where it is not there.
    return await open(path, 'r+').catch((error: NodeJS.ErrnoException) => {
      if (error.code !== 'ENOENT') throw error;
      return open(path, 'wx+');
    });
  } catch (error) {
    throw cannotWrite(path, error);
  }
}

/** The newest record of each input, and where the complete lines end. */
async function recall(
  handle: FileHandle,
  path: string,
): Promise<{ end: number; remembered: Map<string, Remembered> }> {
  const remembered = new Map<string, Remembered>();
  let end = 0;
  for await (const { place, text } of completeLines(handle)) {
    if (end === 0 && `${text}\n` !== HEADER) throw notAJournal(path);
    else if (end > 0) remember(remembered, place, text);
    end = place.offset + place.length + 1;
  }
  if (end === 0 && !(await isBegunHeader(handle))) throw notAJournal(path);
  return { end, remembered };
}

/** A line that does not parse was damaged from outside; its input is labelled again. */
function remember(remembered: Map<string, Remembered>, place: Place, text: string): void {
  let record: LabelRecord;
  try {
    record = JSON.parse(text) as LabelRecord;
  } catch {
    return;
  }
  const { path, fingerprint, key, result, windows } = record;
  if (typeof path !== 'string') return;
  remembered.set(path, {
    place,
    fingerprint,
    key,
    sha256: result?.source.sha256 ?? null,
    status: result?.status ?? 'skipped',
    errorCode: result?.error?.code ?? null,
    hasWindows: windows !== undefined,
  });
}

/** True for an empty file, and for one whose writer stopped within its first line. */
async function isBegunHeader(handle: FileHandle): Promise<boolean> {
  const { bytesRead, buffer } = await handle.read(Buffer.alloc(HEADER.length), 0, HEADER.length, 0);
  return HEADER.startsWith(buffer.toString('utf8', 0, bytesRead));
}

function notAJournal(path: string): ArcError {
  return new ArcError({
    code: 'not-a-journal',
    what: `${path} is there already and is not the journal of an earlier run.`,
    expected: 'a journal, or no file of that name',
    todo: 'Move it away, or choose another name with --out.',
  });
}
