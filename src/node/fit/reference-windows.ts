import { readdir, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { type LabelledRun, packReference, REAL, windowsOf } from '../../evaluate/index.js';
import { createSoundLane, SOUND_FEATURES } from '../../features/index.js';
import { openRecording } from '../../recording/index.js';
import { openFileSource } from '../file-source.js';
import { type FitFlags, needed } from './flags.js';

/** Folds of the collection that may be fitted on; the others are kept for scoring. */
const FOLDS = ['1', '2'];

const ORIGIN =
  'Feature windows of clips of folds 1 and 2 of "ESC: Dataset for Environmental Sound Classification" (K. J. Piczak, 2015, doi 10.7910/DVN/YDEPUT, clips under CC BY 3.0 from freesound.org; the number in a clip\'s name is its freesound id). No sound is contained.';

/**
 * Windows of the clips below a folder (named `fold-id-take.ogg`, in a folder for each kind) as one
 * document, so that a model can be fitted again without the recordings.
 */
export async function writeReferenceWindows(flags: FitFlags): Promise<void> {
  const folder = needed(flags, 'referenceFrom', '--reference-from');
  const out = needed(flags, 'out', '--out');
  const files = (await readdir(folder, { recursive: true }))
    .filter((name) => name.endsWith('.ogg') && FOLDS.includes(basename(name)[0]!))
    .sort();
  const runs: LabelledRun[] = [];
  for (const file of files) runs.push(await readRun(join(folder, file)));
  await writeFile(out, `${JSON.stringify(packReference(ORIGIN, SOUND_FEATURES, runs))}\n`);
  process.stdout.write(`${out}\n`);
}

async function readRun(path: string): Promise<LabelledRun> {
  const source = await openFileSource(path);
  try {
    const recording = await openRecording(source);
    const lane = createSoundLane(recording.sampleRateHz);
    const windows: LabelledRun['windows'] = [];
    for await (const block of recording.blocks())
      for (const window of windowsOf(lane, block.channels))
        windows.push({ window, mode: null, arc: 'off' });
    const kind = basename(dirname(path));
    return {
      id: `${kind}/${basename(path)}`,
      family: kind,
      conditions: [REAL],
      mode: null,
      unambiguous: true,
      windows,
    };
  } finally {
    await source.close();
  }
}
