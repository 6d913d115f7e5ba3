import { describe, expect, it } from 'vitest';
import { failedResult } from '../../../../src/analysis/result/index.js';
import { CSV_COLUMNS, csvHeader, csvRow } from '../../../../src/apps/view/index.js';
import { sampleResult } from '../../../support/sample-result.js';

/** A reader written for this test after RFC 4180 section 2, so that the writer is not its own judge. */
function parse(text: string): string[][] {
  const rows: string[][] = [[]];
  const pattern = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/gy;
  for (const match of text.matchAll(pattern)) {
    rows.at(-1)?.push(match[1]?.replaceAll('""', '"') ?? match[2] ?? '');
    if (match[3] === '\r\n') rows.push([]);
  }
  return rows.slice(0, -1);
}

const rowOf = (row: string): Record<string, string> => {
  const cells = parse(row)[0] ?? [];
  return Object.fromEntries(CSV_COLUMNS.map((column, i) => [column.name, cells[i] ?? '?']));
};

describe('csv', () => {
  it('gives as many cells as columns, and quotes what needs it', () => {
    const result = sampleResult({ statusReason: 'said "yes",\r\nthen no' });
    const [header, row, ...rest] = parse(csvHeader() + csvRow(result));
    expect(rest).toEqual([]);
    expect(row).toHaveLength(header?.length ?? 0);
    expect(rowOf(csvRow(result))['reason']).toBe('said "yes",\r\nthen no');
  });

  it('carries status, units and provenance, and leaves empty what was not measured', () => {
    const row = rowOf(csvRow(sampleResult()));
    expect(row).toMatchObject({
      file: 'invented.wav',
      status: 'ok',
      mode: 'short-circuit',
      confidence: '0.94',
      arc_time_s: '8',
      event_rate_hz: '124.3',
      drop_rate_hz: '',
      settings_fingerprint: '0123456789abcdef',
      tool_version: '9.9.9',
    });
    expect(row['sha256']).toHaveLength(64);
  });

  it('gives a failed input a row of its own, with the cause', () => {
    const failed = failedResult({
      path: 'broken.wav',
      sha256: null,
      host: 'test',
      settings: { fingerprint: 'f', values: {} },
      error: new Error('boom'),
    });
    expect(rowOf(csvRow(failed))).toMatchObject({ status: 'failed', error_code: 'internal-error' });
    expect(rowOf(csvRow(failed))['arc_time_s']).toBe('');
  });

  it('keeps a spreadsheet from running a file name as a formula', () => {
    const result = sampleResult();
    result.source.path = '=HYPERLINK("x")';
    expect(rowOf(csvRow(result, 'excel'))['file']).toBe('\'=HYPERLINK("x")');
    expect(rowOf(csvRow(result))['file']).toBe('=HYPERLINK("x")');
    expect(csvHeader('excel').startsWith('\uFEFFfile,')).toBe(true);
  });
});
