import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { machineSchema } from '../../src/analysis/sweep/index.js';
import { runCli } from '../support/run-cli.js';
import { scratch } from '../support/scratch.js';

const recording = (name: string): string => resolve('fixtures/recordings', name);
const rowsOf = (name: string): string[] =>
  readFileSync(recording(name), 'utf8')
    .split(/\r?\n/)
    .filter((line) => /^[\d.]/.test(line));

/** Two made runs one after the other in one log: a dip arc, then a spray, each some seconds of its middle. */
function oneLog(): { path: string; cutS: number } {
  const parts = ['short-circuit.csv', 'spray.csv'].map((name) => {
    const rows = rowsOf(name).map((line) => line.split(',').map(Number));
    const rateHz = Math.round(1 / (rows[1]![0]! - rows[0]![0]!));
    const burning = rows.filter((row) => row[0]! > 1 && row[2]! > 20);
    return { rateHz, rows: burning.slice(0, 3 * rateHz) };
  });
  const rateHz = Math.min(...parts.map((one) => one.rateHz));
  const rows = parts.flatMap((one) =>
    one.rows.filter((_, k) => k % Math.round(one.rateHz / rateHz) === 0),
  );
  const text = rows.map((row, n) => `${(n / rateHz).toFixed(6)},${row[1]},${row[2]}`);
  const folder = scratch({ 'log.csv': `time_s,voltage_v,current_a\n${text.join('\n')}\n` });
  return { path: join(folder, 'log.csv'), cutS: 3 };
}

describe('arc-transfer sweep', () => {
  it('finds where one log was turned, names each step, and writes page, picture and machine file', async () => {
    const { path, cutS } = oneLog();
    const folder = scratch();
    const file = (name: string): string => join(folder, name);
    const run = await runCli([
      'sweep',
      path,
      ...['--wire', '1.2mm', '--gas', '90/10', '--machine-name', 'Bay 4'],
      ...['--page', file('map.html'), '--picture', file('map.svg')],
      ...['--machine-file', file('bay4.json')],
    ]);
    expect(run.status).toBe(0);
    const machine = machineSchema.parse(JSON.parse(readFileSync(file('bay4.json'), 'utf8')));
    expect(machine.steps.map((one) => one.mode)).toEqual(['short-circuit', 'spray']);
    expect(Math.abs(machine.steps[1]!.fromS - cutS)).toBeLessThan(0.6);
    expect(run.stdout).toContain('Measured map: Bay 4');
    expect(run.stdout).toMatch(/published map gives another mode/u);
    const page = readFileSync(file('map.html'), 'utf8');
    expect(page).toContain('id="measured-map-t"');
    expect(page).toContain('id="published-map-t"');
    expect(readFileSync(file('map.svg'), 'utf8')).toMatch(/^<\?xml/u);

    const { meanVoltageV, meanCurrentA } = machine.steps[1]!;
    const point = ['--feeder-volts', `${meanVoltageV}`, '--measured-current', `${meanCurrentA}`];
    const ask = (more: string[]) =>
      runCli(['expect', '--machine', file('bay4.json'), '--wire', '1.2mm', ...point, ...more]);
    const answer = await ask(['--gas', '90/10', '--expect', 'short-circuit']);
    expect(answer.stdout).toMatch(/^Measured on Bay 4: this goes before the published tables/u);
    expect(answer.stdout).toMatch(/spray, .*the nearest step was/u);
    expect(answer.stdout).toMatch(/short-circuit ran most evenly at/u);
    const other = await ask(['--gas', 'C1']);
    expect(other.stdout).toMatch(/^Bay 4 was measured with another wire or gas/u);
  }, 60_000);

  it('takes the steps of a table, with dial and feed', async () => {
    const folder = scratch({
      'steps.csv':
        'file,from_s,to_s,set_voltage_v,wire_feed\nspray.csv,1,3,30,9m/min\nshort-circuit.csv,,,19,4m/min\n',
    });
    const run = await runCli([
      'sweep',
      recording('spray.csv'),
      recording('short-circuit.csv'),
      ...['--steps', join(folder, 'steps.csv'), '--json'],
    ]);
    expect([run.status, run.stderr]).toEqual([0, '']);
    const { steps } = machineSchema.parse(JSON.parse(run.stdout));
    expect(steps.map((one) => [one.mode, one.setVoltageV, one.wireFeedMPerMin])).toEqual([
      ['spray', 30, 9],
      ['short-circuit', 19, 4],
    ]);
    expect([steps[0]!.fromS, steps[0]!.toS]).toEqual([1, 3]);
  }, 60_000);

  it('refuses a table that names another recording, and a machine file that is none', async () => {
    const folder = scratch({ 'steps.csv': 'file,from_s\nother.csv,0\n', 'bay.json': '{}' });
    const steps = ['--steps', join(folder, 'steps.csv')];
    const table = await runCli(['sweep', recording('spray.csv'), ...steps]);
    expect([table.status, table.stdout]).toEqual([2, '']);
    expect(table.stderr).toMatch(/line 2 names other\.csv/u);
    const file = await runCli(['expect', '--machine', join(folder, 'bay.json')]);
    expect([file.status, file.stdout]).toEqual([2, '']);
    expect(file.stderr).toMatch(/sweep --machine-file/u);
  });
});
