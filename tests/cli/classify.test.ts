import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Result, resultSchema } from '../../src/analysis/result/index.js';
import { runCli } from '../support/run-cli.js';

const recordings = join(import.meta.dirname, '../../fixtures/recordings');
const trace = join(recordings, 'short-circuit.csv');
const read = (text: string): Result => resultSchema.parse(JSON.parse(text));

describe('classify', () => {
  it('gives a valid document that says where it comes from', async () => {
    const run = await runCli(['classify', trace, '--json']);
    const result = read(run.stdout);
    expect([result.status, result.mode, run.status, run.stderr]).toEqual([
      'ok',
      'short-circuit',
      0,
      '',
    ]);
    expect(result.source).toMatchObject({ path: trace, kind: 'electrical', format: 'csv' });
    expect(result.source.sha256).toMatch(/^[0-9a-f]{64}$/);
    expect(result.model?.fingerprint).toMatch(/^[0-9a-f]{16}$/);
    expect(result.cautions.length).toBeGreaterThan(0);
  });

  it('shows the means of a trace in a table', async () => {
    // Rejects columns that read figures by another name than the one they are written by.
    const { stdout } = await runCli(['classify', trace, '--csv']);
    const [names, values] = stdout.split('\n').map((line) => line.split(','));
    const cell = (name: string) => Number(values![names!.indexOf(name)]!);
    const rows = readFileSync(trace, 'utf8')
      .split('\n')
      .filter((line) => /^[\d.]/.test(line));
    const volts = rows.map((line) => Number(line.split(',')[1]));
    const mean = volts.reduce((sum, one) => sum + one, 0) / volts.length;
    // Open circuit and lead-out are in the one mean and not in the other: near, not equal.
    expect(cell('mean_voltage_v')).toBeGreaterThan(0.5 * mean);
    expect(cell('mean_voltage_v')).toBeLessThan(1.5 * mean);
    expect(cell('mean_current_a')).toBeGreaterThan(10);
  });

  it('gives the same for a pipe as for the file, but for its name', async () => {
    const file = read((await runCli(['classify', trace, '--json'])).stdout);
    const pipe = read(
      (await runCli(['classify', '-', '--json'], { stdin: readFileSync(trace) })).stdout,
    );
    expect(pipe.source.path).toBe('-');
    expect({ ...pipe, source: { ...pipe.source, path: trace } }).toEqual(file);
  });

  it('gives the same when run again, byte for byte', async () => {
    // Rejects clocks, host names and random numbers in a result.
    const [first, second] = [
      await runCli(['classify', trace, '--json']),
      await runCli(['classify', trace, '--json']),
    ];
    expect(second.stdout).toBe(first.stdout);
  });

  it('ends with 1 where the wanted mode is another and --fail-on asks for it', async () => {
    const args = ['classify', trace, '--json', '--expect', 'spray'];
    expect((await runCli(args)).status).toBe(0);
    const run = await runCli([...args, '--fail-on', 'disagrees']);
    expect([read(run.stdout).crossCheck?.intended?.answer, run.status]).toEqual(['disagrees', 1]);
  });

  it('never lets the stated set-up reach the mode', async () => {
    // The stated voltage belongs to spray; only the cross-check may differ.
    const plain = read((await runCli(['classify', trace, '--json'])).stdout);
    const args = [
      '--set-voltage',
      '32',
      '--gas',
      'Ar+8CO2',
      '--expect',
      'spray',
      '--source',
      'pulsed',
    ];
    const stated = read((await runCli(['classify', trace, '--json', ...args])).stdout);
    expect({ ...stated, crossCheck: null, cautions: [], source: null }).toEqual({
      ...plain,
      crossCheck: null,
      cautions: [],
      source: null,
    });
  });

  it('says the verdict in words first', async () => {
    const { stdout } = await runCli(['classify', trace]);
    expect(stdout.split('\n').slice(0, 4).join('\n')).toMatch(
      /SHORT-CIRCUIT TRANSFER \(D\) +[a-z ]+, /,
    );
    expect(stdout).toContain('not an inspection');
  });
});
