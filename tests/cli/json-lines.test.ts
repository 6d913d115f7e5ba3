import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runCli } from '../support/run-cli.js';
import { scratch } from '../support/scratch.js';

const demo = (name: string): string => join(import.meta.dirname, '../../fixtures/recordings', name);
const spray = demo('spray.csv');

describe('--json where stdout is no terminal', () => {
  // Each wrote an indented document of many lines, which a reader of lines cannot take.
  it.each([
    ['classify of one input', ['classify', spray], 1],
    ['classify of two', ['classify', spray, demo('globular.csv')], 2],
    ['expect', ['expect', '--wire', '1.2mm', '--gas', 'M21', '--feeder-volts', '28'], 1],
    ['compare', ['compare', demo('globular.csv'), spray], 1],
    ['inspect', ['inspect', spray], 1],
  ])('%s writes one document a line', async (_, words, documents) => {
    const { stdout, status } = await runCli([...words, '--json']);
    expect(status).toBe(0);
    const lines = stdout.trimEnd().split('\n');
    expect(lines).toHaveLength(documents);
    for (const line of lines) expect(typeof JSON.parse(line)).toBe('object');
  });

  it('is one line in a file as well', async () => {
    const out = join(scratch(), 'spray.json');
    await runCli(['classify', spray, '--json', '--out', out]);
    expect(readFileSync(out, 'utf8').trimEnd().split('\n')).toHaveLength(1);
  });
});

describe('--units and --terms', () => {
  it.each([
    ['compare', demo('globular.csv'), spray],
    ['inspect', spray],
  ])('are taken by %s', async (...words) => {
    const run = await runCli([...words, '--units', 'inch', '--terms', 'aws']);
    expect([run.status, run.stderr]).toEqual([0, '']);
  });
});
