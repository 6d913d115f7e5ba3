import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

export interface Ended {
  status: number | null;
  signal: NodeJS.Signals | null;
  out: string;
  words: string;
}

export interface LabelRun {
  inputs: string[];
  options: Record<string, unknown>;
  cwd: string;
  env?: Record<string, string>;
  stdin?: string;
  uid?: number;
}

/** Starts the label command as a process of its own, with the invented engine (see label-engine.mjs). */
export function startLabel(run: LabelRun): { child: ChildProcess; ended: Promise<Ended> } {
  const script = join(import.meta.dirname, 'label-cli.mjs');
  const { inputs, options } = run;
  const child = spawn(process.execPath, [script, JSON.stringify({ inputs, options })], {
    cwd: run.cwd,
    stdio: ['pipe', 'pipe', 'pipe', 'ipc'],
    env: { ...process.env, ...run.env },
    ...(run.uid === undefined ? {} : { uid: run.uid, gid: run.uid }),
  });
  // A test that fails must not leave it behind.
  onTestFinished(() => void child.kill('SIGKILL'));
  child.stdin?.on('error', () => {});
  child.stdin?.end(run.stdin ?? '');
  let out = '';
  let words = '';
  child.stdout?.on('data', (data) => {
    out += data;
  });
  child.stderr?.on('data', (data) => {
    words += data;
  });
  const ended = new Promise<Ended>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (status, signal) => resolve({ status, signal, out, words }));
  });
  return { child, ended };
}

export const runLabel = (run: LabelRun): Promise<Ended> => startLabel(run).ended;
