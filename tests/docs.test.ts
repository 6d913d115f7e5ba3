import { spawnSync } from 'node:child_process';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeWav } from '../src/recording/index.js';
import { scratch } from './support/scratch.js';

const root = join(import.meta.dirname, '..');
const readme = readFileSync(join(root, 'README.md'), 'utf8');
const developers = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');
const program = join(root, 'bin/arc-transfer.js');

/** What the example files of README stand for. */
const STAND_INS: Record<string, string> = {
  'weld.wav': 'short-circuit.wav',
  'seam.csv': 'spray.csv',
  'run.wav': 'short-circuit.wav',
  'run.csv': 'short-circuit.csv',
  'before.wav': 'short-circuit.wav',
  'after.wav': 'short-circuit.wav',
  'recordings/a.wav': 'short-circuit.wav',
  'recordings/b.csv': 'spray.csv',
};

/** A folder that holds the example files, and the package where a program would find it. */
async function exampleFolder(): Promise<string> {
  const folder = scratch();
  mkdirSync(join(folder, 'recordings'));
  for (const [name, fixture] of Object.entries(STAND_INS)) {
    copyFileSync(join(root, 'fixtures/recordings', fixture), join(folder, name));
  }
  writeFileSync(join(folder, 'daq.wav'), await loggerWav());
  mkdirSync(join(folder, 'node_modules'));
  symlinkSync(root, join(folder, 'node_modules/arc-transfer'), 'junction');
  return folder;
}

/** The spray trace as a data logger would store it: 100 V and 1000 A at digital full scale. */
async function loggerWav(): Promise<Uint8Array> {
  const rows = readFileSync(join(root, 'fixtures/recordings/spray.csv'), 'utf8').trim().split('\n');
  const cells = rows.slice(1).map((row) => row.split(',').map(Number));
  const column = (index: number, full: number): Float64Array =>
    Float64Array.from(cells, (row) => (row[index] ?? Number.NaN) / full);
  return writeWav([column(1, 100), column(2, 1000)], 5000, '32f');
}

const blocks = (language: string): string[] =>
  [...readme.matchAll(new RegExp(`^\`\`\`${language}\n([\\s\\S]*?)^\`\`\``, 'gm'))].map(
    (one) => one[1] ?? '',
  );
const commands = blocks('sh').flatMap((block) =>
  block.split('\n').filter((line) => line.startsWith('arc-transfer ')),
);
const words = (command: string): string[] =>
  [...command.matchAll(/"([^"]*)"|(\S+)/g)].map((one) => one[1] ?? one[2] ?? '');

describe('README', () => {
  it('holds the tables and outputs that the code gives now', () => {
    const check = spawnSync(process.execPath, ['bin/build/docs.js', '--check'], {
      cwd: root,
      encoding: 'utf8',
    });
    expect(check.stderr).toBe('');
    expect(check.status).toBe(0);
    expect(readme.match(/made by npm run docs/g)?.length).toBeGreaterThan(5);
  });

  it('shows commands for all three users', () => {
    expect(commands.length).toBeGreaterThanOrEqual(5);
  });

  it.each(commands)('%s', async (command) => {
    const [, ...args] = words(command);
    const run = spawnSync(process.execPath, [program, ...args], {
      cwd: await exampleFolder(),
      encoding: 'utf8',
    });
    expect(run.stderr).not.toMatch(/^error/m);
    // 1 only where the example asks for it.
    expect(run.status).toBeLessThanOrEqual(command.includes('--fail-on') ? 1 : 0);
    const out = args[args.indexOf('--out') + 1];
    if (!args.includes('--out')) expect(run.stdout).not.toBe('');
    expect(run.stdout).not.toContain('FAILED');
    expect(args.includes('--out') && out === undefined).toBe(false);
  });

  it.each(blocks('js'))('the program %#', async (code) => {
    const folder = await exampleFolder();
    const run = spawnSync(process.execPath, ['--input-type=module', '--eval', code], {
      cwd: folder,
      encoding: 'utf8',
    });
    expect(run.stderr).toBe('');
    expect(run.stdout).toMatch(/^ok short-circuit 0\.\d+/);
  });

  it('names only files of the repository in its links', () => {
    const links = [...`${readme}${developers}`.matchAll(/\]\(([^)#]+)\)/g)].map(
      (one) => one[1] ?? '',
    );
    const lost = links.filter((link) => !/^https?:/.test(link) && !existsSync(join(root, link)));
    expect(lost).toEqual([]);
  });
});

describe('DEVELOPERS', () => {
  it('names only paths that exist', () => {
    const paths = [...developers.matchAll(/`((?:src|tests|bin|fixtures)\/[a-zA-Z./-]+)`/g)];
    const lost = paths.map((one) => one[1] ?? '').filter((path) => !existsSync(join(root, path)));
    expect(paths.length).toBeGreaterThan(10);
    expect(lost).toEqual([]);
  });
});
