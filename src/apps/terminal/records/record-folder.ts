import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, extname, join } from 'node:path';
import type { Result } from '../../../analysis/result/index.js';
import { makeRecord, type WeldRecord } from '../../../record/index.js';
import { parseSetup } from '../../../setup/index.js';
import {
  type RecordEntry,
  recordCsvHeader,
  recordCsvRow,
  recordEntry,
  recordIndex,
  recordPage,
} from '../../record/index.js';
import type { RawSetup } from '../flags/setup-flags.js';
import { numberedName } from '../numbered-name.js';
import { makeFolder, type OutputRules, writeFileBy } from '../sink.js';
import { fileExists } from '../write-errors.js';
import type { RecordOptions } from './record-flags.js';

const TABLE = 'records.csv';
const INDEX = 'index.html';

/** How a folder of records is begun. */
export interface FolderRules extends OutputRules {
  /** Goes on in a folder that holds records already, as `watch` does. */
  goOn?: boolean;
}

/** A folder of records: a sheet and a JSON document for each run, a table and an index of all. */
export class RecordFolder {
  readonly #options: RecordOptions;
  readonly #rules: FolderRules;
  #entries: RecordEntry[] = [];
  #rows: string[] = [];
  /** Number of the last record; the next has a higher one. */
  #last = 0;
  /** Runs whose name did not fit the pattern, or that the table lacks. */
  readonly unnamed: string[] = [];

  private constructor(options: RecordOptions, rules: FolderRules) {
    this.#options = options;
    this.#rules = rules;
  }

  /** Makes the folder. @throws ArcError `file-exists` where it holds records and nothing says that it may be changed */
  static async open(options: RecordOptions, rules: FolderRules): Promise<RecordFolder> {
    const folder = new RecordFolder(options, rules);
    const table = join(options.folder, TABLE);
    const there = (await stat(table).catch(() => undefined)) !== undefined;
    if (there && !rules.overwrite && !rules.goOn) throw fileExists(table);
    await makeFolder(options.folder);
    if (there && rules.goOn) await folder.#read();
    return folder;
  }

  /** What was written, and which runs no identifiers were found for. */
  get summary(): string {
    const { folder } = this.#options;
    const lost = this.unnamed.length;
    const wrote = `${join(folder, INDEX)}: ${this.#entries.length} records`;
    if (lost === 0) return wrote;
    return `${wrote}; no identifiers were found for ${lost} of them (${this.unnamed[0]} first)`;
  }

  /** Makes and writes the record of a run. `stated` is what was stated of it, without what the procedure says. */
  async add(result: Result, stated: RawSetup): Promise<WeldRecord> {
    const { fillSetup } = await import('../../../procedure/index.js');
    const { procedure, folder, words } = this.#options;
    const record = makeRecord({
      result,
      procedure,
      stated: parseSetup(stated),
      setup: parseSetup(fillSetup(procedure, stated)),
      ...(await this.#named(result)),
    });
    this.#last += 1;
    const { path } = result.source;
    const name = numberedName(this.#last, 3, basename(path, extname(path)));
    const rules = this.#rules;
    await writeFileBy(join(folder, `${name}.json`), jsonOf(record), rules);
    await writeFileBy(join(folder, `${name}.html`), recordPage(record, words), rules);
    this.#entries.push(recordEntry(record, `${encodeURIComponent(name)}.html`));
    this.#rows.push(recordCsvRow(record));
    return record;
  }

  /** Writes the table and the index. */
  async close(): Promise<void> {
    const { folder, procedure, words } = this.#options;
    const rules = { ...this.#rules, overwrite: true };
    await writeFileBy(join(folder, TABLE), recordCsvHeader() + this.#rows.join(''), rules);
    const index = recordIndex(this.#entries, procedure, words);
    await writeFileBy(join(folder, INDEX), index, rules);
  }

  async #named(result: Result): Promise<Pick<WeldRecord, 'ids' | 'weldedAt'>> {
    const { path, notes } = result.source;
    const ids: Record<string, string> = {};
    let weldedAt: WeldRecord['weldedAt'] = null;
    for (const { from, read } of this.#options.readers) {
      const found = read(path);
      if (!found) continue;
      for (const [key, value] of Object.entries(found.ids)) ids[key] ??= value;
      if (found.time !== null) weldedAt ??= { time: found.time, from };
    }
    const live = notes.find((one) => one.code === 'live-weld')?.params;
    if (this.#options.readers.length > 0 && Object.keys(ids).length === 0 && !live)
      this.unnamed.push(path);
    if (live) ids['weld'] = String(live['weld']);
    if (typeof live?.['startedAt'] === 'string')
      weldedAt = { time: burntFrom(live['startedAt'], result), from: 'watch' };
    return { ids: { ...this.#options.ids, ...ids }, weldedAt: weldedAt ?? (await writtenAt(path)) };
  }

  /** What an earlier run of `watch` left. */
  async #read(): Promise<void> {
    const { folder } = this.#options;
    const { recordSchema } = await import('../../../record/index.js');
    const names = (await readdir(folder)).filter((one) => extname(one) === '.json').sort();
    for (const name of names) {
      this.#last = Math.max(this.#last, Number(/^\d+/u.exec(name)?.[0] ?? 0));
      const text = await readFile(join(folder, name), 'utf8');
      const { success, data } = recordSchema.safeParse(JSON.parse(text));
      if (!success) continue;
      this.#entries.push(recordEntry(data, `${encodeURIComponent(basename(name, '.json'))}.html`));
      this.#rows.push(recordCsvRow(data));
    }
  }
}

const jsonOf = (record: WeldRecord): string => `${JSON.stringify(record, null, 2)}\n`;

/** When the arc began, from when its stream did; times of a weld run from there. */
function burntFrom(startedAt: string, { arcStretches }: Result): string {
  const startS = arcStretches[0]?.startS ?? 0;
  return `${new Date(Date.parse(startedAt) + 1000 * startS).toISOString().slice(0, 19)}Z`;
}

/** The time at which the file was last written, for want of a better one. */
async function writtenAt(path: string): Promise<WeldRecord['weldedAt']> {
  const stats = await stat(path).catch(() => undefined);
  if (!stats?.isFile()) return null;
  return { time: `${stats.mtime.toISOString().slice(0, 19)}Z`, from: 'file' };
}
