import { compareResults } from '../../../analysis/compare/index.js';
import { parseSetup } from '../../../setup/index.js';
import { readWords } from '../../terminal/flags/language-flag.js';
import { readReading } from '../../terminal/flags/reading-flags.js';
import { readSettings } from '../../terminal/flags/setting-flags.js';
import type { Engine } from '../../terminal/judge/engine.js';
import { lookOf } from '../../terminal/look.js';
import { jsonForStdout, writeOut } from '../../terminal/output.js';
import { createProgress } from '../../terminal/progress.js';
import { readSide } from './side.js';
import { comparisonText } from './text.js';

/** Analyses both, compares, writes; exit status 1 where one of them failed. */
export async function compareCommand(
  paths: { before: string; after: string },
  options: Readonly<Record<string, unknown>>,
  engine?: Engine,
): Promise<void> {
  const words = readWords(options);
  const job = {
    engine: engine ?? (await import('../../terminal/judge/shipped-engine.js')).SHIPPED_ENGINE,
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
      ? jsonForStdout(comparison)
      : comparisonText(comparison, lookOf(process.stdout), words),
  );
  if ([before, after].some(({ result }) => result.status === 'failed')) process.exitCode = 1;
}
