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
      /Most likely .+ \(\d+ in 10\); .+ if (?:more|less) than .+ V\s+between\s+dial\s+and\s+feeder/u,
      /Between dial and feeder .+ V are to be expected/u,
      /Lies above .+ V and 234–351 A \(disputed in this gas\)/u,
      /MIG Welding Handbook/u,
      /V at the feeder ↓ {3}mean A →/u,
      /\[.\]/u,
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
    expect(answer.likeliestMessage.code).toBe('most-likely');
    expect(answer.chances.length).toBe(answer.chanceMessages.length);
  });

  // A reference note (secondary): 0.045 in, 90/10, 250–320 A, 26–29 V, 350–450 in/min.
  it('says how to get a wanted mode, in inches', async () => {
    const args = ['--expect', 'spray arc', '--wire', '0.045in', '--gas', '90/10'];
    const run = await runCli(['expect', ...args, '--units', 'inch']);
    const feeds = [...run.stdout.matchAll(/(\d+) in\/min, about (\d+) A, ([\d.]+)–([\d.]+) V/gu)];
    expect(feeds).toHaveLength(3);
    const [, feed, amps, low, high] = feeds[1]!.map(Number);
    expect(feed).toBeGreaterThan(350);
    expect(feed).toBeLessThan(450);
    expect(amps).toBeGreaterThan(250);
    expect(low).toBeGreaterThanOrEqual(26);
    expect(high).toBeLessThanOrEqual(29.5);
    expect(run.stdout).toContain('Stick-out 0.59–0.79 in');
    expect(run.stdout).not.toMatch(/m\/min| mm\b/u);
  });

  it('refuses what the gas cannot do and names the nearest that can', async () => {
    const args = ['--expect', 'spray', '--wire', '1.2mm', '--gas', '75/25'];
    const { stdout } = await runCli(['expect', ...args]);
    expect(stdout.replaceAll(/\s+/gu, ' ')).toMatch(
      /No setting gives spray in Ar \+ 25 % CO2\. The nearest that does: Ar\+15CO2/u,
    );
    expect(stdout).not.toMatch(/about \d+ A/u);
  });

  it('gives the direction, and the names of the mode that the reader uses', async () => {
    const args = ['--expect', 'spray', '--wire', '1.2mm', '--gas', 'Ar+8CO2'];
    const at = ['--feeder-volts', '23.5', '--measured-current', '300', '--terms', 'iso'];
    const { stdout } = await runCli(['expect', ...args, ...at]);
    expect(stdout).toMatch(/Too cold for spray arc \(S\): 2 to 4\.5 V up at this feed/u);
    expect(stdout).toMatch(/Only as far as your qualified procedure allows it/u);
  });

  // 24 V, 160 A, 150 mm/min: 1.536 kJ/mm, times 0.8 is 1.229 (a public worked example).
  it('counts heat input as the code named does', async () => {
    const at = ['--arc-volts', '24', '--measured-current', '160', '--travel-speed', '150mm/min'];
    const aws = await runCli(['expect', ...at, '--code', 'aws']);
    const en = await runCli(['expect', ...at, '--code', 'en']);
    expect(aws.stdout).toMatch(/Heat input: 1\.\d+–1\.\d+ kJ\/mm without thermal efficiency/u);
    expect(aws.stdout).not.toContain('EN 1011');
    expect(en.stdout).toMatch(/Heat input: 1\.\d+–1\.\d+ kJ\/mm with thermal efficiency 0\.8/u);
  });

  // A silicon-bronze wire data sheet: 0.045 in, 195–215 A, 26–28 V, 280–310 in/min.
  it('knows wires of which no recording is judged', async () => {
    const args = ['--expect', 'spray', '--wire', '0.045in', '--gas', 'argon', '--units', 'inch'];
    const bronze = await runCli(['expect', ...args, '--wire-material', 'ERCuSi-A']);
    const [, feed, amps] = /(\d+) in\/min, about (\d+) A/u.exec(bronze.stdout)!.map(Number);
    expect(amps).toBeGreaterThan(185);
    expect(amps).toBeLessThan(226);
    expect(feed).toBeGreaterThan(260);
    expect(feed).toBeLessThan(330);
    expect(bronze.stdout).toContain('no recording of it is judged');
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
