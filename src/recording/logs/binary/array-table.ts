import { ArcError, type Note } from '../../../core/index.js';
import { note } from '../../../messages/index.js';
import type { LogColumn, LogTable, RowChunk } from '../table.js';
import type { ArrayColumn, NumberStream } from './array-column.js';
import { rateAmong, type Scalar } from './stated-rate.js';

const PREVIEW_ROWS = 400;
const CHUNK_ROWS = 32768;
/** Series beyond this number are not looked at. */
const MAX_COLUMNS = 256;

/** What a binary reader found in a file. */
export interface ArrayFile {
  format: string;
  fileName: string;
  columns: readonly ArrayColumn[];
  scalars: readonly Scalar[];
  notes: Note[];
}

/**
 * Makes a table out of series of numbers. Only series of one length can be read together; that is
 * checked when it is known which ones are wanted.
 *
 * @throws ArcError `no-series`; while reading `length-mismatch`, `damaged-file`.
 */
export async function arrayTable(file: ArrayFile): Promise<LogTable> {
  const { fileName, notes } = file;
  const used = file.columns.slice(0, MAX_COLUMNS);
  if (used.length === 0) throw noSeries(fileName);
  if (file.columns.length > used.length) {
    notes.push(note('many-series', { series: file.columns.length, used: MAX_COLUMNS }));
  }
  const columns: LogColumn[] = [];
  for (const column of used) {
    const stream = await column.open();
    const preview = await stream.read(PREVIEW_ROWS);
    stream.close?.();
    columns.push({
      name: column.name,
      unnamed: column.unnamed ?? false,
      ...(column.unit === undefined ? {} : { unit: column.unit }),
      preview,
    });
  }
  const statedRate = rateAmong(file.scalars);
  return {
    format: file.format,
    fileName,
    columns,
    ...(statedRate === undefined ? {} : { statedRate }),
    notes,
    rowsOf: (wanted) =>
      commonLength(
        fileName,
        wanted.map((c) => used[c] as ArrayColumn),
      ),
    read: (wanted) =>
      readTogether(
        fileName,
        wanted.map((c) => used[c] as ArrayColumn),
      ),
  };
}

async function* readTogether(
  fileName: string,
  columns: readonly ArrayColumn[],
): AsyncGenerator<RowChunk> {
  const rows = commonLength(fileName, columns);
  const streams: NumberStream[] = [];
  try {
    for (const column of columns) streams.push(await column.open());
    for (let done = 0; done < rows; ) {
      const wanted = Math.min(CHUNK_ROWS, rows - done);
      const chunk: Float64Array[] = [];
      for (const stream of streams) chunk.push(await stream.read(wanted));
      const short = chunk.findIndex((values) => values.length < wanted);
      if (short >= 0) throw breaksOff(fileName, columns[short] as ArrayColumn);
      yield { rows: wanted, columns: chunk };
      done += wanted;
    }
  } finally {
    for (const stream of streams) stream.close?.();
  }
}

function commonLength(fileName: string, columns: readonly ArrayColumn[]): number {
  const rows = columns[0]?.rows ?? 0;
  if (columns.every((column) => column.rows === rows)) return rows;
  const lengths = columns.map(({ name, rows: count }) => `“${name}” ${count}`).join(', ');
  throw new ArcError({
    code: 'length-mismatch',
    what: `${fileName}: the series have different lengths (${lengths}).`,
    expected: 'series of one length',
    todo: 'State other series with --map, or --map time=none with --sample-rate.',
  });
}

function breaksOff(fileName: string, column: ArrayColumn): ArcError {
  return new ArcError({
    code: 'damaged-file',
    what: `${fileName}: the series “${column.name}” breaks off before its ${column.rows} values.`,
    expected: 'an intact file',
    todo: 'Copy or export the file again.',
  });
}

function noSeries(fileName: string): ArcError {
  return new ArcError({
    code: 'no-series',
    what: `${fileName} holds no series of numbers.`,
    expected: 'numeric arrays for voltage or current',
    todo: 'Save the trace as plain numeric arrays.',
  });
}
