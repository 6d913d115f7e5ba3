import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../src/core/index.js';
import { runCli } from '../support/run-cli.js';
import { scratch } from '../support/scratch.js';

const RATE_HZ = 2500;

/** An invented trace, of two seconds unless told: dips to 3 V every 8 to 20 ms, or a steady arc with a small ripple. */
function trace(seed: number, dips: boolean, seconds = 2): string {
  const random = createRandom(seed);
  const level = (dips ? 20 : 28) + random.normal();
  const lines = ['time_s,voltage_V,current_A'];
  let dipAt = 0;
  for (let n = 0; n < seconds * RATE_HZ; n++) {
    if (n > dipAt + 8) dipAt = n + random.integer(20, 50);
    const low = dips && n >= dipAt;
    const voltage = (low ? 3 : level) + random.normal(0, 0.4);
    const current = (low ? 220 : dips ? 110 : 240) + random.normal(0, 2);
    lines.push(`${(n / RATE_HZ).toFixed(4)},${voltage.toFixed(2)},${current.toFixed(1)}`);
  }
  return `${lines.join('\n')}\n`;
}

/** A folder with `count` traces by turns of both kinds on three days, and their labels. */
function lab(count: number): string {
  const files: Record<string, string> = {};
  const rows = ['file,mode,group'];
  for (let i = 0; i < count; i++) {
    const dips = i % 2 === 0;
    files[`r${i}.csv`] = trace(i, dips);
    rows.push(`r${i}.csv,${dips ? 'short-circuit' : 'spray'},day ${Math.floor(i / 2) % 3}`);
  }
  return scratch({ ...files, 'labels.csv': `${rows.join('\n')}\n` });
}

describe('fit --from', () => {
  it('fits a model that --model then judges by, and compares it with the shipped one', async () => {
    const folder = lab(42);
    const fit = ['fit', '--from', 'labels.csv', '--out', 'mine.json'];
    const run = await runCli(fit, { cwd: folder });
    expect([run.status, run.stdout]).toEqual([0, 'mine.json\n']);
    expect(run.stderr).toMatch(/42 recordings, each scored by a model that had not seen its group/);
    expect(run.stderr).toMatch(/group day 2: 14 recordings/);
    const judged = await runCli(['classify', 'r0.csv', '--json', '--model', 'mine.json'], {
      cwd: folder,
    });
    const result = JSON.parse(judged.stdout) as { mode: string; model: { id: string } };
    // Rejects a --model that is read and not used.
    expect([result.mode, result.model.id]).toEqual(['short-circuit', 'mine']);
    const again = await runCli(fit, { cwd: folder });
    expect([again.status, again.stderr]).toEqual([2, expect.stringContaining('[file-exists]')]);
  });

  // Rejects an order that is that of the threads, and a recording that takes the others with it.
  it('gives the same model for any number of threads, and leaves a bad recording out by name', async () => {
    const folder = lab(44);
    writeFileSync(join(folder, 'r3.csv'), 'no,numbers\nhere,at all\n');
    // The first takes many times as long as the others.
    writeFileSync(join(folder, 'r0.csv'), trace(0, true, 40));
    const fitBy = (workers: string) =>
      runCli(
        ['fit', '--from', 'labels.csv', '--workers', workers, '--out', 'm.json', '--overwrite'],
        {
          cwd: folder,
        },
      );
    const models: string[] = [];
    for (const workers of ['1', '3']) {
      const run = await fitBy(workers);
      expect(run.status).toBe(1);
      expect(run.stderr).toMatch(/error: r3\.csv: .+ \[[a-z-]+\]\n/);
      expect(run.stderr).toContain('on 43 labelled runs');
      models.push(readFileSync(join(folder, 'm.json'), 'utf8'));
    }
    expect(models[0]).toBe(models[1]);
    const wrong = await fitBy('none');
    expect([wrong.status, wrong.stderr]).toEqual([2, expect.stringContaining('[bad-workers]')]);
  });

  it('refuses labels that name no recording', async () => {
    const folder = scratch({ 'labels.csv': 'file,mode\n' });
    const run = await runCli(['fit', '--from', 'labels.csv', '--out', 'm.json'], { cwd: folder });
    expect([run.status, run.stderr]).toEqual([2, expect.stringContaining('[no-labels]')]);
    expect(existsSync(join(folder, 'm.json'))).toBe(false);
  });

  it('refuses too little with the counts, and leaves no file', async () => {
    const folder = lab(6);
    const run = await runCli(['fit', '--from', 'labels.csv', '--out', 'mine.json'], {
      cwd: folder,
    });
    expect(run.status).toBe(2);
    expect(run.stderr).toMatch(/short-circuit 3 in 3 group\(s\), spray 3 in 3.*\[too-few-runs\]/);
    expect(existsSync(join(folder, 'mine.json'))).toBe(false);
  });
});

describe('--model', () => {
  const judge = (text: string) => {
    const folder = scratch({ 'r.csv': trace(1, true), 'm.json': text });
    return runCli(['classify', 'r.csv', '--model', 'm.json'], { cwd: folder });
  };

  it('refuses a bad file before any recording is read', async () => {
    const run = await judge('function () {}');
    expect([run.status, run.stdout]).toEqual([2, '']);
    expect(run.stderr).toContain('[bad-model]');
  });

  it('lets no recording be judged by a model of another kind', async () => {
    // Rejects falling back on the shipped model in silence.
    const run = await judge('{"featureSet":{"id":"sound"}}');
    expect(run.status).toBe(1);
    expect(run.stdout).toContain('--model is for "sound"');
  });
});
