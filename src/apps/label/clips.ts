import { mkdir, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type Doubt, doubtsOf } from '../../analysis/index.js';
import type { Result } from '../../analysis/result/index.js';
import { isArcError } from '../../core/index.js';
import type { ReadOptions } from '../../recording/index.js';
import type { Engine } from '../terminal/judge/engine.js';
import { cutParts } from './clip-cut.js';
import { CLIP_COLUMNS, type ClipRow, readClipList, writeClipList } from './clip-list.js';
import { clipName } from './clip-name.js';
import type { Journal } from './journal.js';
import type { Place } from './journal-lines.js';
import type { TaskList } from './tasks.js';
import { cannotWrite } from './write-errors.js';

/** Longest clip: enough to hear a mode, and no more than a person listens to patiently. */
export const CLIP_MOST_S = 15;

/** How recordings are opened again. */
export interface Reader {
  engine: Pick<Engine, 'openSource' | 'openRecording'>;
  reading: ReadOptions;
}

/**
 * Cuts what is in doubt into WAV files in `folder`, beside `labels.csv` for a person to fill in. What
 * was filled in before is kept; only clips that are not in the list are added.
 *
 * @returns what to say about it.
 */
export async function writeClips(
  folder: string,
  journal: Journal,
  doubtful: readonly Place[],
  list: Pick<TaskList, 'carried' | 'carriedOf'>,
  reader: Reader,
): Promise<string> {
  const path = join(folder, 'labels.csv');
  const { columns, rows } = await readClipList(path);
  const known = new Set(rows.map((row) => row['clip']));
  const added: ClipRow[] = [];
  const lost: string[] = [];
  try {
    await mkdir(folder, { recursive: true });
    for (const place of doubtful) {
      const { result } = await journal.read(place);
      if (!result) continue;
      const given = ownColumns(list, result.source.path);
      const wanted = doubtsOf(result).map((doubt) => clipRow(result, doubt, given));
      const fresh = wanted.filter((row) => !known.has(row['clip']));
      if (fresh.length === 0) continue;
      const made = await cut(folder, result, fresh, reader);
      if (made === undefined) lost.push(result.source.path);
      else added.push(...made);
    }
    const names = list.carried.map((name) => `given_${name}`);
    const all = [...new Set([...columns, ...CLIP_COLUMNS, ...names])];
    if (added.length > 0 || rows.length === 0) await writeClipList(path, all, rows, added);
  } catch (error) {
    throw isArcError(error) ? error : cannotWrite(folder, error);
  }
  const gone =
    lost.length > 0 ? ` ${lost.length} files could not be read again (${lost[0]} first).` : '';
  return `${path}: ${added.length} clips added, ${rows.length} were there.${gone}\n`;
}

function ownColumns(list: Pick<TaskList, 'carried' | 'carriedOf'>, path: string): ClipRow {
  const own = list.carriedOf(path);
  return Object.fromEntries(list.carried.map((name) => [`given_${name}`, own[name] ?? '']));
}

function clipRow(result: Result, doubt: Doubt, given: ClipRow): ClipRow {
  const { path, sha256, kind, channels } = result.source;
  const startS = doubt.startS;
  const endS = Math.min(doubt.endS, startS + CLIP_MOST_S);
  const electrical = kind === 'electrical';
  const map = channels.map((one, at) => `${one.quantity}=${at + 1}`).join(',');
  const segment = result.segments.find((one) => one.startS <= startS && startS < one.endS);
  const whole = result.status === 'unsure' || segment === undefined;
  return {
    clip: clipName(path, sha256, startS, endS),
    file: path,
    start_s: String(startS),
    end_s: String(endS),
    kind: kind ?? '',
    channel: electrical ? map : '',
    scale: electrical ? channels.map((one) => `${one.quantity}=1`).join(',') : '',
    sha256: sha256 ?? '',
    tool_label: (whole ? result.mode : segment.mode) ?? result.status,
    tool_confidence: String((whole ? result.confidence : segment.confidence) ?? ''),
    tool_reason: doubt.reason,
    label: '',
    labeller: '',
    offset_s: '',
    notes: '',
    ...given,
  };
}

/** Cuts the clips of one recording; undefined when it cannot be read any more. */
async function cut(
  folder: string,
  result: Result,
  rows: readonly ClipRow[],
  reader: Reader,
): Promise<ClipRow[] | undefined> {
  const parts = rows.map((row) => ({
    startS: Number(row['start_s']),
    endS: Number(row['end_s']),
  }));
  const wavs = await readCuts(result.source.path, parts, reader);
  if (wavs === undefined) return undefined;
  const made: ClipRow[] = [];
  for (const [at, row] of rows.entries()) {
    const wav = wavs[at];
    if (wav === undefined) continue;
    const path = join(folder, row['clip']!);
    await writeFile(`${path}.partial`, wav);
    await rename(`${path}.partial`, path);
    made.push(row);
  }
  return made;
}

async function readCuts(
  path: string,
  parts: readonly { startS: number; endS: number }[],
  reader: Reader,
): Promise<(Uint8Array | undefined)[] | undefined> {
  try {
    const source = await reader.engine.openSource(path);
    try {
      const recording = await reader.engine.openRecording(source, reader.reading);
      return await cutParts(recording, parts);
    } finally {
      await source.close();
    }
  } catch (error) {
    if (isArcError(error)) return undefined;
    throw error;
  }
}
