import { mkdir, readdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { ArcError } from '../../../core/index.js';
import { loadSite } from './site.js';

/**
 * Writes the browser page as a static site. A folder that holds something already is left alone unless
 * `overwrite` is given; then files of the page replace those of the same name and others stay.
 * @throws ArcError `folder-not-empty`, `cannot-write`
 */
export async function pageCommand(options: Readonly<Record<string, unknown>>): Promise<void> {
  const out = String(options['out']);
  const site = await loadSite();
  const there = await readdir(out).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return [];
    throw cannotWrite(out, error);
  });
  if (there.length > 0 && options['overwrite'] !== true)
    throw new ArcError({
      code: 'folder-not-empty',
      what: `${out} holds ${there.length} files or folders already.`,
      expected: 'a new or empty folder',
      todo: 'Name another folder, or add --overwrite.',
    });
  let bytes = 0;
  try {
    for (const [name, content] of site) {
      const file = join(out, name);
      await mkdir(dirname(file), { recursive: true });
      await writeFile(file, content);
      bytes += content.length;
    }
  } catch (error) {
    throw cannotWrite(out, error);
  }
  process.stderr.write(
    `wrote ${out} (${site.size} files, ${(bytes / 1e6).toFixed(1)} MB); offer it by HTTPS, without which browsers give no microphone\n`,
  );
}

function cannotWrite(out: string, error: unknown): ArcError {
  const { code = String(error) } = error as NodeJS.ErrnoException;
  return new ArcError({
    code: 'cannot-write',
    what: `${out} could not be written (${code}).`,
    expected: 'a folder that you may write to',
    todo: 'Name another folder.',
    cause: error,
  });
}
