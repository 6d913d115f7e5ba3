import {
  type AsyncBuffer,
  type FileMetaData,
  parquetMetadataAsync,
  parquetScan,
  parquetSchema,
  type SchemaTree,
} from 'hyparquet';
import { ArcError, type Note } from '../../../core/index.js';
import { note } from '../../../messages/index.js';
import type { ByteSource } from '../../types.js';
import { rateAmong } from '../binary/stated-rate.js';
import { splitHeader } from '../header-name.js';
import type { LogColumn, LogTable, RowChunk } from '../table.js';
import { recogniseName } from '../words.js';
import { boundedCompressors } from './compressors.js';
import { isDecimal, numericValues, PARSERS, unitOfField } from './values.js';

const PREVIEW_ROWS = 400;
const MAX_COLUMNS = 256;
/** Rows taken together where the file offers no way to read fewer. */
const MAX_GROUP_ROWS = 50_000_000;
const CHUNK_ROWS = 32768;

/**
 * Opens a Parquet file. Flat numeric columns are used; others are left out with a note. Memory grows
 * with the row groups of the file, not with its length.
 *
 * @throws ArcError `encrypted`, `no-series`, `too-large`.
 */
export async function openParquet(source: ByteSource): Promise<LogTable> {
  const file = asyncBuffer(source);
  const magic = new TextDecoder('latin1').decode(await source.read(0, 4));
  if (magic === 'PARE') throw encrypted(source.name);
  const metadata = await parquetMetadataAsync(file, { geoparquet: false });
  const fields = parquetSchema(metadata).children.filter(isNumericField).slice(0, MAX_COLUMNS);
  if (fields.length === 0) throw noSeries(source.name, metadata);
  for (const group of metadata.row_groups) {
    if (Number(group.num_rows) > MAX_GROUP_ROWS)
      throw tooLarge(source.name, Number(group.num_rows));
  }
  const statedRate = rateAmong(scalarsOf(metadata));
  const read = (wanted: readonly number[], limit?: number): AsyncIterable<RowChunk> =>
    readRowGroups(
      file,
      metadata,
      wanted.map((c) => fields[c] as SchemaTree),
      limit,
    );
  return {
    format: 'parquet',
    fileName: source.name,
    columns: await describe(fields, read),
    ...(statedRate === undefined ? {} : { statedRate }),
    notes: leftOut(parquetSchema(metadata).children.filter((field) => !isNumericField(field))),
    rowsOf: () => Number(metadata.num_rows),
    read,
  };
}

/** Row groups one after the other, in chunks. */
async function* readRowGroups(
  file: AsyncBuffer,
  metadata: FileMetaData,
  fields: readonly SchemaTree[],
  limit = Number.POSITIVE_INFINITY,
): AsyncGenerator<RowChunk> {
  const columns = fields.map((field) => field.element.name);
  const compressors = await boundedCompressors();
  const scan = await parquetScan({ file, metadata, columns, compressors, parsers: PARSERS });
  let left = limit;
  for (const range of scan.ranges) {
    if (left <= 0) return;
    const group: Float64Array[] = [];
    for (const [i, column] of columns.entries()) {
      const values = await scan.readColumn({ column, ...range });
      group.push(numericValues(values, (fields[i] as SchemaTree).element));
    }
    const rows = Math.min(left, range.rowEnd - range.rowStart);
    if (group.some((values) => values.length < rows))
      throw new Error('a column chunk is too short');
    for (let at = 0; at < rows; at += CHUNK_ROWS) {
      const end = Math.min(rows, at + CHUNK_ROWS);
      yield { rows: end - at, columns: group.map((values) => values.slice(at, end)) };
    }
    left -= rows;
  }
}

async function describe(
  fields: readonly SchemaTree[],
  read: (wanted: readonly number[], limit: number) => AsyncIterable<RowChunk>,
): Promise<LogColumn[]> {
  const columns: LogColumn[] = [];
  const previews: Float64Array[] = fields.map(() => new Float64Array(0));
  for await (const chunk of read(
    fields.map((_, i) => i),
    PREVIEW_ROWS,
  )) {
    chunk.columns.forEach((values, i) => {
      if ((previews[i] as Float64Array).length === 0) previews[i] = values;
    });
  }
  fields.forEach((field, i) => {
    const { name, unit } = unitOfField(field.element);
    columns.push({
      name,
      unnamed: false,
      ...(unit === undefined ? {} : { unit }),
      preview: previews[i] as Float64Array,
    });
  });
  return columns;
}

function isNumericField({ element, children }: SchemaTree): boolean {
  return (
    children.length === 0 &&
    element.repetition_type !== 'REPEATED' &&
    (['DOUBLE', 'FLOAT', 'INT32', 'INT64'].includes(element.type ?? '') || isDecimal(element))
  );
}

/** Columns that by their name hold what is wanted, in a form that is not read. */
function leftOut(fields: readonly SchemaTree[]): Note[] {
  const names = fields
    .map(({ element }) => element.name)
    .filter((name) => recogniseName(splitHeader(name).name));
  return names.length === 0
    ? []
    : [note('column-not-read', { columns: names.slice(0, 8), why: 'not-flat-numbers' })];
}

function scalarsOf(metadata: FileMetaData): { name: string; value: number }[] {
  return (metadata.key_value_metadata ?? []).map(({ key, value }) => ({
    name: key,
    value: value === undefined || value.trim() === '' ? Number.NaN : Number(value),
  }));
}

function asyncBuffer(source: ByteSource): AsyncBuffer {
  return {
    byteLength: source.size,
    async slice(start, end = source.size) {
      const from = start < 0 ? Math.max(0, source.size + start) : start;
      const bytes = await source.read(from, Math.max(0, end - from));
      return bytes.slice().buffer;
    },
  };
}

function encrypted(fileName: string): ArcError {
  return new ArcError({
    code: 'encrypted',
    what: `${fileName} is an encrypted Parquet file.`,
    expected: 'a file without encryption',
    todo: 'Write the table again without encryption.',
  });
}

function noSeries(fileName: string, metadata: FileMetaData): ArcError {
  const names = metadata.schema.slice(1, 12).map(({ name }) => `“${name}”`);
  return new ArcError({
    code: 'no-series',
    what: `${fileName} has no flat column of numbers (it has ${names.join(', ') || 'none at all'}).`,
    expected: 'columns of type double, float or integer',
    todo: 'Write voltage and current as plain columns.',
  });
}

function tooLarge(fileName: string, rows: number): ArcError {
  return new ArcError({
    code: 'too-large',
    what: `${fileName} has a row group of ${rows} rows, which must be read at once.`,
    expected: `row groups of at most ${MAX_GROUP_ROWS} rows`,
    todo: 'Write the table again with smaller row groups.',
  });
}
