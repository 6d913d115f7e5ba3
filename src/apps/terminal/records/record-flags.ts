import type { Command } from 'commander';
import { ArcError } from '../../../core/index.js';
import type { Procedure } from '../../../procedure/index.js';
import type { Words } from '../../view/index.js';
import { readWords } from '../flags/language-flag.js';
import { readProcedureFile } from '../flags/procedure-file.js';
import { idPattern, type ReadName } from './id-pattern.js';
import { idsTable } from './ids-table.js';

/** Adds `--records` and what a record carries beside the figures. */
export function addRecordFlags(command: Command): Command {
  return command
    .optionsGroup('Records to read and sign (with --procedure):')
    .option(
      '--records <folder>',
      'a record of each run against the procedure, as a sheet (HTML) and JSON, with records.csv and index.html',
    )
    .option(
      '--id <name=value>',
      'part, seam, job, robot, welder, recorder, meters or a name of your own; once for each',
      (one: string, before: string[] = []) => [...before, one],
    )
    .option(
      '--id-pattern <pattern>',
      'the same from the names of the files, e.g. "{part}_{seam}_{date}-{time}"',
    )
    .option('--ids <table.csv>', 'the same from a table: file, part, seam, …, welded_at');
}

/** What records are made with. */
export interface RecordOptions {
  folder: string;
  procedure: Procedure;
  /** Language, units and terms of the sheets. */
  words: Words;
  /** Given for every run. */
  ids: Record<string, string>;
  /** The table before the names: what it says wins. */
  readers: { from: 'table' | 'name'; read: ReadName }[];
}

type Options = Readonly<Record<string, unknown>>;

/** Undefined where no records are asked for. @throws ArcError `records-need-procedure`, `records-missing`, `bad-id` */
export async function readRecordOptions(options: Options): Promise<RecordOptions | undefined> {
  const [folder, pattern, table] = ['records', 'idPattern', 'ids'].map((key) => options[key]);
  const procedure = await readProcedureFile(options);
  const ids = readIds(options['id']);
  if (typeof folder !== 'string') {
    const lone = Object.keys(ids).length > 0 || pattern !== undefined || table !== undefined;
    if (lone) throw noRecords();
    return undefined;
  }
  if (!procedure) throw noProcedure();
  const readers: RecordOptions['readers'] = [];
  if (typeof table === 'string') readers.push({ from: 'table', read: await idsTable(table) });
  if (typeof pattern === 'string') readers.push({ from: 'name', read: idPattern(pattern) });
  return { folder, procedure, words: readWords(options), ids, readers };
}

function readIds(given: unknown): Record<string, string> {
  const ids: Record<string, string> = {};
  for (const one of Array.isArray(given) ? given.map(String) : []) {
    const at = one.indexOf('=');
    const [name, value] = [one.slice(0, Math.max(0, at)).trim(), one.slice(at + 1).trim()];
    if (name === '' || value === '' || ids[name] !== undefined) throw badId(one);
    ids[name] = value;
  }
  return ids;
}

const refuse = (code: string, what: string, expected: string, todo: string): ArcError =>
  new ArcError({ code, what, expected, todo });

const badId = (one: string): ArcError =>
  refuse(
    'bad-id',
    `--id was given "${one}".`,
    'name=value, each name once, such as part=4711',
    'Quote values that hold spaces.',
  );

const noProcedure = (): ArcError =>
  refuse(
    'records-need-procedure',
    '--records was given without a procedure.',
    '--procedure <file.json>, which a record is held against',
    'arc-transfer help procedure shows such a document.',
  );

const noRecords = (): ArcError =>
  refuse(
    'records-missing',
    'Identifiers were given, but no records are asked for.',
    '--records <folder> with them',
    'Add it, or leave --id, --id-pattern and --ids out.',
  );
