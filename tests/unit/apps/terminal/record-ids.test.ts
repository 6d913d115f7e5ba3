import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { idPattern } from '../../../../src/apps/terminal/records/id-pattern.js';
import { idsTable } from '../../../../src/apps/terminal/records/ids-table.js';
import { scratch } from '../../../support/scratch.js';

describe('a pattern for the names of files', () => {
  it('reads identifiers, date and time, whatever folder and ending', () => {
    const read = idPattern('{part}_{seam}_{date}-{time}');
    for (const [name, time] of [
      ['day/P1_S2_20261201-0704.csv', '2026-12-01T07:04'],
      ['P1_S2_2026-12-01-07.04.10.wav', '2026-12-01T07:04:10'],
    ] as const)
      expect(read(name)).toEqual({ ids: { part: 'P1', seam: 'S2' }, time });
  });

  it('takes signs of the pattern for themselves and passes {} over', () => {
    const read = idPattern('w({part}).{}');
    expect(read('w(7).anything.csv')?.ids).toEqual({ part: '7' });
    expect(read('w7.anything.csv')).toBeNull();
  });

  it.each(['no braces', '{part}_{part}', '{Part name}'])('refuses "%s"', (pattern) => {
    expect(() => idPattern(pattern)).toThrow(/--id-pattern is/);
  });
});

describe('a table of identifiers', () => {
  it('goes by path, and by name where the row has no folder', async () => {
    const folder = scratch({
      'ids.csv': 'file;part;welded_at\na/x.csv;A;2026-12-01\nb/x.csv;B;\ny.csv;Y;\n',
    });
    const read = await idsTable(join(folder, 'ids.csv'));
    expect(read(join(folder, 'a/x.csv'))).toEqual({ ids: { part: 'A' }, time: '2026-12-01' });
    expect(read(join(folder, 'b/x.csv'))).toEqual({ ids: { part: 'B' }, time: null });
    expect(read('/elsewhere/x.csv')).toBeNull();
    expect(read('/elsewhere/y.csv')?.ids).toEqual({ part: 'Y' });
  });

  it.each([
    ['part\nA\n', /no column "file"/],
    ['file,part\nx.csv,A\nx.csv,B\n', /x\.csv is in it twice/],
    ['file,part\n,A\n', /names? no file|has no file/],
  ])('refuses %j', async (text, message) => {
    const folder = scratch({ 'ids.csv': text });
    await expect(idsTable(join(folder, 'ids.csv'))).rejects.toThrow(message);
  });
});
