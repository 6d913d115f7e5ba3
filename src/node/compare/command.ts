import { compareResults } from '../../evaluate/compare/index.js';
import { parseSetup } from '../../procedure/index.js';
import type { Engine } from '../classify/engine.js';
import { readReading } from '../flags/reading-flags.js';
import { readSettings } from '../flags/setting-flags.js';
import { lookOf } from '../look.js';
import { writeOut } from '../output.js';
import { createProgress } from '../progress.js';
import { readSide } from './side.js';
import { comparisonText } from './text.js';

/** Analyses both, compares, writes; exit status 1 where one of them failed. */
export async function compareCommand(
  paths: { before: string; after: string },
  options: Readonly<Record<string, unknown>>,
  engine?: Engine,
): Promise<void> {
  const job = {
    engine: engine ?? (await import('../classify/shipped-engine.js')).SHIPPED_ENGINE,
    setup: parseSetup({}),
    settings: readSettings(options),
    reading: readReading(options),
    progress: createProgress(2),
  };
  const before = await readSide(paths.before, job);
  const after = await readSide(paths.after, job);
  job.progress.clear();
  const comparison = compareResults(before.result, after.result, {
    before: before.track,
    after: after.track,
  });
  await writeOut(
    options['json'] === true
      ? `${JSON.stringify(comparison, null, 2)}\n`
      : comparisonText(comparison, lookOf(process.stdout)),
  );
  if ([before, after].some(({ result }) => result.status === 'failed')) process.exitCode = 1;
}
