import { readFile, rename, writeFile } from 'node:fs/promises';
import { parse } from 'csv-parse/sync';
import { ArcError } from '../../core/index.js';
import { type CsvFlavour, csvCell } from '../view/index.js';

/** One clip for a person to judge. The last four are for that person. */
export type ClipRow = Record<string, string>;

/**
 * Columns of the list. `label` takes a mode, `no-arc`, `ambiguous`, or two modes with `+` between;
 * `offset_s` is the time of the recording at which a video starts, where one was judged instead.
 */
export const CLIP_COLUMNS = [
  'clip',
  'file',
  'start_s',
  'end_s',
  'kind',
  'channel',
  'scale',
  'sha256',
  'tool_label',
  'tool_confidence',
  'tool_reason',
  'label',
  'labeller',
  'offset_s',
  'notes',
];

/** The list as it is; empty where there is none. @throws ArcError `bad-clip-list`. */
export async function readClipList(path: string): Promise<{ columns: string[]; rows: ClipRow[] }> {
  const text = await readFile(path, 'utf8').catch(() => undefined);
  if (text === undefined) return { columns: CLIP_COLUMNS, rows: [] };
  try {
    const delimiter = /^[^\r\n]*;/.test(text) && !/^[^\r\n]*,/.test(text) ? ';' : ',';
    const [columns = [], ...lines] = parse(text, { bom: true, delimiter }) as string[][];
    if (!columns.includes('clip')) throw new Error('it has no column "clip"');
    const rows = lines.map((cells) =>
      Object.fromEntries(columns.map((name, at) => [name, cells[at] ?? ''])),
    );
    return { columns, rows };
  } catch (error) {
    throw badList(path, error);
  }
}

/**
 * Writes the list in one step, for spreadsheets too. What was there is kept to the letter, with columns
 * that a person added; in what is new no cell can act as a formula.
 */
export async function writeClipList(
  path: string,
  columns: readonly string[],
  kept: readonly ClipRow[],
  added: readonly ClipRow[],
): Promise<void> {
  const line = (cells: readonly string[], flavour: CsvFlavour): string =>
    `${cells.map((cell) => csvCell(cell, flavour)).join(',')}\r\n`;
  const rowLine = (row: ClipRow, flavour: CsvFlavour): string =>
    line(
      columns.map((name) => row[name] ?? ''),
      flavour,
    );
  const head = `\uFEFF${line(columns, 'plain')}`;
  const body = [
    ...kept.map((row) => rowLine(row, 'plain')),
    ...added.map((row) => rowLine(row, 'excel')),
  ];
  await writeFile(`${path}.partial`, head + body.join(''));
  await rename(`${path}.partial`, path);
}

function badList(path: string, error: unknown): ArcError {
  const why = error instanceof Error ? error.message : String(error);
  return new ArcError({
    code: 'bad-clip-list',
    what: `${path} cannot be read: ${why}.`,
    expected: 'the list of clips of an earlier run',
    todo: 'Correct it, or choose another folder with --clips.',
    cause: error,
  });
}
