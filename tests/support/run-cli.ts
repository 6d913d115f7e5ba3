import { spawn } from 'node:child_process';
import { join } from 'node:path';

const program = join(import.meta.dirname, '../../bin/arc-transfer.js');

export interface CliRun {
  stdout: string;
  stderr: string;
  status: number | null;
}

/** Runs the built command line, as a user's shell would; `stdin` is given to it through a pipe. */
export function runCli(
  args: readonly string[],
  options: { stdin?: Uint8Array | string; cwd?: string; env?: Record<string, string> } = {},
): Promise<CliRun> {
  const child = spawn(process.execPath, [program, ...args], {
    cwd: options.cwd,
    // In English, whatever the language of the machine that runs the tests.
    env: { ...process.env, LC_ALL: 'C', ...options.env },
  });
  const run: CliRun = { stdout: '', stderr: '', status: null };
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    run.stdout += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    run.stderr += text;
  });
  // A program that refuses early does not read its stdin; that is no error of the test.
  child.stdin.on('error', () => {});
  child.stdin.end(options.stdin ?? '');
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (status) => resolve({ ...run, status }));
  });
}
