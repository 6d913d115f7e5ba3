import { ArcError } from '../../../core/index.js';
import type { FitFlags } from './flags.js';

/** Sends `fit` to the one of its jobs that was asked for. */
export async function fitCommand(flags: FitFlags): Promise<void> {
  if (flags['from']) return (await import('./from-labels.js')).fitFromLabels(flags);
  refuseIdle(flags);
  if (flags['recipe']) return (await import('./from-recipe.js')).fitFromRecipe(flags);
  if (flags['referenceFrom'])
    return (await import('./reference-windows.js')).writeReferenceWindows(flags);
  throw new ArcError({
    code: 'nothing-to-fit',
    what: 'fit was not told what to do.',
    expected: '--from labels.csv, --recipe shipped, or --reference-from <folder>',
    todo: 'See `arc-transfer fit --help` for examples.',
  });
}

/** Options that only labelled recordings have a use for. @throws ArcError `option-without-use` */
function refuseIdle(flags: FitFlags): void {
  const idle = ['overwrite', 'channel', 'map', 'scale', 'sampleRate', 'format'].find(
    (key) => flags[key] !== undefined,
  );
  if (idle === undefined) return;
  throw new ArcError({
    code: 'option-without-use',
    what: `--${idle.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)} was given without --from.`,
    expected: 'it with --from only',
    todo: 'Leave it out.',
  });
}
