import { basename, extname, resolve } from 'node:path';
import { MACHINE_VERSION, type Machine, type SweepStep } from '../../../analysis/sweep/index.js';
import { ArcError } from '../../../core/index.js';
import {
  forecast,
  forecastPicture,
  parseSetup,
  processMaps,
  type Setup,
} from '../../../setup/index.js';
import { readSetupTable } from '../../label/setup-table.js';
import { readWords } from '../../terminal/flags/language-flag.js';
import { readReading } from '../../terminal/flags/reading-flags.js';
import { readSettings } from '../../terminal/flags/setting-flags.js';
import { readSetup } from '../../terminal/flags/setup-flags.js';
import type { Engine } from '../../terminal/judge/engine.js';
import { lookOf } from '../../terminal/look.js';
import { writeOut } from '../../terminal/output.js';
import { createProgress } from '../../terminal/progress.js';
import { writeFileBy } from '../../terminal/sink.js';
import { filesOfOptions } from '../../terminal/spare-inputs.js';
import { keysOf } from '../../terminal/table-files.js';
import { visible } from '../../view/index.js';
import { judgeSteps, type StatedStep } from './judge-steps.js';
import { sweepText } from './text.js';

/** Reads, judges each step, writes table, page, picture and machine file. */
export async function sweepCommand(
  paths: readonly string[],
  options: Readonly<Record<string, unknown>>,
  given?: Engine,
): Promise<void> {
  const words = readWords(options);
  const engine = given ?? (await import('../../terminal/judge/shipped-engine.js')).SHIPPED_ENGINE;
  const setup = await readSetup(options);
  const job = { engine, settings: readSettings(options) };
  const reading = readReading(options);
  const table = typeof options['steps'] === 'string' ? options['steps'] : null;
  const stated = table === null ? new Map<string, StatedStep[]>() : await readSteps(table, paths);
  const progress = createProgress(paths.length);
  const steps: SweepStep[] = [];
  for (const path of paths) {
    const source = await engine.openSource(path);
    try {
      const recording = await engine.openRecording(source, reading);
      progress.watch(recording, path);
      steps.push(...(await judgeSteps(recording, basename(path), stated.get(path) ?? [], job)));
      await recording.close?.();
    } finally {
      await source.close();
    }
  }
  progress.clear();
  const machine: Machine = {
    kind: 'arc-transfer-machine',
    version: MACHINE_VERSION,
    machine: nameOf(options, paths),
    wireMaterial: setup.wireMaterial,
    wireDiameterMm: setup.wireDiameterMm,
    gas: setup.gas,
    steps,
  };
  const document = `${JSON.stringify(machine, null, 2)}\n`;
  const published = publishedFor(setup, steps);
  await writeOut(
    options['json'] === true
      ? document
      : sweepText(machine, published?.disagrees ?? null, lookOf(process.stdout), words),
  );
  const rules = {
    overwrite: options['overwrite'] === true,
    inputs: [...paths, ...filesOfOptions(options)],
  };
  const write = async (option: string, make: () => Promise<string>): Promise<void> => {
    const file = options[option];
    if (typeof file !== 'string') return;
    await writeFileBy(file, await make(), rules);
    process.stderr.write(`${words.terminal.tally.wrote(visible(file))}\n`);
  };
  await write('machineFile', async () => document);
  await write('page', async () => {
    const { sweepPage } = await import('../../report/index.js');
    return sweepPage(machine, published, words);
  });
  await write('picture', async () => {
    const { figureFile, sweepPicture } = await import('../../report/index.js');
    return figureFile(sweepPicture(machine, published?.map ?? null, words));
  });
}

/** As stated; else that of the first recording. */
function nameOf({ machineName }: Readonly<Record<string, unknown>>, paths: readonly string[]) {
  const first = paths[0]!;
  return typeof machineName === 'string' ? machineName : basename(first, extname(first));
}

/** The published map of wire and gas, and how many sure steps it gives another mode for. */
function publishedFor(setup: Setup, steps: readonly SweepStep[]) {
  if (setup.gas === null) return null;
  const seen = forecast({ ...setup, expectedMode: null });
  const map = forecastPicture(
    { ...setup, expectedMode: null },
    { map: seen.map, point: null },
    { columns: 40, rows: 30 },
  );
  if (map === null) return null;
  // A mix, and pulses, have no place on the published map.
  const sure = steps.filter(
    ({ status, mode, meanVoltageV, meanCurrentA }) =>
      status === 'ok' &&
      mode !== 'mixed' &&
      mode !== 'pulsed-spray' &&
      meanVoltageV !== null &&
      meanCurrentA !== null,
  );
  const other = sure.filter((one) => {
    const [volts, amps] = [one.meanVoltageV!, one.meanCurrentA!];
    const shares = processMaps.modeShares(
      processMaps.likelihoodsAt(seen.map, volts, amps),
      processMaps.sprayCurrentShare(seen.map, amps),
    );
    return shares[one.mode as keyof typeof shares] < 0.5;
  });
  return { map, disagrees: { count: other.length, of: sure.length } };
}

/** Steps of a table by the recording that they are of. */
async function readSteps(
  table: string,
  paths: readonly string[],
): Promise<Map<string, StatedStep[]>> {
  const { rows } = await readSetupTable(table);
  const steps = new Map<string, StatedStep[]>();
  for (const { file, line, setup, own } of rows) {
    const keys = new Set(keysOf(table, file));
    const path =
      paths.find((one) => keys.has(resolve(one))) ?? paths.find((one) => keys.has(basename(one)));
    if (path === undefined)
      throw bad(table, `line ${line} names ${file}, which is none of the recordings given`);
    const second = (name: string): number | null => {
      const cell = own[name]?.trim() ?? '';
      if (cell === '') return null;
      const value = Number(cell.replace(',', '.'));
      if (!Number.isFinite(value) || value < 0)
        throw bad(table, `line ${line}: ${name} is ${cell}`);
      return value;
    };
    const step = { fromS: second('from_s'), toS: second('to_s'), setup: parseSetup(setup) };
    steps.set(path, [...(steps.get(path) ?? []), step]);
  }
  return steps;
}

function bad(table: string, why: string): ArcError {
  return new ArcError({
    code: 'bad-step-table',
    what: `The table of steps ${table} cannot be used: ${why}.`,
    expected: 'a CSV table such as: file,from_s,to_s,set_voltage_v,wire_feed_m_per_min',
    todo: 'Correct the table.',
  });
}
