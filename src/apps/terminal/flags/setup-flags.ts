import { readFile } from 'node:fs/promises';
import type { Command } from 'commander';
import { ArcError } from '../../../core/index.js';
import { note } from '../../../messages/index.js';
import { parseSetup, SETUP_OPTIONS, type Setup } from '../../../setup/index.js';
import { readProcedureFile } from './procedure-file.js';

export type RawSetup = Readonly<Record<string, string | number>>;

/** Adds every set-up option, `--setup file.json` and `--procedure file.json`. */
export function addSetupFlags(command: Command): Command {
  command.optionsGroup('Set-up, as far as you know it (anything may be "unknown"):');
  for (const one of SETUP_OPTIONS) {
    const value = `<${one.valueName}>`;
    command.option(`${one.flag} ${value}`, `${one.help}, e.g. ${one.example}`);
    for (const alias of one.aliases) command.option(`${alias} ${value}`, `same as ${one.flag}`);
  }
  return command
    .option('--setup <file.json>', 'the same as a file; options given here win over it')
    .option(
      '--procedure <file.json>',
      'what the welding procedure allows (arc-transfer help procedure); it fills what is not stated',
    );
}

/**
 * The set-up from the parsed options, the `--setup` file and the procedure. What was stated otherwise than the
 * procedure says is noted.
 *
 * @throws ArcError for a file that cannot be read and for whatever `parseSetup` refuses.
 */
export async function readSetup(options: Readonly<Record<string, unknown>>): Promise<Setup> {
  const setup = parseSetup(await readRawSetup(options));
  const procedure = await readProcedureFile(options);
  if (!procedure) return setup;
  const { contradictions } = await import('../../../procedure/index.js');
  const stated = parseSetup(await readStatedSetup(options));
  for (const one of contradictions(procedure, stated))
    setup.notes.push(note('outside-procedure', { ...one }));
  return setup;
}

/** The same in the words of the user, with what the procedure fixes; not yet checked without one. */
export async function readRawSetup(options: Readonly<Record<string, unknown>>): Promise<RawSetup> {
  const stated = await readStatedSetup(options);
  const procedure = await readProcedureFile(options);
  if (!procedure) return stated;
  const { fillSetup } = await import('../../../procedure/index.js');
  return fillSetup(procedure, stated);
}

/** What was stated of the run itself, by options and the `--setup` file; not yet checked. */
export async function readStatedSetup(
  options: Readonly<Record<string, unknown>>,
): Promise<RawSetup> {
  const file = options['setup'];
  const stated = typeof file === 'string' ? await readSetupFile(file) : {};
  const flags: Record<string, string | number> = {};
  for (const one of SETUP_OPTIONS) {
    for (const flag of [one.flag, ...one.aliases]) {
      const value = options[keyOf(flag)];
      if (typeof value === 'string') flags[flag.slice(2)] = value;
    }
  }
  return withStated(stated, flags);
}

/** What `general` says, less what `special` says too in whatever spelling, and what `special` says. */
export function withStated(general: RawSetup, special: RawSetup): RawSetup {
  return { ...withoutStated(general, special), ...special };
}

/** The key under which commander keeps a flag. */
function keyOf(flag: string): string {
  return flag.slice(2).replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
}

/** What the file says, less what the command line says too, in whatever spelling. */
function withoutStated(file: RawSetup, flags: RawSetup): RawSetup {
  const names = (given: string): readonly string[] => {
    const wanted = letters(given);
    const known = SETUP_OPTIONS.find((one) =>
      [one.flag, ...one.aliases].some((flag) => letters(flag) === wanted),
    );
    return known ? [known.key] : [wanted];
  };
  const stated = new Set(Object.keys(flags).flatMap(names));
  return Object.fromEntries(
    Object.entries(file).filter(([key]) => !names(key).some((name) => stated.has(name))),
  );
}

function letters(name: string): string {
  return name.toLowerCase().replaceAll(/[^a-z0-9]/g, '');
}

async function readSetupFile(path: string): Promise<RawSetup> {
  let parsed: unknown;
  try {
    parsed = JSON.parse(await readFile(path, 'utf8'));
  } catch (cause) {
    throw badFile(path, cause instanceof Error ? cause.message : String(cause), cause);
  }
  if (typeof parsed !== 'object' || parsed === null || Array.isArray(parsed)) {
    throw badFile(path, 'it does not hold one JSON object');
  }
  const nested = Object.entries(parsed).find(([, value]) => typeof value === 'object');
  if (nested) throw badFile(path, `"${nested[0].slice(0, 60)}" is neither text nor a number`);
  return parsed as RawSetup;
}

function badFile(path: string, why: string, cause?: unknown): ArcError {
  return new ArcError({
    code: 'bad-setup-file',
    what: `The set-up file ${path} cannot be used: ${why}.`,
    expected: 'a JSON object such as {"gas": "Ar+18CO2", "setVoltage": 22}',
    todo: 'Correct the file or its path.',
    cause,
  });
}
