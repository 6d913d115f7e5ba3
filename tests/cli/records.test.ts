import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findBrowser, printPage } from '../../src/apps/cli/report/browser.js';
import { recordSchema, type WeldRecord } from '../../src/record/index.js';
import { PROCEDURE_DOCUMENT } from '../support/procedure.js';
import { runCli } from '../support/run-cli.js';

const root = join(import.meta.dirname, '../..');
const DIP = join(root, 'fixtures/recordings/short-circuit.csv');
const SOUND = join(root, 'fixtures/recordings/spray.wav');

const folder = mkdtempSync(join(tmpdir(), 'arc-records-'));
const wps = join(folder, 'wps.json');
const copy = (from: string, name: string): string => {
  const to = join(folder, name);
  writeFileSync(to, readFileSync(from));
  return to;
};
const recordIn = (records: string, name: string): WeldRecord =>
  recordSchema.parse(JSON.parse(readFileSync(join(records, `${name}.json`), 'utf8')));

afterAll(() => rmSync(folder, { recursive: true, force: true }));
beforeAll(() => writeFileSync(wps, JSON.stringify(PROCEDURE_DOCUMENT)));

describe('records of a folder', () => {
  const records = join(folder, 'records');
  const seam = copy(DIP, 'P1_S2_20261201-0704.csv');
  const other = copy(SOUND, 'odd name.wav');
  let said = '';

  beforeAll(async () => {
    const { status, stderr } = await runCli([
      'classify',
      ...[seam, other, '--csv', '--procedure', wps, '--trace-volts-at', 'feeder'],
      ...['--records', records, '--id-pattern', '{part}_{seam}_{date}-{time}', '--id', 'robot=R3'],
    ]);
    expect(status).toBe(0);
    said = stderr;
  });

  it('hold identifiers and time of the name, and say which name did not fit', () => {
    const { ids, weldedAt } = recordIn(records, '001-P1_S2_20261201-0704');
    expect(ids).toEqual({ robot: 'R3', part: 'P1', seam: 'S2' });
    expect(weldedAt).toEqual({ time: '2026-12-01T07:04', from: 'name' });
    expect(recordIn(records, '002-odd-name').weldedAt?.from).toBe('file');
    expect(said).toMatch(/no identifiers were found for 1 of them.*odd name/);
  });

  it('judge volts of a trace and say that a sound shows none', () => {
    const volts = (name: string) =>
      recordIn(records, name).limits.find((one) => one.limit === 'volts');
    expect(volts('001-P1_S2_20261201-0704')).toMatchObject({ basis: 'measured', place: 'feeder' });
    expect(volts('002-odd-name')?.whyMessage?.code).toBe('record-sound-shows-no');
  });

  it('are one row each of a table, and an index leads to every sheet', () => {
    const rows = readFileSync(join(records, 'records.csv'), 'utf8').trim().split('\r\n');
    expect(rows).toHaveLength(3);
    const index = readFileSync(join(records, 'index.html'), 'utf8');
    const links = [...index.matchAll(/href="(\d[^"]+)"/g)].map((one) => one[1]!);
    expect(links).toHaveLength(2);
    for (const link of links)
      expect(existsSync(join(records, decodeURIComponent(link)))).toBe(true);
  });

  it('are not replaced unless asked', async () => {
    const { status, stderr } = await runCli([
      'classify',
      seam,
      '--procedure',
      wps,
      '--records',
      records,
    ]);
    expect(status).toBe(2);
    expect(stderr).toMatch(/records\.csv is there already/);
  });

  it.each(['A4', 'Letter'])(
    'print on one page of %s, also where nothing was stated',
    async (size) => {
      const page = readFileSync(join(records, '002-odd-name.html'), 'utf8')
        .replace(/<meta http-equiv[^>]*>/, '')
        .replace('@page{', `@page{size:${size};`);
      const out = join(folder, `${size}.pdf`);
      await printPage(await findBrowser(undefined), page, out, { kind: 'pdf' });
      const pages = readFileSync(out, 'latin1').match(/\/Type\s*\/Page\b(?!s)/g);
      expect(pages).toHaveLength(1);
    },
  );
});

describe('a procedure', () => {
  it('leaves mode, probabilities and segments as they are', async () => {
    const judge = async (...more: string[]) => {
      const { stdout } = await runCli(['classify', DIP, '--json', ...more]);
      const { mode, confidence, probabilities, segments, shareOfArcTime } = JSON.parse(stdout);
      return { mode, confidence, probabilities, segments, shareOfArcTime };
    };
    const alone = await judge();
    expect(await judge('--procedure', wps)).toEqual(alone);
    const spray = join(folder, 'spray.json');
    writeFileSync(spray, JSON.stringify({ ...PROCEDURE_DOCUMENT, mode: 'spray' }));
    expect(await judge('--procedure', spray, '--set-voltage', '32')).toEqual(alone);
  });

  it.each([
    [['--records', join(folder, 'none')], /records-need-procedure/],
    [['--id', 'part=1'], /records-missing/],
    [['--procedure', wps, '--expect', 'spray'], /contradicts-procedure/],
    [['--procedure', join(folder, 'absent.json')], /absent\.json cannot be read/],
  ])('with %j is wrong use', async (more, message) => {
    const { status, stderr } = await runCli(['classify', DIP, ...more]);
    expect(status).toBe(2);
    expect(stderr).toMatch(message);
  });

  it('is filled in and noted where something else was stated', async () => {
    const { stdout } = await runCli([
      'classify',
      DIP,
      '--json',
      '--procedure',
      wps,
      '--gas',
      'Ar+8CO2',
    ]);
    const { source, crossCheck } = JSON.parse(stdout);
    expect(crossCheck.intended.answer).toBe('agrees');
    const codes = source.notes.map((one: { code: string }) => one.code);
    expect(codes).toContain('outside-procedure');
  });

  it('has a schema of its own, as a record has', async () => {
    for (const document of ['procedure', 'record']) {
      const { stdout } = await runCli(['schema', document]);
      expect(JSON.parse(stdout).title).toBe(`arc-transfer ${document} 1`);
    }
  });

  it('is shown by help, in a document that can be used', async () => {
    const { readProcedure } = await import('../../src/procedure/index.js');
    const text = readFileSync(join(root, 'src/procedure/procedure.md'), 'utf8');
    const example = /```json\n([\s\S]*?)```/.exec(text)?.[1] ?? '';
    expect(readProcedure(JSON.parse(example)).name).toBe('WPS-0815');
    const { stdout } = await runCli(['help', 'procedure']);
    expect(stdout).toContain('"countedBy": "en"');
  });
});

describe('records of label', () => {
  it('take identifiers and time from the set-up table', async () => {
    const table = join(folder, 'day.csv');
    const seam = copy(DIP, 'seam-9.csv');
    writeFileSync(
      table,
      'file,feed_m_min,part,seam,welded_at\nseam-9.csv,4.5,P9,S9,2026-12-01T08:00\n',
    );
    const records = join(folder, 'label-records');
    const { status, stderr } = await runCli([
      'label',
      ...[seam, '--setups', table, '--procedure', wps, '--out', join(folder, 'runs.csv')],
      ...['--records', records, '--workers', '1'],
    ]);
    expect(stderr).toMatch(/1 records/);
    expect(status).toBe(0);
    const record = recordIn(records, '001-seam-9');
    expect(record.ids).toEqual({ part: 'P9', seam: 'S9' });
    expect(record.weldedAt).toEqual({ time: '2026-12-01T08:00', from: 'table' });
    expect(record.limits.find((one) => one.limit === 'wireFeed')).toMatchObject({
      outcome: 'inside',
      figure: 4.5,
      basis: 'stated',
    });
    // The gas stands in the procedure alone: nobody stated what was used.
    expect(record.limits.find((one) => one.limit === 'gas')?.outcome).toBe('cannot-judge');
  });
});

describe('records of watch', () => {
  it('go on in a folder, with the time of each weld', async () => {
    const records = join(folder, 'watched');
    const args = ['watch', DIP, '--speed', 'max', '--procedure', wps, '--records', records];
    for (const _ of ['one shift', 'the next']) {
      expect((await runCli(args)).status).toBe(0);
      // Times are whole seconds: the next shift begins in another one.
      await sleep(1100);
    }
    const [first, second] = ['001', '002'].map((one) => recordIn(records, `${one}-short-circuit`));
    expect(first?.weldedAt?.from).toBe('watch');
    expect(first!.weldedAt!.time < second!.weldedAt!.time).toBe(true);
    const rows = readFileSync(join(records, 'records.csv'), 'utf8').trim().split('\r\n');
    expect(rows).toHaveLength(3);
  });
});
