import { parseFailOn } from '../../terminal/flags/fail-on.js';
import { readWords } from '../../terminal/flags/language-flag.js';
import { engineOf } from '../../terminal/flags/model-flag.js';
import { readReading } from '../../terminal/flags/reading-flags.js';
import { readSettings } from '../../terminal/flags/setting-flags.js';
import { readSetup } from '../../terminal/flags/setup-flags.js';
import { type Input, type LostInput, listInputs } from '../../terminal/inputs.js';
import { readBeside } from '../../terminal/judge/beside.js';
import type { Engine } from '../../terminal/judge/engine.js';
import { withRates } from '../../terminal/judge/with-rates.js';
import { lookOf } from '../../terminal/look.js';
import { createProgress } from '../../terminal/progress.js';
import { fileSink, type OutputRules, type Sink, stdoutSink } from '../../terminal/sink.js';
import { filesOfOptions, spareInputsOfStdout } from '../../terminal/spare-inputs.js';
import type { Words } from '../../view/index.js';
import { together } from '../report/page-writer.js';
import { recordWriter } from './record-writer.js';
import { classifyAll, sayTally, type Tally } from './run.js';
import { createWriter, type OutputFormat } from './writer.js';

/**
 * The whole command: options checked first, then the inputs one by one.
 *
 * @throws ArcError for wrong use, before anything is read.
 */
export async function classifyCommand(
  given: readonly string[],
  options: Readonly<Record<string, unknown>>,
  engine?: Engine,
): Promise<void> {
  const failOn = parseFailOn(text(options['failOn']));
  const words = readWords(options);
  const stated = readReading(options);
  const settings = readSettings(options);
  const setup = await readSetup(options);
  const inputs = await listInputs(given);
  const { beside, reading } = readBeside(options, stated, inputs);
  const out = text(options['out']);
  const read = [...inputs.map(({ path }) => path), ...filesOfOptions(options)];
  const rules = { overwrite: options['overwrite'] === true, inputs: read };
  if (out === undefined) await spareInputsOfStdout(read);
  const sink = out === undefined ? stdoutSink() : await fileSink(out, rules);
  const several = given.length > 1 || inputs.length > 1 || inputs[0]?.origin === 'folder';
  const look = lookOf(out === undefined ? process.stdout : undefined);
  const explain = options['explain'] === true;
  const progress = createProgress(inputs.length);
  const plain = withRates(engine ?? (await engineOf(options)));
  const { ratesOf } = plain;
  // Programs read one document a line, however many there are; a person reads one in a terminal.
  const indented = out === undefined && process.stdout.isTTY && !several;
  const how = { look, several, indented, explain, words, ratesOf };
  const writer = createWriter(formatOf(options), sink, how);
  const page = await reportBeside(plain, options, rules, { several, words });
  const common = { engine: page?.engine ?? plain, setup, settings, reading, progress };
  const job = beside ? { ...common, beside } : common;
  const records = await recordWriter(options, rules);
  const shown = page?.tee(writer) ?? writer;
  const output = { writer: records ? together(shown, records) : shown, sink, failOn };
  const tally = await complete([sink, ...(page ? [page.sink] : [])], () =>
    classifyAll(inputs, job, output),
  );
  if (several) process.stderr.write(sayTally(tally, words));
  if (tally.failed > 0 || tally.met > 0 || nothingRead(tally, inputs)) process.exitCode = 1;
}

async function complete(sinks: readonly Sink[], work: () => Promise<Tally>): Promise<Tally> {
  let done = false;
  try {
    const tally = await work();
    done = true;
    return tally;
  } finally {
    for (const sink of sinks) await sink.close(done);
  }
}

/** With `--report` a page is written beside the other output, from the same reading. */
async function reportBeside(
  engine: Engine,
  options: Readonly<Record<string, unknown>>,
  rules: OutputRules,
  { several, words }: { several: boolean; words: Words },
) {
  const out = text(options['report']);
  if (out === undefined) return undefined;
  const { openReport } = await import('../report/open-report.js');
  return openReport(engine, {
    out,
    several,
    words,
    ...rules,
  });
}

/** Folders that held files but not one recording: nothing was handled. */
function nothingRead(tally: Tally, inputs: readonly (Input | LostInput)[]): boolean {
  return tally.skipped.length === inputs.length;
}

function formatOf(options: Readonly<Record<string, unknown>>): OutputFormat {
  if (options['json'] === true) return 'json';
  if (options['csvFor'] === 'excel') return 'excel';
  if (options['csvFor'] === 'any') return 'plain';
  return 'text';
}

function text(value: unknown): string | undefined {
  return typeof value === 'string' ? value : undefined;
}
