import { compareResults } from '../../../analysis/compare/index.js';
import { parseSetup } from '../../../setup/index.js';
import { readWords } from '../../terminal/flags/language-flag.js';
import { readReading } from '../../terminal/flags/reading-flags.js';
import { readSettings } from '../../terminal/flags/setting-flags.js';
import type { Engine } from '../../terminal/judge/engine.js';
import { lookOf } from '../../terminal/look.js';
import { jsonForStdout, writeOut } from '../../terminal/output.js';
import { createProgress } from '../../terminal/progress.js';
import { writeFileBy } from '../../terminal/sink.js';
import { visible } from '../../view/index.js';
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
  const drawn = typeof options['page'] === 'string';
  const before = await readSide(paths.before, job, drawn);
  const after = await readSide(paths.after, job, drawn);
  job.progress.clear();
  const comparison = compareResults(before.result, after.result, {
    before: before.track,
    after: after.track,
  });
  const against = options['reference'] === true ? 'reference' : 'before';
  await writeOut(
    options['json'] === true
      ? jsonForStdout(comparison)
      : comparisonText(comparison, lookOf(process.stdout), words, against),
  );
  const page = options['page'];
  if (typeof page === 'string') {
    const { comparisonPage } = await import('../../report/index.js');
    const html = comparisonPage(comparison, [before.view, after.view], words, against);
    await writeFileBy(page, html, {
      overwrite: options['overwrite'] === true,
      inputs: [paths.before, paths.after],
    });
    process.stderr.write(`${words.terminal.tally.wrote(visible(page))}\n`);
  }
  if ([before, after].some(({ result }) => result.status === 'failed')) process.exitCode = 1;
}
