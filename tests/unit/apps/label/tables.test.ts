import { parquetReadObjects } from 'hyparquet';
import { describe, expect, it } from 'vitest';
import { failedResult } from '../../../../src/analysis/result/index.js';
import { type RowKind, tableOf } from '../../../../src/apps/label/columns.js';
import type { LabelRecord } from '../../../../src/apps/label/record.js';
import { rowWriter, type TableFormat } from '../../../../src/apps/label/row-writer.js';
import { sampleResult } from '../../../support/sample-result.js';

const record = (changes: Partial<LabelRecord> = {}): LabelRecord => ({
  path: 'invented.wav',
  fingerprint: 'f',
  key: null,
  result: sampleResult(),
  ...changes,
});
const failed = record({
  path: 'bad.wav',
  result: failedResult({
    path: 'bad.wav',
    sha256: null,
    host: 'test',
    settings: { fingerprint: 'f', values: {} },
    error: new Error('no'),
  }),
});
const table = (kind: RowKind, labelFirst = false, carried: string[] = []) =>
  tableOf(kind, { labelFirst, carried }, () => ({ welder: 'Kim' }));

async function written(
  format: TableFormat,
  kind: RowKind,
  records: LabelRecord[],
  carried: string[] = [],
): Promise<Buffer> {
  const pieces: Uint8Array[] = [];
  const one = table(kind, format === 'tsv', carried);
  const writer = await rowWriter(format, one, async (bytes) => void pieces.push(bytes.slice()));
  await writer.begin();
  for (const each of records) await writer.rows(one.rowsOf(each));
  await writer.end();
  return Buffer.concat(pieces);
}

describe('tableOf', () => {
  it.each<RowKind>(['runs', 'segments', 'windows'])(
    'has in %s a value of the right kind in every column',
    (kind) => {
      // Rejects a column that is declared a number and holds text, which Parquet would store wrongly.
      const windows = [
        { startS: 0, endS: 1, arcOn: true, probabilities: [0.1, 0.2, 0.3, 0.4], novelty: 1 },
      ];
      const full = sampleResult({
        crossCheck: {
          settings: {
            answer: 'agrees',
            text: '',
            comparedVoltage: null,
            marginV: null,
            marginA: null,
          },
          intended: { answer: 'agrees', text: '' },
          explanations: [],
        },
        features: {
          eventRateHz: 1,
          shortCircuitRateHz: 1,
          dropRateHz: 1,
          pulseRateHz: 1,
          meanVoltageV: 1,
          meanCurrentA: 1,
        },
        error: { code: 'x', message: '', expected: '', todo: '' },
      });
      const one = table(kind, false, ['welder']);
      for (const row of one.rowsOf(record({ result: full, windows }))) {
        expect(row).toHaveLength(one.columns.length);
        row.forEach((cell, at) => {
          const kinds = { text: 'string', number: 'number', flag: 'boolean' } as const;
          expect(typeof cell, one.columns[at]?.name).toBe(kinds[one.columns[at]!.kind]);
        });
      }
    },
  );

  it.each<RowKind>(['runs', 'segments', 'windows'])(
    'keeps in %s one row with the status for a failed or empty recording',
    (kind) => {
      const one = table(kind);
      const at = one.columns.findIndex((column) => column.name === 'status');
      const none = record({ result: sampleResult({ status: 'no-arc', segments: [] }) });
      expect(one.rowsOf(failed).map((row) => row[at])).toEqual(['failed']);
      expect(one.rowsOf(none).map((row) => row[at])).toEqual(['no-arc']);
      expect(one.rowsOf(record({ result: null }))).toEqual([]);
    },
  );

  it('names the provenance in every kind of row', () => {
    for (const kind of ['runs', 'segments', 'windows'] as const) {
      const names = table(kind).columns.map((column) => column.name);
      for (const name of ['file', 'sha256', 'tool_version', 'model', 'settings_fingerprint'])
        expect(names).toContain(name);
    }
  });

  it('calls a window outside the arc by no mode', () => {
    const windows = [
      { startS: 0, endS: 1, arcOn: false, probabilities: [0.7, 0.1, 0.1, 0.1], novelty: 1 },
      { startS: 1, endS: 2, arcOn: true, probabilities: [0.7, 0.1, 0.1, 0.1], novelty: 1 },
    ];
    const one = table('windows');
    const at = one.columns.findIndex((column) => column.name === 'label');
    expect(one.rowsOf(record({ windows })).map((row) => row[at])).toEqual([
      'no-arc',
      'short-circuit',
    ]);
  });
});

describe('rowWriter', () => {
  it('writes segments with tabs as start, end, label first', async () => {
    const lines = (await written('tsv', 'segments', [record()])).toString().split('\n');
    expect(lines.map((line) => line.split('\t').slice(0, 4))).toEqual([
      ['start_s', 'end_s', 'label', 'file'],
      ['1', '7', 'short-circuit', 'invented.wav'],
      ['7', '9', 'globular', 'invented.wav'],
      [''],
    ]);
  });

  it('writes NDJSON with numbers as numbers and what is absent as null', async () => {
    const [line] = (await written('ndjson', 'runs', [record()], ['welder'])).toString().split('\n');
    expect(JSON.parse(line!)).toMatchObject({
      file: 'invented.wav',
      confidence: 0.94,
      drop_rate_hz: null,
      given_welder: 'Kim',
    });
  });

  it('keeps a spreadsheet from running a cell as a formula, in that flavour only', async () => {
    // The usual beginnings of a formula, and a line break before one; common practice, no source.
    const path = '=HYPERLINK("http://invalid")';
    const nasty = record({ result: sampleResult({ source: { ...sampleResult().source, path } }) });
    const excel = (await written('excel', 'runs', [nasty])).toString();
    expect(excel.startsWith('\uFEFFfile,')).toBe(true);
    expect(excel).toContain(`\r\n"'=HYPERLINK(""http://invalid"")"`);
    const plain = (await written('csv', 'runs', [nasty])).toString();
    expect(plain).toContain(`\r\n"=HYPERLINK(""http://invalid"")"`);
  });

  it('writes Parquet that another reader gives back, over several row groups', async () => {
    // A group has 5,000 rows, these are a full one and a bit: rejects one that loses the last, or the order.
    const many = Array.from({ length: 5_001 }, (_, i) =>
      record({ result: sampleResult({ confidence: i / 20_000 }) }),
    );
    const bytes = await written('parquet', 'runs', [failed, ...many]);
    const file = bytes.buffer.slice(
      bytes.byteOffset,
      bytes.byteOffset + bytes.length,
    ) as ArrayBuffer;
    const rows = await parquetReadObjects({ file });
    expect(rows).toHaveLength(5_002);
    expect(rows[0]).toMatchObject({ file: 'bad.wav', status: 'failed', confidence: null });
    expect(rows[5_001]).toMatchObject({
      file: 'invented.wav',
      confidence: 0.25,
      drop_rate_hz: null,
    });
    expect(rows.slice(1).every((row, i) => row['confidence'] === i / 20_000)).toBe(true);
  });

  it('writes a table without rows in every format', async () => {
    for (const format of ['csv', 'excel', 'tsv'] as const)
      expect((await written(format, 'runs', [])).toString()).toMatch(
        /^\uFEFF?file[,\t]status.*\r?\n$/,
      );
    expect((await written('ndjson', 'runs', [])).toString()).toBe('');
    const bytes = await written('parquet', 'runs', []);
    expect(bytes.subarray(0, 4).toString()).toBe('PAR1');
  });
});
