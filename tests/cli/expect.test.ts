import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runCli } from '../support/run-cli.js';
import { scratch } from '../support/scratch.js';

const SET_UP = ['--wire', '1.2mm', '--gas', 'M21', '--set-voltage', '24', '--wire-feed', '8m/min'];

describe('arc-transfer expect', () => {
  it('answers without a recording: modes, boundaries, sources, a map, the cautions', async () => {
    const run = await runCli(['expect', ...SET_UP]);
    expect([run.status, run.stderr]).toEqual([0, '']);
    for (const words of [
      /short-circuit +possible +ISO 4063-135-D/u,
      /Lies above 24–26 V and 234–351 A \(disputed in this gas\)/u,
      /MIG Welding Handbook/u,
      /Volts at the feeder \(down\) over wire feed/u,
      /\[gs\]/u,
      /Measure at the feeder/u,
      /not an inspection/u,
    ]) {
      expect(run.stdout).toMatch(words);
    }
    for (const line of run.stdout.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  it('gives the same as one JSON document', async () => {
    const run = await runCli(['expect', ...SET_UP, '--json']);
    const answer = JSON.parse(run.stdout);
    expect(answer.modes.map((one: { mode: string }) => one.mode)).toHaveLength(4);
    expect(answer.setup.wireFeedMPerMin).toBe(8);
    expect(answer.boundaries.dipTopV).toEqual({ min: 20, max: 22 });
  });

  it('takes the set-up from a file, the command line winning over it', async () => {
    const stated = JSON.stringify({ wireDiameter: '1.2mm', gas: 'CO2', setVoltage: 24 });
    const file = join(scratch({ 'cell.json': stated }), 'cell.json');
    const run = await runCli(['expect', '--setup', file, '--gas', 'Ar+8CO2', '--json']);
    expect(JSON.parse(run.stdout).setup).toMatchObject({
      gas: { symbol: 'M20' },
      setVoltageV: 24,
      wireDiameterMm: 1.2,
    });
  });

  it.each([
    [['--wire', '1.2'], /Did you mean 1\.2mm\?/u],
    [['--gas', '95/5'], /Ar\+5CO2/u],
    [['--wire-material', 'E71T-1'], /flux-cored or metal-cored/u],
    [['--wire-material', 'aluminium', '--gas', 'CO2'], /cannot be welded/u],
    [['--wire', '1.2mm', '--wire-diameter', '1.0mm'], /twice/u],
  ])('%j is wrong use, said with a guess on stderr', async (args, words) => {
    const run = await runCli(['expect', ...args]);
    expect([run.status, run.stdout]).toEqual([2, '']);
    expect(run.stderr).toMatch(words);
  });
});
