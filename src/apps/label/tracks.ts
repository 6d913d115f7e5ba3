import { createHash } from 'node:crypto';
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Result } from '../../analysis/result/index.js';
import type { Journal } from './journal.js';
import type { Place } from './journal-lines.js';
import { shortName } from './short-name.js';
import { cannotWrite } from './write-errors.js';

/** Longest name of a track less its ending, bytes: file systems take 255 for the whole, `.tsv.partial` included. */
const NAME_BYTES = 220;

/**
 * One label track for each recording that was judged: start, end and label a line, with tabs between
 * and no heading, as programs read that show labels under sound. A track that is there already and says
 * something else may have been corrected by hand: it is left, unless `overwrite`.
 */
export async function writeTracks(
  folder: string,
  journal: Journal,
  places: readonly Place[],
  overwrite: boolean,
): Promise<string> {
  let written = 0;
  let left = 0;
  try {
    await mkdir(folder, { recursive: true });
    for (const place of places) {
      const { result } = await journal.read(place);
      if (!result || result.status === 'failed') continue;
      const path = join(folder, trackName(result.source.path));
      const there = await readFile(path, 'utf8').catch(() => undefined);
      const text = trackText(result);
      if (there === undefined || (overwrite && there !== text)) await put(path, text);
      if (there !== undefined && there !== text && !overwrite) left += 1;
      else written += 1;
    }
  } catch (error) {
    throw cannotWrite(folder, error);
  }
  const kept = left > 0 ? `; ${left} that say something else were left as they are` : '';
  return `${folder}: ${written} label tracks${kept}.\n`;
}

/** The lines of a track; none where there was no arc. Microseconds, as such programs write them. */
export function trackText(result: Result): string {
  return result.segments
    .map(
      ({ startS, endS, mode }) =>
        `${startS.toFixed(6)}\t${endS.toFixed(6)}\t${mode ?? 'undetermined'}\n`,
    )
    .join('');
}

/** Folders become part of the name, so that equal names in different folders stay apart. */
export function trackName(path: string): string {
  const parts = path.split(/[\\/]+/).filter((part) => part !== '' && part !== '.' && part !== '..');
  const name = parts.join('__').replaceAll(/[:*?"<>|]/g, '_');
  const short = shortName(name, NAME_BYTES);
  if (short === name) return `${name}.tsv`;
  // What was cut off may be all that tells two recordings apart.
  const mark = createHash('sha256').update(path).digest('hex').slice(0, 8);
  return `${short}-${mark}.tsv`;
}

async function put(path: string, text: string): Promise<void> {
  await writeFile(`${path}.partial`, text);
  await rename(`${path}.partial`, path);
}
