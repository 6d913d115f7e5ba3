import { dirname } from 'node:path';
import {
  ArcError,
  createRandom,
  type Mode,
  type Random,
  TOOL_VERSION,
} from '../../../core/index.js';
import {
  type ArcRun,
  type ArcScenario,
  degradeSound,
  drawAcoustics,
  drawChain,
  drawScenario,
  ELECTRICAL_FAMILIES,
  POWER_FAMILIES,
  publishedDipCase,
  simulateArc,
  simulateSound,
} from '../../../lab/simulate/index.js';
import { writeWav } from '../../../recording/index.js';
import { writeOut } from '../../terminal/output.js';
import { makeFolder, writeFileBy } from '../../terminal/sink.js';
import { codecRoundTrip } from '../simulate-codec.js';
import { numberOption } from './number-option.js';
import { tracesCsv, tracesWav } from './traces.js';

/** How often a draw is repeated before a wanted mode counts as out of reach. */
const MOST_DRAWS = 200;

const USUAL_SECONDS = 5;

type Options = Record<string, unknown>;

/** Writes the recordings that the options ask for. Throws ArcError for wrong use. */
export async function simulateCommand(name: string | undefined, options: Options): Promise<void> {
  if (name === undefined)
    throw new ArcError({
      code: 'missing-name',
      what: 'simulate was not told where to write.',
      expected: 'a name: folder and first part of the file names, or --data-set <folder>',
      todo: 'Add it.',
    });
  const seed = numberOption(options, 'seed', { low: 0, high: 2 ** 31, whole: true });
  const count = numberOption(options, 'count', { low: 1, high: 100000, whole: true });
  await makeFolder(dirname(name));
  for (let k = 1; k <= count; k++) {
    const random = createRandom(`simulate ${seed} ${k}`);
    await writeRun(count === 1 ? name : `${name}-${k}`, random, options, seed);
  }
}

async function writeRun(
  name: string,
  random: Random,
  options: Options,
  seed: number,
): Promise<void> {
  const run = drawRun(random.fork('arc'), options);
  const truth: Record<string, unknown> = {
    simulated: true,
    note: 'Simulated and invented: not evidence about real arcs.',
    version: TOOL_VERSION,
    seed,
    durationS: run.durationS,
    truth: run.truth,
    scenario: run.scenario,
  };
  if (options['sound'] !== false) {
    const { bytes, acoustics, chain } = await soundOf(run, random.fork('sound'), options);
    Object.assign(truth, { acoustics, chain });
    await write(`${name}.wav`, bytes, options);
  }
  if (options['traces'] === 'csv') await write(`${name}.csv`, tracesCsv(run), options);
  if (options['traces'] === 'wav') await write(`${name}-traces.wav`, await tracesWav(run), options);
  if (options['truth'] !== false) {
    await write(`${name}.truth.json`, `${JSON.stringify(truth, null, 1)}\n`, options);
  }
}

async function write(path: string, data: string | Uint8Array, options: Options): Promise<void> {
  await writeFileBy(path, data, { overwrite: options['overwrite'] === true, inputs: [] });
  await writeOut(`${path}\n`);
}

/** A run of the wanted mode: the first draw in which the metal crossed that way without doubt. */
function drawRun(random: Random, options: Options): ArcRun {
  const mode = options['mode'] as Mode | undefined;
  for (let k = 0; k < MOST_DRAWS; k++) {
    const run = simulateArc(scenarioFor(random.fork(`draw ${k}`), options));
    const { truth } = run;
    const keptMost = run.durationS > 0 && truth.arcOn.length <= 2;
    if (mode === undefined || (truth.mode === mode && truth.unambiguous && keptMost)) return run;
  }
  throw new ArcError({
    code: 'mode-not-reached',
    what: `In ${MOST_DRAWS} draws the metal never crossed as ${mode}.`,
    expected: 'a mode that the family and preset can reach',
    todo: 'Choose another seed, family or mode.',
  });
}

function scenarioFor(random: Random, options: Options): ArcScenario {
  const seconds = options['seconds'] ?? USUAL_SECONDS;
  const arcS = numberOption({ seconds }, 'seconds', { low: 0.5, high: 120 });
  const scenario = baseScenario(random, options, arcS);
  if (options['rate'] === undefined) return scenario;
  const electricalRateHz = numberOption(options, 'rate', { low: 1000, high: 100000, whole: true });
  const antiAliasHz = Math.min(scenario.probe.antiAliasHz, 0.4 * electricalRateHz);
  return { ...scenario, electricalRateHz, probe: { ...scenario.probe, antiAliasHz } };
}

function baseScenario(random: Random, options: Options, arcS: number): ArcScenario {
  const preset = options['preset'];
  if (preset === 'published-dip') {
    return { ...publishedDipCase(random.integer(0, 2 ** 31 - 1)), arcS };
  }
  if (preset !== undefined) {
    throw new ArcError({
      code: 'unknown-preset',
      what: `There is no preset "${String(preset)}".`,
      expected: 'published-dip',
      todo: 'Name it, or leave --preset out.',
    });
  }
  const family = (options['family'] as string | undefined) ?? random.pick(ELECTRICAL_FAMILIES);
  const mode = options['mode'] as Mode | undefined;
  // Whoever asks for a mode wants it as it is welded, not as it goes wrong.
  return drawScenario(random, { family, arcS, ...(mode && { mode, wrongShare: 0 }) });
}

async function soundOf(run: ArcRun, random: Random, options: Options) {
  const family = (options['acoustics'] as string | undefined) ?? random.pick(POWER_FAMILIES);
  const acoustics = drawAcoustics(random, { family });
  const drawn = drawChain(random, {
    family: options['chain'] as string,
    ...(options['snr'] === undefined
      ? {}
      : { snrDb: numberOption(options, 'snr', { low: -40, high: 100 }) }),
  });
  const codec = (options['codec'] as string | undefined) ?? null;
  const chain = { ...drawn, outRateHz: 44100, bits: 16, codec };
  const pressure = simulateSound(run, acoustics);
  const { samples, rateHz } = degradeSound(pressure, acoustics.rateHz, chain, {
    arcOn: run.truth.arcOn,
    codec: codecRoundTrip,
  });
  return { bytes: await writeWav([samples], rateHz), acoustics, chain };
}
