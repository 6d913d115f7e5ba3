import { extname } from 'node:path';
import type { Result } from '../../../analysis/result/index.js';
import { ArcError } from '../../../core/index.js';
import { readWords } from '../../terminal/flags/language-flag.js';
import { engineOf } from '../../terminal/flags/model-flag.js';
import { readReading } from '../../terminal/flags/reading-flags.js';
import { readSettings } from '../../terminal/flags/setting-flags.js';
import { readSetup } from '../../terminal/flags/setup-flags.js';
import { listInputs } from '../../terminal/inputs.js';
import type { Job } from '../../terminal/judge/classify-one.js';
import type { Engine } from '../../terminal/judge/engine.js';
import { createProgress } from '../../terminal/progress.js';
import { filesOfOptions } from '../../terminal/spare-inputs.js';
import { visible } from '../../view/index.js';
import { recordWriter } from '../classify/record-writer.js';
import { classifyAll, sayTally, type Tally } from '../classify/run.js';
import { readSide } from '../compare/side.js';
import { createFigureWriter, FIGURE_FORMATS, type FigureFormat } from './figure-writer.js';
import { loadPageScript } from './page-script.js';
import { createPageWriter, type PageWriterOptions, together } from './page-writer.js';
import { readPeople } from './people.js';
import { type EvidenceEngine, withEvidence } from './with-evidence.js';

type Options = Readonly<Record<string, unknown>>;

/**
 * The whole command: options first, then the inputs one by one, each to a page of its own.
 * @throws ArcError for wrong use, before anything is read
 */
export async function reportCommand(
  given: readonly string[],
  options: Options,
  engine?: Engine,
): Promise<void> {
  const words = readWords(options);
  const reading = readReading(options, 'raw-format');
  const settings = readSettings(options);
  const setup = await readSetup(options);
  const inputs = await listInputs(given);
  const several = given.length > 1 || inputs.length > 1 || inputs[0]?.origin === 'folder';
  const collecting = withEvidence(engine ?? (await engineOf(options)));
  const read = inputs.map(({ path }) => path);
  const people = await readProgress(options, {
    several,
    job: { engine: engine ?? collecting, setup, settings, reading },
  });
  const { writer, sink } = await createOutput(collecting, options, read, {
    several,
    words,
    ...(people ? { progress: people } : {}),
  });
  const rules = {
    overwrite: options['overwrite'] === true,
    inputs: [...read, ...filesOfOptions(options)],
  };
  const records = await recordWriter(options, rules);
  const progress = createProgress(inputs.length);
  const job = { engine: collecting, setup, settings, reading, progress };
  let tally: Tally;
  try {
    const both = records ? together(writer, records) : writer;
    tally = await classifyAll(inputs, job, { writer: both, sink, failOn: [] });
    await sink.close(true);
  } catch (error) {
    await sink.close(false);
    throw error;
  }
  process.stderr.write(
    `${several ? sayTally(tally, words) : ''}${words.terminal.tally.wrote(visible(String(options['out'])))}\n`,
  );
  if (tally.failed > 0 || tally.skipped.length === inputs.length) process.exitCode = 1;
}

async function createOutput(
  engine: EvidenceEngine,
  options: Options,
  read: readonly string[],
  { several, words, progress }: Pick<PageWriterOptions, 'several' | 'words' | 'progress'>,
) {
  const out = String(options['out']);
  const format = formatOf(options, out);
  const figure = text(options['figure']);
  const overwrite = options['overwrite'] === true;
  const inputs = [...read, ...filesOfOptions(options)];
  const common = { out, overwrite, inputs, words, script: await loadPageScript() };
  if (format === 'html') {
    if (figure !== undefined) throw pageHasAll();
    return createPageWriter(engine, { ...common, several, ...(progress ? { progress } : {}) });
  }
  if (several) throw oneInput(format);
  const browser = text(options['browser']);
  const whole = format === 'pdf' && figure === undefined;
  return createFigureWriter(engine, {
    ...common,
    format,
    browser,
    figure: whole ? null : (figure ?? 'time'),
  });
}

/** Whose runs they are, and the run that they are held against. */
async function readProgress(
  options: Options,
  { several, job }: { several: boolean; job: Omit<Job, 'progress'> },
): Promise<PageWriterOptions['progress']> {
  const given = text(options['progress']);
  const reference = text(options['reference']);
  if (given === undefined) {
    if (reference !== undefined) throw needsProgress();
    return undefined;
  }
  if (!several) throw severalInputs();
  const personOf = await readPeople(given);
  if (reference === undefined) return { personOf, wanted: job.setup.expectedMode, reference: null };
  const quiet = { ...job, progress: createProgress(1) };
  const side = await readSide(reference, quiet);
  quiet.progress.clear();
  if (side.result.status === 'failed') throw badReference(reference, side.result);
  return { personOf, wanted: job.setup.expectedMode, reference: side.result };
}

function needsProgress(): ArcError {
  return new ArcError({
    code: 'reference-without-progress',
    what: '--reference was given without --progress.',
    expected: '--progress with a pattern or table that says whose runs they are',
    todo: 'Add --progress, or hold two runs against each other with compare --reference.',
  });
}

function badReference(path: string, { error }: Result): ArcError {
  return new ArcError({
    code: 'bad-reference',
    what: `The reference ${path} could not be judged. ${error?.message ?? ''}`,
    expected: 'a recording or a result document of a run that others are held against',
    todo: 'Name another, or leave --reference out.',
  });
}

function severalInputs(): ArcError {
  return new ArcError({
    code: 'several-inputs',
    what: '--progress was given for one recording.',
    expected: 'several recordings, or a folder of them',
    todo: 'Name more recordings, or leave --progress out.',
  });
}

/** As stated; else as the name of the file ends; else a page. */
function formatOf(options: Options, out: string): 'html' | FigureFormat {
  const stated = text(options['format']) ?? extname(out).slice(1).toLowerCase();
  return FIGURE_FORMATS.find((one) => one === stated) ?? 'html';
}

function pageHasAll(): ArcError {
  return new ArcError({
    code: 'figure-without-format',
    what: '--figure was given for a page, which holds every figure.',
    expected: '--figure with --format svg, png or pdf',
    todo: 'Add --format, or leave --figure out.',
  });
}

function oneInput(format: string): ArcError {
  return new ArcError({
    code: 'one-input',
    what: `Several inputs were given with --format ${format}.`,
    expected: 'one input',
    todo: 'Run once for each input, or take --format html for all of them.',
  });
}

function text(value: unknown): string | undefined {
  return typeof value === 'string' ? value : undefined;
}
