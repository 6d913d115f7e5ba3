import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import type { ArcLine, OtherLine } from '../../src/lab/simulate/index.js';
import { runCli } from '../support/run-cli.js';
import { scratch } from '../support/scratch.js';

const PROGRAM = join(import.meta.dirname, '../../bin/arc-transfer.js');
/** Two shards of arcs, the second of one, and one of other sounds. */
const SMALL = ['--arcs', '33', '--others', '5', '--seconds', '0.5', '--seed', '7'];
/** Three whole shards, so that the second is under way when the first is done. */
const THREE = ['--arcs', '96', '--seconds', '0.5', '--traces', 'none', '--seed', '8'];
const dataSet = (folder: string, ...more: string[]) =>
  runCli(['simulate', '--data-set', folder, ...more]);

/** Every file under a folder with its bytes. */
function contents(folder: string): Map<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true });
  return new Map(
    files
      .filter((file) => file.isFile())
      .map((file) => join(file.parentPath, file.name))
      .sort()
      .map((path) => [path.slice(folder.length), readFileSync(path, 'base64')]),
  );
}

const lines = <T>(path: string): T[] =>
  readFileSync(path, 'utf8')
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as T);

it('writes the same bytes with one thread and with three, as its format says', async () => {
  const folder = scratch();
  const [one, three] = [join(folder, 'one'), join(folder, 'three')];
  for (const [out, workers] of [
    [one, '1'],
    [three, '3'],
  ] as const) {
    const run = await dataSet(out, ...SMALL, '--workers', workers, '--sounds', '2');
    expect(run).toMatchObject({ status: 0, stdout: `${out}\n` });
  }
  expect(contents(three)).toEqual(contents(one));
  expect(readdirSync(one).sort()).toEqual([
    'arcs-00000',
    'arcs-00001',
    'data-set.json',
    'others-00000',
    'recipe.json',
  ]);
  const arcs = ['arcs-00000', 'arcs-00001'].flatMap((shard) =>
    lines<ArcLine>(join(one, shard, 'truth.jsonl')),
  );
  expect(arcs.map(({ index }) => index)).toEqual(Array.from({ length: 33 }, (_, i) => i));
  const others = lines<OtherLine>(join(one, 'others-00000/truth.jsonl'));
  expect(new Set(others.map(({ kind }) => kind)).size).toBe(5);
  checkWithNumpy(join(one, 'arcs-00000'));
});

/**
 * NumPy as the other reader: lengths and types, sounds at rms 1 while the arc burns, parts that leave no more
 * than they should, traces that have the stated means. Its figures come from its own decoding.
 */
function checkWithNumpy(shard: string): void {
  const script = `
import json, sys, numpy as np
d = sys.argv[1]
load = lambda name: np.load(f"{d}/{name}.npy", mmap_mode="r")
sound, parts, traces, events = map(load, ["sound", "parts", "traces", "events"])
cut = lambda series, span: np.asarray(series[span["offset"]:span["offset"] + span["length"]], dtype=float)
out = {"types": [str(a.dtype) for a in (sound, parts, traces, events)], "columns": events.shape[1], "arcs": []}
for line in open(f"{d}/truth.jsonl"):
    arc = json.loads(line)
    volts = cut(traces, arc["traces"]["voltage"]) * arc["traces"]["voltsPerUnit"]
    rows = cut(events, arc["events"]["rows"])
    rms = []
    for one in arc["sounds"]:
        x = cut(sound, one)
        delay = one["acoustics"]["distanceM"] / 343
        lo = int((arc["arcOn"][0]["startS"] + delay) * 16000) if arc["arcOn"] else 0
        hi = int((arc["arcOn"][-1]["endS"] + delay) * 16000) if arc["arcOn"] else len(x)
        rms.append([float(np.sqrt(np.mean(x[lo:hi] ** 2))), len(x), [len(cut(parts, s)) for s in one["parts"].values()]])
    span = arc["arcOn"][0] if arc["arcOn"] else {"startS": 0, "endS": 1}
    on = slice(int(span["startS"] * arc["traces"]["rateHz"]) + 1, int(span["endS"] * arc["traces"]["rateHz"]))
    out["arcs"].append({"meanV": float(volts[on].mean()), "spans": len(arc["arcOn"]), "counts": [int((rows[:, 0] == k).sum()) for k in range(4)], "rms": rms})
print(json.dumps(out))
`;
  const done = spawnSync('python3', ['-c', script, shard], { encoding: 'utf8' });
  expect(done.stderr).toBe('');
  const seen = JSON.parse(done.stdout) as {
    types: string[];
    columns: number;
    arcs: {
      meanV: number;
      spans: number;
      counts: number[];
      rms: [number, number, number[]][];
    }[];
  };
  expect(seen.types).toEqual(['float16', 'float16', 'int16', 'float32']);
  expect(seen.columns).toBe(4);
  const arcs = lines<ArcLine>(join(shard, 'truth.jsonl'));
  expect(seen.arcs).toHaveLength(arcs.length);
  for (const [i, { meanV, spans, counts, rms }] of seen.arcs.entries()) {
    const arc = arcs[i]!;
    const burntS = arc.arcOn.reduce((sum, { startS, endS }) => sum + endS - startS, 0);
    expect(rms).toHaveLength(2);
    for (const [level, length, parts] of rms) {
      expect(level).toBeCloseTo(1, 2);
      expect(parts.every((one) => one === length)).toBe(true);
      expect(length).toBe(Math.floor(arc.durationS * 16_000));
    }
    // A contact for each re-ignition, and as many as the rates say.
    expect(counts[0]).toBe(counts[1]);
    if (burntS > 0) {
      expect(counts[2]! / burntS).toBeCloseTo(arc.events.dropsPerS, 6);
      expect(counts[3]! / burntS).toBeCloseTo(arc.events.pulsesPerS, 6);
    }
    if (spans === 1) expect(meanV).toBeCloseTo(arc.setup.meanV, 1);
  }
}

it('goes on after it was killed, and leaves whole shards alone', async () => {
  const folder = scratch();
  const [whole, killed] = [join(folder, 'whole'), join(folder, 'killed')];
  expect((await dataSet(whole, ...THREE, '--workers', '2')).status).toBe(0);

  const child = spawn(process.execPath, [
    PROGRAM,
    'simulate',
    '--data-set',
    killed,
    ...THREE,
    '--workers',
    '1',
  ]);
  const ended = new Promise((resolve) => child.on('close', resolve));
  // The first shard has been said to be done, the last has not.
  await new Promise<void>((resolve) => child.stderr.once('data', () => resolve()));
  child.kill('SIGKILL');
  await ended;
  const shards = (): string[] => readdirSync(killed).filter((name) => /^\w+-\d+$/.test(name));
  const before = shards();
  expect(before.length).toBeGreaterThan(0);
  expect(before.length).toBeLessThan(3);
  const mark = join(killed, before[0]!, 'mark');
  writeFileSync(mark, 'kept');

  expect((await dataSet(killed, ...THREE, '--workers', '3')).status).toBe(0);
  expect(existsSync(mark)).toBe(true);
  const now = contents(killed);
  now.delete(`/${before[0]!}/mark`);
  expect(now).toEqual(contents(whole));
});

it('keeps shards small where an arc has many long sounds', async () => {
  // 16 sounds of 5 to 10 s are some 15 MB an arc: two at most to a shard of 32 MB.
  const folder = join(scratch(), 'set');
  const run = await runCli([
    ...['simulate', '--data-set', folder, '--arcs', '3', '--sounds', '16', '--seconds', '10'],
    ...['--traces', 'none', '--workers', '2'],
  ]);
  expect(run.status).toBe(0);
  const shards = readdirSync(folder).filter((name) => name.startsWith('arcs-'));
  expect(shards.length).toBeGreaterThan(1);
  for (const shard of shards) {
    const bytes = readdirSync(join(folder, shard)).reduce(
      (sum, name) => sum + statSync(join(folder, shard, name)).size,
      0,
    );
    expect(bytes).toBeLessThan(32 * 2 ** 20);
  }
});

it('refuses another data set in the same folder, nothing to draw, and options of single recordings', async () => {
  const folder = join(scratch(), 'set');
  const draw = (...args: string[]) => runCli(['simulate', '--data-set', folder, ...args]);
  expect((await draw('--others', '1', '--seconds', '0.5')).status).toBe(0);
  const other = await draw('--others', '1', '--seconds', '0.5', '--seed', '2');
  expect(other).toMatchObject({ status: 2, stdout: '' });
  expect(other.stderr).toContain('drawn otherwise');
  expect((await draw()).stderr).toContain('--arcs <n>, --others <n>, or both');
  expect((await draw('--arcs', '1', '--mode', 'spray')).status).toBe(2);
  const nameless = await runCli(['simulate']);
  expect(nameless).toMatchObject({ status: 2, stdout: '' });
  expect(nameless.stderr).toContain('where to write');
});
