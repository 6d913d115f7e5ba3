import { spawn } from 'node:child_process';
import { ArcError } from '../../../core/index.js';
import { findRecorder, type Recorder } from './recorders.js';
import type { Losses } from './types.js';
import { onAbort } from './until-aborted.js';

/** What recorders write when they were not read in time. */
const OVERRUN = /overrun|xrun|buffer (queue )?overflow|real-time buffer/i;

/**
 * The bytes of a microphone by its name, 16 bits and one channel, from the platform's own recorder. Overruns
 * that the recorder tells of are counted as gaps.
 *
 * @throws ArcError `no-recorder`, `recorder-failed`
 */
export async function* microphoneBytes(
  name: string,
  rateHz: number,
  losses: Losses,
  signal: AbortSignal,
  recorder?: Recorder,
): AsyncGenerator<Uint8Array> {
  const tool = recorder ?? (await findRecorder());
  const child = spawn(tool.program, tool.record(name, rateHz), {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const release = onAbort(signal, () => child.kill());
  let said = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    if (OVERRUN.test(text)) losses.gaps++;
    said = (said + text).slice(-400);
  });
  const ended = new Promise<string>((resolve) => {
    child.on('error', (error) => resolve(error.message));
    child.on('close', (code) => resolve(`it ended with status ${code}`));
  });
  try {
    yield* child.stdout;
    const how = await ended;
    throw new ArcError({
      code: 'recorder-failed',
      what: `${tool.program} does not record from "${name}": ${how}. ${said.trim()}`,
      expected: 'a microphone that the system can open',
      todo: 'arc-transfer watch --list shows the names.',
    });
  } finally {
    release();
    child.kill();
  }
}
