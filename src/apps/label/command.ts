import { ArcError } from '../../core/index.js';
import { STDIN } from '../terminal/inputs.js';
import { loadEngine, modelsOf } from './engine-module.js';
import { readLabelOptions } from './label-options.js';
import { labelToFile, type MakeRunner } from './to-file.js';
import { labelToStdout } from './to-stdout.js';

/** Parts that tests of the command put in; both default to what comes with the package. */
export interface LabelParts {
  engineUrl?: string;
  makeRunner?: MakeRunner;
}

/**
 * The whole command: options checked first, then the inputs.
 *
 * @throws ArcError for wrong use, before anything is labelled.
 */
export async function labelCommand(
  given: readonly string[],
  raw: Readonly<Record<string, unknown>>,
  parts: LabelParts = {},
): Promise<void> {
  const options = await readLabelOptions(raw);
  if (given.includes(STDIN) && given.length > 1) throw mixedStdin();
  const engineUrl = parts.engineUrl ?? null;
  const makeRunner = parts.makeRunner ?? ((plan) => shippedRunner(plan));
  const { out } = options;
  if (out === undefined) await labelToStdout(given, options, makeRunner, engineUrl);
  else await labelToFile(given, { ...options, out }, makeRunner, engineUrl);

  async function shippedRunner(plan: Parameters<MakeRunner>[0]) {
    if (options.queue !== undefined) {
      const { queueRunner } = await import('./queue/queue-runner.js');
      const models = await modelsOf(plan, await loadEngine(engineUrl));
      const { queue: url, passwordFile, queuePatienceS: patienceS } = options;
      return queueRunner(plan, { url, passwordFile, patienceS, models });
    }
    const { poolRunner } = await import('./pool.js');
    return poolRunner(plan, options.workers, engineUrl, options.timeLimitS);
  }
}

function mixedStdin(): ArcError {
  return new ArcError({
    code: 'mixed-stdin',
    what: 'The list on stdin (-) was named together with other inputs.',
    expected: 'either - alone or files, folders and patterns',
    todo: 'Add the other paths to the list.',
  });
}
