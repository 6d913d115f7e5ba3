import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readHeading } from '../../../../src/apps/label/setup-columns.js';
import { joinSetups } from '../../../../src/apps/label/setup-join.js';
import { readSetupTable } from '../../../../src/apps/label/setup-table.js';
import { scratch } from '../../../support/scratch.js';

describe('readHeading', () => {
  it.each([
    ['file', { holds: 'file' }],
    ['wire', { holds: 'setup', key: 'wireDiameter', unit: '' }],
    ['wire_mm', { holds: 'setup', key: 'wireDiameter', unit: 'mm' }],
    ['Wire diameter [mm]', { holds: 'setup', key: 'wireDiameter', unit: 'mm' }],
    ['volts_v', { holds: 'setup', key: 'setVoltage', unit: 'V' }],
    ['set-voltage', { holds: 'setup', key: 'setVoltage', unit: '' }],
    ['feed_m_min', { holds: 'setup', key: 'wireFeed', unit: 'm/min' }],
    ['Wire feed (in/min)', { holds: 'setup', key: 'wireFeed', unit: 'in/min' }],
    ['operator', { holds: 'own', name: 'operator' }],
    ['Day of test', { holds: 'own', name: 'day_of_test' }],
  ])('reads %s', (heading, expected) => {
    expect(readHeading(heading)).toEqual(expected);
  });

  it('refuses one that is probably misspelt instead of taking it for a column of the user', () => {
    expect(() => readHeading('wire_diamter')).toThrow(/Did you mean/);
    expect(() => readHeading('polarty')).toThrow(/Did you mean/);
  });
});

describe('readSetupTable', () => {
  const read = (text: string) => readSetupTable(join(scratch({ 's.csv': text }), 's.csv'));

  it('reads units from headings and cells, empty cells, own columns and quotes', async () => {
    const { rows, own } = await read(
      'file,wire_mm,gas,volts,feed_m_min,welder\r\n"a, b.wav",1.2,Ar+18CO2,22,8,Kim\r\nc.wav,0.045in,,,,\r\n',
    );
    expect(own).toEqual(['welder']);
    expect(rows.map(({ file, setup, own: mine }) => ({ file, setup, mine }))).toEqual([
      {
        file: 'a, b.wav',
        setup: { wireDiameter: '1.2mm', gas: 'Ar+18CO2', setVoltage: '22', wireFeed: '8m/min' },
        mine: { welder: 'Kim' },
      },
      { file: 'c.wav', setup: { wireDiameter: '0.045in' }, mine: { welder: '' } },
    ]);
  });

  it('reads what a spreadsheet with decimal commas writes', async () => {
    const { rows } = await read('\uFEFFfile;wire_mm;volts_v\r\na.wav;1,2;22,5\r\n');
    expect(rows[0]?.setup).toEqual({ wireDiameter: '1.2mm', setVoltage: '22.5V' });
  });

  it.each([
    ['no file column', 'gas\nC1\n'],
    ['a row without a file', 'file,gas\n,C1\n'],
    ['a cell that is no set-up value', 'file,gas\na.wav,C1\nb.wav,Ar+18XX\n'],
    ['a column twice', 'file,gas,gas\na.wav,C1,C1\n'],
    ['rows of unequal length', 'file,gas\na.wav\n'],
  ])('refuses %s before anything is read', async (_, text) => {
    await expect(read(text)).rejects.toMatchObject({ code: 'bad-setup-table' });
  });

  it('names the line that is wrong', async () => {
    await expect(read('file,gas\na.wav,C1\nb.wav,Ar+18XX\n')).rejects.toThrow(/line 3 \(b\.wav\)/);
  });
});

describe('joinSetups', () => {
  const row = (line: number, file: string) => ({ line, file, setup: {}, own: {} });
  const table = (files: string[]) => ({
    path: '/data/setups.csv',
    own: [],
    rows: files.map((file, at) => row(at + 2, file)),
  });

  it('joins by path from the table’s folder, by full path, and by bare name', () => {
    const joined = joinSetups(table(['runs/a.wav', '/other/b.wav', 'c.wav', 'gone.wav']), [
      '/data/runs/a.wav',
      '/other/b.wav',
      '/anywhere/c.wav',
      '/data/d.wav',
    ]);
    expect(joined.rowOf('/data/runs/a.wav')?.line).toBe(2);
    expect(joined.rowOf('/other/b.wav')?.line).toBe(3);
    expect(joined.rowOf('/anywhere/c.wav')?.line).toBe(4);
    expect(joined.without).toEqual(['/data/d.wav']);
    expect(joined.unused.map((one) => one.line)).toEqual([5]);
  });

  it('refuses to guess between two inputs of one name, or two rows for one', () => {
    // Rejects one that gives both runs the settings of one of them.
    expect(() => joinSetups(table(['a.wav']), ['/x/a.wav', '/y/a.wav'])).toThrow(
      expect.objectContaining({ code: 'ambiguous-setup' }),
    );
    expect(() => joinSetups(table(['a.wav', '/data/a.wav']), [])).toThrow(
      expect.objectContaining({ code: 'ambiguous-setup' }),
    );
  });
});
