import { createReadStream } from 'node:fs';
import { type Settings, settingsRecord } from '../../../analysis/index.js';
import { failedResult, type Result } from '../../../analysis/result/index.js';
import { isArcError } from '../../../core/index.js';
import { hash } from '../../../files/hash.js';
import { spool } from '../../../files/spool.js';
import type { ReadOptions, Recording } from '../../../recording/index.js';
import type { Setup } from '../../../setup/index.js';
import { type Input, type LostInput, STDIN } from '../inputs.js';
import type { Progress } from '../progress.js';
import { analyseBeside, type Beside } from './beside.js';
import type { Engine, OpenSource } from './engine.js';

/** Recorded as `tool.host`: no machine name, so that results of different machines stay equal. */
export const HOST = 'node';

/** What holds for every input of one command. */
export interface Job {
  engine: Engine;
  setup: Setup;
  settings: Settings;
  reading: ReadOptions;
  progress: Progress;
  /** The trace of the same run beside a sound. */
  beside?: Beside;
}

/**
 * The result of one input. Whatever goes wrong with it is a `failed` result, so that the others go on.
 * `undefined` for a file of a folder that is no recording.
 */
export async function classifyOne(input: Input | LostInput, job: Job): Promise<Result | undefined> {
  if (input.origin === 'lost') return failed(input.path, null, input.error, job);
  if (input.origin !== 'pipe') return classifyFile(input.path, input, job);
  try {
    const stream = input.path === STDIN ? process.stdin : createReadStream(input.path);
    const copy = await spool(stream);
    try {
      return await classifyFile(copy.path, input, job);
    } finally {
      await copy.remove();
    }
  } catch (error) {
    return failed(input.path, null, error, job);
  }
}

/** `file` is where the bytes are; `input.path` is what they are called. */
async function classifyFile(file: string, input: Input, job: Job): Promise<Result | undefined> {
  const { path } = input;
  let source: OpenSource | undefined;
  let recording: Recording | undefined;
  let sha256: string | null = null;
  try {
    source = { ...(await job.engine.openSource(file)), name: path === STDIN ? 'stdin' : path };
    recording = await job.engine.openRecording(source, job.reading);
    sha256 = await hash(source);
    job.progress.watch(recording, path);
    const { setup, settings } = job;
    const options = { setup, settings, path, sha256, host: HOST };
    if (job.beside) return await analyseBeside(recording, job.engine, options, job.beside);
    return await job.engine.analyse(recording, options);
  } catch (error) {
    if (input.origin === 'folder' && isNoRecording(error)) return undefined;
    return failed(path, sha256, error, job);
  } finally {
    await recording?.close?.();
    await source?.close();
  }
}

/** Errors that say "this is something else", in a folder where other things may lie too. */
const OTHER_CONTENT = ['unknown-format', 'not-a-table', 'results-table'];

function isNoRecording(error: unknown): boolean {
  return isArcError(error) && OTHER_CONTENT.includes(error.code);
}

function failed(path: string, sha256: string | null, error: unknown, job: Job): Result {
  return failedResult({ path, sha256, host: HOST, settings: settingsRecord(job.settings), error });
}
