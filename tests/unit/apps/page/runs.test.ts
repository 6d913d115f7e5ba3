import { describe, expect, it } from 'vitest';
import { plainName, runTable } from '../../../../src/apps/page/shell/run-actions.js';
import { recordingName, stated } from '../../../../src/apps/page/shell/runs.js';
import type { Run } from '../../../../src/apps/page/storage/database.js';
import { sampleResult } from '../../../support/sample-result.js';

const run = (student: string): Run => ({
  id: 'a',
  createdMs: Date.UTC(2026, 0, 2, 3, 4, 5),
  student,
  booth: 'B, 2',
  origin: 'microphone',
  hasFile: false,
  setup: {},
  result: sampleResult(),
});

describe('what is exported', () => {
  it('is a row a run, with who and when before the columns of the command line', () => {
    const lines = runTable([run('Ada'), run('Grace')]).split('\r\n');
    expect(lines).toHaveLength(4);
    expect(lines[0]).toMatch(/^\uFEFFrecorded,student,booth,/);
    expect(lines[1]).toMatch(/^2026-01-02T03:04:05\.000Z,Ada,"B, 2",/);
  });

  // Rejects a table in which a name becomes a formula of the spreadsheet.
  it('disarms text that would start a formula', () => {
    expect(runTable([run('=HYPERLINK("http://a")')])).toContain(`"'=HYPERLINK(""http://a"")"`);
  });

  it('gets a file name that no system refuses or hides', () => {
    expect(plainName('../../etc/passwd')).toBe('etc-passwd');
    expect(plainName('a\u202egpj.wav')).toBe('a-gpj.wav');
    expect(plainName('<b>"x"</b>.wav')).toBe('b-x-b-.wav');
    expect(plainName('...')).toBe('run');
  });
});

describe('a recording', () => {
  it('is called by the clock of the device, without signs that file systems refuse', () => {
    expect(recordingName(new Date(2026, 10, 5, 4, 3, 2))).toBe('recording 2026-11-05 04.03.02.wav');
  });

  it('takes from the set-up what was typed, not what was left empty', () => {
    expect(stated({ gas: 'CO2', setVoltage: ' ', wireFeed: '' })).toEqual({ gas: 'CO2' });
  });
});
