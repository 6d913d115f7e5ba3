import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { beforeEach, describe, expect, it } from 'vitest';
import { TOOL_NAME, TOOL_VERSION } from '../src/core/index.js';
import * as main from '../src/index.js';
import * as node from '../src/node.js';
import { sampleResult } from './support/sample-result.js';
import { scratch } from './support/scratch.js';

describe('the public interface', () => {
  // Snapshots: a name that goes, or a field of the result that changes, breaks other people's
  // programs, so it is seen in the difference. Update them with `npx vitest run tests/public -u`.
  it('exports these names from the main entry', () => {
    expect(Object.keys(main).sort()).toMatchSnapshot();
  });

  it('adds these names in the entry for Node', () => {
    const added = Object.keys(node).filter((name) => !(name in main));
    expect(added.sort()).toMatchSnapshot();
    expect(Object.keys(main).filter((name) => !(name in node))).toEqual([]);
  });

  it('publishes this schema', () => {
    expect(main.resultJsonSchema()).toMatchSnapshot();
  });

  it('carries the name and version of the package', () => {
    const text = readFileSync(new URL('../package.json', import.meta.url), 'utf8');
    const { name, version } = JSON.parse(text) as { name: string; version: string };
    expect([TOOL_NAME, TOOL_VERSION]).toEqual([name, version]);
  });

  it('refuses a result with a field of the wrong kind', () => {
    const result = sampleResult();
    expect(main.resultSchema.safeParse(result).success).toBe(true);
    for (const wrong of [
      { confidence: '0.9' },
      { confidence: 1.2 },
      { mode: 'stream' },
      { status: 'fine' },
    ]) {
      expect(main.resultSchema.safeParse({ ...result, ...wrong }).success).toBe(false);
    }
  });
});

const root = join(import.meta.dirname, '..');
const recordings = join(root, 'fixtures/recordings');

/** Volts and amperes of a demo trace, and its rate. */
function demoTrace(name: string): { channels: [number[], number[]]; sampleRateHz: number } {
  const [, ...rows] = readFileSync(join(recordings, `${name}.csv`), 'utf8')
    .trim()
    .split('\n');
  const cells = rows.map((row) => row.split(',').map(Number));
  const time = cells.map(([t = 0]) => t);
  return {
    channels: [cells.map(([, v = 0]) => v), cells.map(([, , a = 0]) => a)],
    sampleRateHz: Math.round((time.length - 1) / (time.at(-1)! - time[0]!)),
  };
}

describe('judging by a call', () => {
  const setup = { gas: 'Ar+18CO2', wireDiameter: '1.2mm', setVoltage: 28 };

  it('gives a file the same document as the command line', async () => {
    const path = join(recordings, 'spray.csv');
    const args = [join(root, 'bin/arc-transfer.js'), 'classify', path, '--json'];
    const stated = ['--gas', 'Ar+18CO2', '--wire-diameter', '1.2mm', '--set-voltage', '28'];
    const { stdout } = spawnSync(process.execPath, [...args, ...stated], { encoding: 'utf8' });
    expect(JSON.parse(JSON.stringify(await node.analyseFile(path, { setup })))).toEqual(
      JSON.parse(stdout),
    );
  });

  it('gives samples in memory the answer of their file', async () => {
    for (const name of ['short-circuit', 'spray']) {
      const { channels, sampleRateHz } = demoTrace(name);
      const options = { sampleRateHz, quantity: 'voltage-current' as const, setup };
      const result = await main.analyseSamples(channels, options);
      const file = await node.analyseFile(join(recordings, `${name}.csv`), { setup });
      expect(result.mode).toBe(name);
      // Rejects swapped channels, a wrong rate and a set-up that was left out.
      for (const key of ['mode', 'confidence', 'segments', 'features', 'crossCheck'] as const)
        expect(result[key]).toEqual(file[key]);
    }
  });

  it('gives a live signal, pushed in odd pieces, the answer of the whole', async () => {
    const { channels, sampleRateHz } = demoTrace('short-circuit');
    const live = await main.openLive({ sampleRateHz, quantity: 'voltage-current', setup });
    const events: main.LiveEvent[] = [];
    for (let at = 0; at < channels[0].length; at += 1237)
      events.push(...live.push(channels.map((one) => one.slice(at, at + 1237))));
    events.push(...live.flush());
    const welds = events.filter((event) => event.type === 'weld');
    expect(welds.map(({ result }) => result.mode)).toEqual(['short-circuit']);
    expect(live.timeS).toBeCloseTo(channels[0].length / sampleRateHz, 9);
  });

  it('takes a set-up raw or parsed, and knows what it permits', () => {
    const raw = { gas: 'CO2', wireDiameter: '1.2mm', setVoltage: 30 };
    expect(main.expect(raw)).toEqual(main.expect(main.parseSetup(raw)));
    // CO2 carries no axial spray: ISO 14175 C1, see tests/published/gas-groups.test.ts.
    expect(main.expect(raw).modes.find((one) => one.mode === 'spray')?.permit).toBe('no');
  });

  it('refuses samples that cannot be what they are said to be', async () => {
    const volts = new Float64Array(100);
    const wrong: [main.Samples, Partial<main.SamplesOptions>][] = [
      [volts, { quantity: 'voltage-current' }],
      [[volts, volts.slice(1)], { quantity: 'voltage-current' }],
      [volts, { sampleRateHz: 0 }],
      [volts, { sampleRateHz: Number.NaN }],
      [[], {}],
      [volts, { quantity: 'volts' as 'voltage' }],
    ];
    for (const [samples, options] of wrong) {
      const call = main.analyseSamples(samples, {
        sampleRateHz: 5000,
        quantity: 'voltage',
        ...options,
      });
      await expect(call).rejects.toMatchObject({ code: 'bad-samples' });
    }
  });

  it('compares two results', async () => {
    const [before, after] = await Promise.all(
      ['short-circuit', 'spray'].map((name) => node.analyseFile(join(recordings, `${name}.csv`))),
    );
    expect(main.compare(before!, after!).mode.answer).toBe('changed');
  });
});

describe('the package in the hands of others', () => {
  let folder: string;
  beforeEach(() => {
    folder = scratch();
    mkdirSync(join(folder, 'node_modules'));
    symlinkSync(root, join(folder, 'node_modules/arc-transfer'), 'junction');
    const readme = readFileSync(join(root, 'README.md'), 'utf8');
    const code = /^```js\n([\s\S]*?)^```/m.exec(readme)?.[1] ?? '';
    expect(code.trim().split('\n').length).toBeLessThanOrEqual(6);
    writeFileSync(join(folder, 'example.mts'), code);
    writeFileSync(
      join(folder, 'wrong.mts'),
      "import { analyseFile } from 'arc-transfer/node';\nawait analyseFile('a.wav', { setup: { gass: 'CO2' } });\n",
    );
  });

  const check = (file: string, module: string, resolution: string) =>
    spawnSync(
      join(root, 'node_modules/.bin/tsc'),
      [
        ...['--noEmit', '--strict', '--skipLibCheck', '--target', 'es2022', '--types', 'node'],
        ...['--typeRoots', join(root, 'node_modules/@types')],
        ...['--module', module, '--moduleResolution', resolution, join(folder, file)],
      ],
      { encoding: 'utf8', cwd: folder },
    );

  it.each([
    ['node16', 'node16'],
    ['preserve', 'bundler'],
  ])('the example of README is well typed (%s, %s), and a misspelt key is not', (module, how) => {
    const good = check('example.mts', module, how);
    expect(good.stdout).toBe('');
    expect(good.status).toBe(0);
    expect(check('wrong.mts', module, how).stdout).toMatch(/gass/);
  });

  it('costs a page less than 325 kB to judge samples and hold them against a set-up, models left out', async () => {
    writeFileSync(join(folder, 'page.mjs'), "export { analyseSamples } from 'arc-transfer';\n");
    const { outputFiles } = await build({
      entryPoints: [join(folder, 'page.mjs')],
      bundle: true,
      minify: true,
      format: 'esm',
      platform: 'browser',
      loader: { '.json': 'file' },
      outdir: 'out',
      write: false,
      absWorkingDir: folder,
    });
    const script = outputFiles.find((one) => one.path.endsWith('.js'))!;
    expect(script.contents.length).toBeGreaterThan(50_000);
    expect(script.contents.length).toBeLessThan(325_000);
  });

  it('loads at most 120 modules of the main entry, and nothing of the lab', () => {
    const count = `import { register } from 'node:module';
import { MessageChannel } from 'node:worker_threads';
const { port1, port2 } = new MessageChannel();
const seen = new Set();
port1.on('message', (url) => seen.add(url));
port1.unref();
const hooks = 'let port; export function initialize(data) { port = data; } export function load(url, context, next) { port.postMessage(url); return next(url, context); }';
register('data:text/javascript,' + encodeURIComponent(hooks), { data: port2, transferList: [port2] });
await import('arc-transfer');
await new Promise((resolve) => setTimeout(resolve, 300));
console.log([...seen].join('\\n'));`;
    const run = spawnSync(process.execPath, ['--input-type=module', '--eval', count], {
      cwd: folder,
      encoding: 'utf8',
    });
    const modules = run.stdout.trim().split('\n');
    expect(modules.some((url) => url.includes('/dist/lib/index.js'))).toBe(true);
    expect(modules.length).toBeLessThanOrEqual(120);
    for (const url of modules.filter((one) => one.includes('/dist/lib/')))
      expect(readFileSync(new URL(url), 'utf8')).not.toMatch(/^\/\/ src\/lab\//m);
  });
});
