/**
 * What a short run costs from the first key to the last line: the general help, and the judgement of 5 s. The least of
 * several runs, since other programs only ever add to it. Argument: runs (default 9).
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { sayFigure } from './support/figure.js';

const RUNS = Number(process.argv[2] ?? 9);
const root = join(import.meta.dirname, '..');
const program = join(root, 'bin/arc-transfer.js');
const demo = (name: string): string => join(root, 'fixtures/recordings', name);

function leastS(args: readonly string[]): number {
  const times = Array.from({ length: RUNS }, () => {
    const startMs = performance.now();
    const { status } = spawnSync(process.execPath, args, { stdio: 'ignore' });
    if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}`);
    return (performance.now() - startMs) / 1000;
  });
  return Number(Math.min(...times).toFixed(3));
}

const baseline = { name: 'node alone', value: leastS(['-e', '0']) };
const say = (name: string, args: readonly string[]): void =>
  sayFigure({ name, value: leastS([program, ...args]), unit: 's', better: 'less', baseline });
say('general help', ['--help']);
say('classify 5 s of sound', ['classify', demo('spray.wav')]);
say('classify 5 s of trace', ['classify', demo('spray.csv')]);
