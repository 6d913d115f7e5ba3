/**
 * Labels short simulated recordings with one thread and with two, twice each, and prints both rates and their
 * quotient; the goal is 1.8 on two free processors. All tables must be equal byte for byte. `npm run bench -- label
 * [recordings]`.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { createRandom } from '../../src/core/index.js';
import {
  drawAcoustics,
  drawScenario,
  ELECTRICAL_FAMILIES,
  POWER_FAMILIES,
  simulateArc,
  simulateSound,
} from '../../src/lab/simulate/index.js';
import { writeWav } from '../../src/recording/index.js';
import { sayFigure } from './support/figure.js';

const COUNT = Number(process.argv[2] ?? 400);
/** Drawn anew up to here; more recordings are these again under other names. */
const DIFFERENT = Math.min(COUNT, 60);
const ARC_S = 1.5;

async function draw(index: number): Promise<Uint8Array> {
  const random = createRandom(`bench ${index}`);
  const scenario = drawScenario(random, { family: random.pick(ELECTRICAL_FAMILIES), arcS: ARC_S });
  const acoustics = drawAcoustics(random, { family: random.pick(POWER_FAMILIES) });
  const sound = simulateSound(simulateArc(scenario), acoustics);
  const peak = sound.reduce((most, value) => Math.max(most, Math.abs(value)), 1e-9);
  return writeWav([sound.map((value) => (0.7 * value) / peak)], acoustics.rateHz);
}

function label(folder: string, workers: number): { seconds: number; cpuS: number; table: string } {
  const out = join(folder, `w${workers}.csv`);
  const before = childCpuS();
  const begun = performance.now();
  const args = ['bin/arc-transfer.js', 'label', join(folder, 'recs'), '--out', out];
  const { status, stderr } = spawnSync(process.execPath, [
    ...args,
    '--overwrite',
    '--workers',
    String(workers),
  ]);
  const seconds = (performance.now() - begun) / 1000;
  if (status !== 0) throw new Error(String(stderr));
  return { seconds, cpuS: childCpuS() - before, table: readFileSync(out, 'utf8') };
}

/** Processor time of children that have ended, where the system tells (Linux, in ticks of 10 ms). */
function childCpuS(): number {
  const fields = readFileSync('/proc/self/stat', 'utf8').split(') ')[1]?.split(' ') ?? [];
  return (Number(fields[13]) + Number(fields[14])) / 100;
}

const folder = mkdtempSync(join(tmpdir(), 'arc-bench-'));
try {
  mkdirSync(join(folder, 'recs'));
  const drawn = await Promise.all(Array.from({ length: DIFFERENT }, (_, i) => draw(i)));
  for (let i = 0; i < COUNT; i++) {
    const name = `r${String(i).padStart(6, '0')}.wav`;
    writeFileSync(join(folder, 'recs', name), drawn[i % DIFFERENT]!);
  }
  console.log(`${COUNT} recordings of about ${ARC_S} s of arc; load ${loadavg()[0]?.toFixed(1)}`);
  // One, two, two, one: what the machine gains or loses in speed meanwhile weighs on both alike.
  const runs = [1, 2, 2, 1].map((workers) => ({ workers, ...label(folder, workers) }));
  const mean = (workers: number, of: 'seconds' | 'cpuS') =>
    runs.filter((run) => run.workers === workers).reduce((sum, run) => sum + run[of] / 2, 0);
  for (const workers of [1, 2]) {
    const seconds = mean(workers, 'seconds');
    const each = runs.filter((run) => run.workers === workers).map((run) => run.seconds.toFixed(1));
    console.log(
      `${workers} worker: ${each.join(' and ')} s, ${(COUNT / seconds).toFixed(1)} a second, ${mean(workers, 'cpuS').toFixed(1)} s of processor`,
    );
  }
  sayFigure({
    name: 'label on two workers',
    value: Number((COUNT / mean(2, 'seconds')).toFixed(1)),
    unit: 'a second',
    better: 'more',
    baseline: { name: 'one worker', value: Number((COUNT / mean(1, 'seconds')).toFixed(1)) },
  });
  const equal = runs.every(({ table }) => table === runs[0]?.table);
  console.log(
    `quotient ${(mean(1, 'seconds') / mean(2, 'seconds')).toFixed(2)}, tables ${equal ? 'equal' : 'DIFFERENT'}`,
  );
} finally {
  rmSync(folder, { recursive: true, force: true });
}
