import { readdir } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { concat } from '../../../dsp/index.js';
import { SOUND_FEATURES } from '../../../features/index.js';
import { openFileSource } from '../../../files/file-source.js';
import {
  asRecorded,
  type LabelledRun,
  packReference,
  type RealSound,
  rerecord,
  SHIPPED_RECIPE,
} from '../../../lab/train/index.js';
import { openRecording } from '../../../recording/index.js';
import { writeFileBy } from '../../terminal/sink.js';
import { type FitFlags, needed } from './flags.js';

/** Folds of the collection that may be fitted on; the others are kept for scoring. */
const FOLDS = ['1', '2'];
/** Renderings of each clip beside the clip itself: few clips stand for all the sounds there are. */
const RENDERINGS = 4;

const ORIGIN =
  'Feature windows of clips, and of renderings of them through drawn rooms, noises and devices, of folds 1 and 2 of "ESC: Dataset for Environmental Sound Classification" (K. J. Piczak, 2015, doi 10.7910/DVN/YDEPUT, clips under CC BY 3.0 from freesound.org; the number in a clip\'s name is its freesound id). No sound is contained.';

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
  for (const file of files) {
    const sound = await readSound(join(folder, file));
    runs.push(asRecorded(sound), ...rerecord(sound, RENDERINGS, SHIPPED_RECIPE));
  }
  const rules = { overwrite: true, inputs: files.map((file) => join(folder, file)) };
  await writeFileBy(out, `${JSON.stringify(packReference(ORIGIN, SOUND_FEATURES, runs))}\n`, rules);
  process.stdout.write(`${out}\n`);
}

async function readSound(path: string): Promise<RealSound> {
  const source = await openFileSource(path);
  try {
    const recording = await openRecording(source);
    const blocks: Float64Array[] = [];
    for await (const { channels } of recording.blocks())
      blocks.push(Float64Array.from(channels[0]!));
    const kind = basename(dirname(path));
    const id = `${kind}/${basename(path)}`;
    return { id, kind, samples: concat(blocks), rateHz: recording.sampleRateHz };
  } finally {
    await source.close();
  }
}
