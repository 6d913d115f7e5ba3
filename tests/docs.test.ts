import { spawnSync } from 'node:child_process';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeWav } from '../src/recording/index.js';
import { scratch } from './support/scratch.js';

const root = join(import.meta.dirname, '..');
const readme = readFileSync(join(root, 'README.md'), 'utf8');
const developers = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');
const program = join(root, 'bin/arc-transfer.js');

/** The topics of the built-in help: name, and file below the root. */
const topics = JSON.parse(readFileSync(join(root, 'src/apps/cli/help/topics.json'), 'utf8')) as {
  name: string;
  file: string;
}[];
/** Every text that people read, with the folder that its links start from. */
const texts = ['README.md', 'DEVELOPERS.md', ...topics.map((one) => one.file)].map((file) => ({
  file,
  folder: join(root, dirname(file)),
  text: readFileSync(join(root, file), 'utf8'),
}));

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
  texts.flatMap(({ text }) =>
    [...text.matchAll(new RegExp(`^\`\`\`${language}\n([\\s\\S]*?)^\`\`\``, 'gm'))].map(
      (one) => one[1] ?? '',
    ),
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
    const made = texts
      .map(({ text }) => text)
      .join('')
      .match(/made by npm run docs/g);
    expect(made?.length).toBeGreaterThan(9);
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

  it('is no longer than a person in a hurry reads', () => {
    expect(readme.split('\n').length).toBeLessThanOrEqual(201);
  });

  it('names only files of the repository in its links, as do all texts', () => {
    const lost = texts.flatMap(({ file, folder, text }) =>
      [...text.matchAll(/\]\(([^)#]+)\)|src="([^"]+)"/g)]
        .map((one) => one[1] ?? one[2] ?? '')
        .filter((link) => !/^https?:/.test(link) && !existsSync(join(folder, link)))
        .map((link) => `${file}: ${link}`),
    );
    expect(lost).toEqual([]);
  });
});

describe('the topics of the help', () => {
  it.each(topics)('$name is printed without marks of Markdown', ({ name }) => {
    const run = spawnSync(process.execPath, [program, 'help', name], { encoding: 'utf8' });
    expect(run.status).toBe(0);
    expect(run.stdout.split('\n')[0]).toMatch(/^[A-Z]/);
    expect(run.stdout).not.toMatch(/^#|\*\*|^\||<!--|```/m);
    for (const line of run.stdout.split('\n'))
      if (!line.startsWith('    ')) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('lists them, and knows what a misspelt one was', () => {
    const list = spawnSync(process.execPath, [program, 'help'], { encoding: 'utf8' });
    for (const { name } of topics) expect(list.stdout).toMatch(new RegExp(`^  ${name} `, 'm'));
    const wrong = spawnSync(process.execPath, [program, 'help', 'cluster'], { encoding: 'utf8' });
    expect(wrong.status).toBe(2);
    expect(wrong.stderr).toContain('Did you mean "clusters"?');
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
