import { readFile } from 'node:fs/promises';
import {
  type Machine,
  mostRegular,
  nearestStep,
  parseMachine,
  type SweepStep,
} from '../../../analysis/sweep/index.js';
import { ArcError, canonicalJson } from '../../../core/index.js';
import type { Setup } from '../../../setup/index.js';
import {
  type Look,
  sayConfidence,
  sayStepPlace,
  visible,
  type Words,
  wrap,
} from '../../view/index.js';

/** What a machine file says of a stated set-up. */
export interface MachineAnswer {
  machine: string;
  /** False where wire or gas are stated otherwise than they were measured with. */
  sameWireAndGas: boolean;
  /** The measured step that stands for the stated point; null where none lies near. */
  near: SweepStep | null;
  /** By measured volts and amperes, or by dial and feed. */
  by: 'measured' | 'dial' | null;
  /** The most even step of the wanted mode; null where none is wanted or none was sure. */
  wanted: SweepStep | null;
}

/** @throws ArcError for a file that cannot be read or is no machine file */
export async function askMachine(path: string, setup: Setup): Promise<MachineAnswer> {
  const machine = parseMachine(await textOf(path), path);
  const sameWireAndGas = fits(machine, setup);
  if (!sameWireAndGas)
    return { machine: machine.machine, sameWireAndGas, near: null, by: null, wanted: null };
  const found = nearestStep(machine, {
    voltageV: setup.feederVoltsV ?? setup.arcVoltsV ?? setup.sourceVoltsV,
    currentA: setup.measuredCurrentA,
    setVoltageV: setup.setVoltageV,
    wireFeedMPerMin: setup.wireFeedMPerMin,
  });
  const { expectedMode } = setup;
  return {
    machine: machine.machine,
    sameWireAndGas,
    near: found?.step ?? null,
    by: found?.by ?? null,
    wanted: (expectedMode && mostRegular(machine.steps)[expectedMode]) ?? null,
  };
}

/** What is not stated on either side fits. */
function fits(machine: Machine, setup: Setup): boolean {
  const differs = <T>(a: T | null, b: T | null, same: (a: T, b: T) => boolean): boolean =>
    a !== null && b !== null && !same(a, b);
  return !(
    differs(machine.wireDiameterMm, setup.wireDiameterMm, (a, b) => Math.abs(a - b) < 0.07) ||
    differs<string>(machine.wireMaterial, setup.wireMaterial, (a, b) => a === b) ||
    differs<unknown>(machine.gas ?? null, setup.gas, (a, b) => plainGas(a) === plainGas(b))
  );
}

/** A gas as a file holds it. */
const plainGas = (gas: unknown): string => canonicalJson(JSON.parse(JSON.stringify(gas)));

/** The answer of the machine, to stand before that of the tables. */
export function machineLines(
  answer: MachineAnswer,
  { expectedMode }: Setup,
  look: Look,
  words: Words,
): string[] {
  const { sweep } = words;
  const name = visible(answer.machine);
  const say = (line: string): string[] => wrap(line, look.width, 2, 2);
  if (!answer.sameWireAndGas) return [...wrap(sweep.otherWire(name), look.width, 0), ''];
  const { near, wanted } = answer;
  if (near === null && wanted === null && expectedMode === null)
    return [...wrap(sweep.notNear(name), look.width, 0), ''];
  const modeOf = ({ status, mode }: SweepStep): string | null => {
    if (status !== 'ok' || mode === null) return null;
    return mode === 'mixed' ? words.result.transfer('mixed') : words.mode(mode);
  };
  const lines = [look.paint.bold(sweep.first(name))];
  if (near === null) lines.push(...say(sweep.notNear(name)));
  else {
    const sure = near.confidence === null ? '' : sayConfidence(near.confidence, words);
    lines.push(...say(sweep.near(modeOf(near), sure, sayStepPlace(near, words))));
  }
  if (expectedMode !== null) {
    const mode = words.mode(expectedMode);
    lines.push(
      ...say(
        wanted === null ? sweep.neverRan(mode) : sweep.setLike(mode, sayStepPlace(wanted, words)),
      ),
    );
  }
  return [...lines, ...say(sweep.caution).map((one) => look.paint.dim(one)), ''];
}

async function textOf(path: string): Promise<string> {
  try {
    return await readFile(path, 'utf8');
  } catch (cause) {
    throw new ArcError({
      code: 'bad-machine-file',
      what: `The machine file ${path} cannot be read: ${cause instanceof Error ? cause.message : String(cause)}.`,
      expected: 'a file written by sweep --machine-file',
      todo: 'Correct the path, or leave --machine out.',
      cause,
    });
  }
}
