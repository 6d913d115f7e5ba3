import { open } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { outputIsInput, spareInputs } from '../terminal/spare-inputs.js';
import { CLIP_NAME } from './clip-name.js';
import { trackName } from './tracks.js';

/** Bytes at either end of a table that hold the names of its columns: CSV at its head, Parquet at its foot. */
const LOOK_BYTES = 64 * 1024;

/** Names that every kind of table has. */
const TABLE_NAMES = ['file', 'status', 'settings_fingerprint', 'schema_version'];

/** Where a batch writes. */
export interface BatchOutputs {
  out?: string | undefined;
  setupsPath?: string | undefined;
  clips?: string | undefined;
  tracks?: string | undefined;
}

/** Files of a run of `label`, which may lie in a folder that is labelled and are no recordings. */
export class OwnFiles {
  readonly #files: ReadonlySet<string>;
  readonly #clips: string | undefined;
  readonly #tracks: string | undefined;

  constructor({ out, setupsPath, clips, tracks }: BatchOutputs) {
    const beside = out === undefined ? [] : ['', '.partial', '.journal', '.journal.lock'];
    const list = clips === undefined ? [] : [resolve(clips, 'labels.csv')];
    const tables = beside.map((ending) => resolve(`${out}${ending}`));
    this.#files = new Set([
      ...tables,
      ...list,
      ...(setupsPath === undefined ? [] : [resolve(setupsPath)]),
    ]);
    this.#clips = clips === undefined ? undefined : resolve(clips);
    this.#tracks = tracks === undefined ? undefined : resolve(tracks);
  }

  /** Whether an absolute path is one of them. Clips and tracks are known by folder and form of the name. */
  has(path: string): boolean {
    if (this.#files.has(path)) return true;
    const folder = dirname(path);
    if (folder === this.#clips && CLIP_NAME.test(path)) return true;
    return folder === this.#tracks && path.endsWith('.tsv');
  }
}

/**
 * Refuses to put the table in the place of a recording: of one that is labelled, or of a file that is no table of
 * an earlier run while the folder it lies in is labelled.
 *
 * @throws ArcError `output-is-input`
 */
export async function spareRecordings(
  outputs: BatchOutputs & { out: string },
  inputs: readonly string[],
  leftOut: readonly string[],
  models: readonly string[],
): Promise<void> {
  const { out, setupsPath, tracks } = outputs;
  const read = [...inputs, ...models, ...(setupsPath === undefined ? [] : [setupsPath])];
  const made = tracks === undefined ? [] : inputs.map((input) => resolve(tracks, trackName(input)));
  await spareInputs([out, `${out}.journal`, ...made], read);
  const met = leftOut.find((path) => resolve(path) === resolve(out));
  if (met !== undefined && !(await isTable(out))) throw outputIsInput(out, met);
}

/** Whether a file is a table that `label` wrote, by the names of its columns. */
async function isTable(path: string): Promise<boolean> {
  const file = await open(path, 'r').catch(() => undefined);
  if (!file) return false;
  try {
    const { size } = await file.stat();
    const look = Buffer.alloc(LOOK_BYTES);
    let text = '';
    for (const at of [0, Math.max(0, size - LOOK_BYTES)]) {
      const { bytesRead } = await file.read(look, 0, LOOK_BYTES, at);
      text += look.toString('latin1', 0, bytesRead);
    }
    return TABLE_NAMES.every((name) => text.includes(name));
  } finally {
    await file.close();
  }
}
