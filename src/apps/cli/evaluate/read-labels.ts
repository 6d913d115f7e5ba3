import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { dirname, isAbsolute, join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { ArcError } from '../../../core/index.js';
import { type LabelTable, readLabelRows } from '../../../lab/evaluate/index.js';

/** Reads a CSV or TSV table of labels. @throws ArcError `bad-label-table` and whatever `readLabelRows` refuses */
export async function readLabelTable(path: string): Promise<LabelTable> {
  const text = await readFile(path, 'utf8').catch((error: unknown) => {
    throw unreadable(path, error);
  });
  const firstLine = /^[^\r\n]*/.exec(text)?.[0] ?? '';
  const counts = ['\t', ';', ','].map((mark) => ({ mark, count: firstLine.split(mark).length }));
  const delimiter = counts.reduce((a, b) => (b.count > a.count ? b : a)).mark;
  let records: { record: string[]; info: { lines: number } }[];
  try {
    const options = { bom: true, delimiter, info: true, skip_empty_lines: true } as const;
    records = parse(text, options) as unknown as typeof records;
  } catch (error) {
    throw unreadable(path, error);
  }
  const [heading, ...lines] = records.map(({ record, info }) => ({
    line: info.lines,
    cells: record,
  }));
  return readLabelRows({ name: path, heading: heading?.cells ?? [], lines });
}

/** What the user should know of a table before the work begins. */
export function remarksOn(table: LabelTable): string[] {
  const remarks: string[] = [];
  if (table.empty > 0) remarks.push(`${table.empty} rows have no label and are passed over.`);
  if (table.unused.length > 0) remarks.push(`Columns not used: ${table.unused.join(', ')}.`);
  return remarks;
}

/** Where a file of the table lies: seen from the table's folder, else from the working folder. */
export function placeOf(table: string, file: string): string {
  if (isAbsolute(file)) return file;
  const beside = join(dirname(table), file);
  return !existsSync(beside) && existsSync(file) ? file : beside;
}

function unreadable(path: string, error: unknown): ArcError {
  return new ArcError({
    code: 'bad-label-table',
    what: `${path} cannot be read: ${error instanceof Error ? error.message : String(error)}.`,
    expected: 'a CSV table such as: file,mode,start_s,end_s,labeller,group',
    todo: 'Correct the table or its path.',
    cause: error,
  });
}

/** For a table in which nobody labelled anything. */
export function noLabels(path: string): ArcError {
  return new ArcError({
    code: 'no-labels',
    what: `${path} holds no row with a label.`,
    expected: 'rows such as: weld-01.wav,spray',
    todo: 'Fill in the column "mode" (or "label").',
  });
}
