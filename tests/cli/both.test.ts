import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { resultSchema } from '../../src/analysis/result/index.js';
import { runCli } from '../support/run-cli.js';

const recordings = join(import.meta.dirname, '../../fixtures/recordings');
const sound = join(recordings, 'short-circuit.wav');
const trace = join(recordings, 'short-circuit.csv');

describe('classify --with-trace', () => {
  it('judges both together and says how they lie', async () => {
    const args = ['classify', sound, '--with-trace', trace, '--shared-clock', '--json'];
    const run = await runCli(args);
    const { companion, mode, steps } = resultSchema.parse(JSON.parse(run.stdout));
    expect([run.status, mode]).toEqual([0, 'short-circuit']);
    expect(companion).toMatchObject({ path: trace, fused: true });
    // Rejects a hash of the sound in the place of the trace's.
    expect(companion!.sha256).toMatch(/^[0-9a-f]{64}$/);
    expect(steps.map(({ step }) => step)).toEqual(expect.arrayContaining(['align', 'pool']));
  });

  it('refuses a second sound, two inputs, a clock alone', async () => {
    const two = await runCli(['classify', sound, '--with-trace', sound, '--json']);
    expect(two.status).toBe(1);
    expect(JSON.parse(two.stdout)).toMatchObject({
      status: 'failed',
      error: { code: 'needs-sound-and-trace' },
    });
    const several = await runCli(['classify', sound, sound, '--with-trace', trace]);
    expect([several.status, several.stderr]).toEqual([
      2,
      expect.stringContaining('[with-trace-inputs]'),
    ]);
    const clock = await runCli(['classify', sound, '--shared-clock']);
    expect([clock.status, clock.stderr]).toEqual([
      2,
      expect.stringContaining('[shared-clock-alone]'),
    ]);
  });
});
