/**
 * Processor time to draw an arc, its sound and a recording of it, a sound of 4 s; median of single draws, since other
 * work on the machine lengthens some. Arguments: arcs (default 24), and the compiled `simulate/index.js` of another
 * state of the code, drawn in turn with this one, for a comparison in one run.
 */
import { pathToFileURL } from 'node:url';
import { createRandom, MODES } from '../../src/core/index.js';
import * as now from '../../src/lab/simulate/index.js';

const ARCS = Number(process.argv[2] ?? 24);
const OTHER = process.argv[3];
const SECONDS = 4;
/** Draws that only warm up. */
const WARM = 4;

type Simulator = typeof now;

const times = new Map<string, number[]>();

function timed<T>(row: string, count: boolean, work: () => T): T {
  const before = process.cpuUsage();
  const result = work();
  const { user, system } = process.cpuUsage(before);
  if (count) times.set(row, [...(times.get(row) ?? []), (user + system) / 1000]);
  return result;
}

function draw(name: string, simulator: Simulator, index: number): void {
  const count = index >= WARM;
  const row = (what: string): string => `${what.padEnd(34)}${name}`;
  const random = createRandom(`drawing ${index}`);
  const families = simulator.ELECTRICAL_FAMILIES;
  const scenario = simulator.drawScenario(random.fork('arc'), {
    mode: MODES[index % MODES.length]!,
    family: families[Math.floor(index / MODES.length) % families.length]!,
    arcS: SECONDS,
  });
  Object.assign(scenario, { openStart: true, openEnd: true });
  const run = timed(row('arc'), count, () => simulator.simulateArc(scenario));
  const family = random.pick(simulator.ACOUSTIC_FAMILIES);
  const acoustics = simulator.drawAcoustics(random.fork('acoustics'), { family });
  const sound = timed(row('dry sound, 44.1 kHz'), count, () =>
    simulator.simulateSound(run, acoustics),
  );
  const low = { ...acoustics, rateHz: 16_000 };
  timed(row('dry sound, 16 kHz'), count, () => simulator.simulateSound(run, low));
  if ('simulateDrySound' in simulator) {
    const dry = timed(row('dry sound, 16 kHz, events apart'), count, () =>
      simulator.simulateDrySound(run, low),
    );
    timed(row('audibility'), count, () => simulator.audibility(dry));
  }
  const chain = simulator.drawChain(random.fork('chain'), {
    family: random.pick(simulator.CHAIN_FAMILIES),
    noiseGroups: Object.keys(simulator.NOISE_GROUPS),
  });
  timed(row('recording, 44.1 kHz'), count, () =>
    simulator.degradeSound(sound, acoustics.rateHz, chain, run.truth),
  );
}

const other = OTHER === undefined ? null : ((await import(pathToFileURL(OTHER).href)) as Simulator);
for (let index = 0; index < ARCS + WARM; index++) {
  if (other !== null) draw('before', other, index);
  draw('now', now, index);
}
const ms = (values: readonly number[]): string => {
  const sorted = [...values].sort((a, b) => a - b);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return `${sorted[sorted.length >> 1]!.toFixed(1).padStart(9)}${mean.toFixed(1).padStart(9)}`;
};
console.log(`${'processor time, ms'.padEnd(42)}${'median'.padStart(9)}${'mean'.padStart(9)}`);
for (const [row, values] of [...times].sort(([a], [b]) => a.localeCompare(b)))
  console.log(`${row.padEnd(42)}${ms(values)}`);
