import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { comparisonSchema } from '../../src/analysis/compare/index.js';
import { runCli } from '../support/run-cli.js';
import { sampleResult } from '../support/sample-result.js';
import { scratch } from '../support/scratch.js';

/** Two invented results in files. */
function twoResults(): [string, string] {
  const spray = [{ startS: 1, endS: 61, mode: 'spray' as const, confidence: 0.9 }];
  const folder = scratch({
    'before.json': JSON.stringify(sampleResult()),
    'after.json': JSON.stringify(sampleResult({ mode: 'spray', segments: spray })),
  });
  return [join(folder, 'before.json'), join(folder, 'after.json')];
}

describe('arc-transfer compare', () => {
  it('says what changed between two results, with intervals and cautions', async () => {
    const run = await runCli(['compare', ...twoResults()]);
    expect([run.status, run.stderr]).toEqual([0, '']);
    expect(run.stdout).toContain('→ changed');
    expect(run.stdout).toMatch(/share of the time in spray: 0 to 1/u);
    expect(run.stdout).toMatch(/more than chance/u);
    expect(run.stdout).toMatch(/record several of each/u);
    expect(run.stdout).toMatch(/not an inspection/u);
  });

  it('gives the same as one JSON document', async () => {
    const run = await runCli(['compare', ...twoResults(), '--json']);
    const comparison = comparisonSchema.parse(JSON.parse(run.stdout));
    expect(comparison.mode.answer).toBe('changed');
    expect(comparison.changes.find(({ name }) => name === 'eventRateHz')?.interval).toBeNull();
  });

  it('draws a page with the table and both recordings side by side, and replaces none', async () => {
    const out = join(scratch(), 'pair.html');
    const recordings = ['short-circuit.csv', 'spray.csv'].map((name) =>
      resolve('fixtures/recordings', name),
    );
    const args = ['compare', ...recordings, '--reference', '--page', out];
    const run = await runCli(args);
    expect(run.status).toBe(0);
    expect(run.stdout).toMatch(/^Reference /u);
    const page = readFileSync(out, 'utf8');
    expect(page).toContain('→ changed');
    expect(page).toContain('id="time-0-t"');
    expect(page).toContain('id="time-1-t"');
    expect(page).toContain('How the arc behaved');
    expect((await runCli(args)).status).toBe(2);
  }, 60_000);

  it('draws a page of two result documents with the table alone', async () => {
    const out = join(scratch(), 'pair.html');
    const run = await runCli(['compare', ...twoResults(), '--page', out]);
    expect(run.status).toBe(0);
    const page = readFileSync(out, 'utf8');
    expect(page).toContain('share of the time in spray');
    expect(page).not.toContain('id="time-0-t"');
  });

  it('refuses JSON that is no result, and names what it wants', async () => {
    const file = join(scratch({ 'other.json': '{"a": 1}' }), 'other.json');
    const run = await runCli(['compare', file, file]);
    expect([run.status, run.stdout]).toEqual([2, '']);
    expect(run.stderr).toMatch(/not a result of this tool/u);
  });

  it('ends with 1 where one of the two cannot be read', async () => {
    const [before] = twoResults();
    const run = await runCli(['compare', before, 'missing.wav']);
    expect(run.status).toBe(1);
    expect(run.stdout).toContain('? cannot tell');
  });
});
