import type { Result } from '../../../analysis/result/index.js';
import { ArcError } from '../../../core/index.js';
import { hash } from '../../../files/hash.js';
import type { ReadOptions, Recording } from '../../../recording/index.js';
import type { Input, LostInput } from '../inputs.js';
import type { Engine } from './engine.js';

/** The trace given with `--with-trace`, and what was stated about it. */
export interface Beside {
  path: string;
  reading: ReadOptions;
  sharedClock: boolean;
}

/**
 * `--with-trace` and `--shared-clock`. What is stated about reading then holds for the trace, `--channel
 * sound=…` for the sound.
 * @throws ArcError `shared-clock-alone`, `with-trace-inputs` for anything but one file beside it
 */
export function readBeside(
  options: Readonly<Record<string, unknown>>,
  reading: ReadOptions,
  inputs: readonly (Input | LostInput)[],
): { beside?: Beside; reading: ReadOptions } {
  const path = options['withTrace'];
  const sharedClock = options['sharedClock'] === true;
  if (typeof path !== 'string') {
    if (sharedClock) throw clockAlone();
    return { reading };
  }
  if (inputs.length !== 1 || inputs[0]!.origin === 'folder') throw notOne(inputs.length);
  const { sound, ...ofTrace } = reading.channelMap ?? {};
  return {
    beside: { path, reading: { ...reading, channelMap: ofTrace }, sharedClock },
    reading: sound === undefined ? {} : { channelMap: { sound } },
  };
}

/** Opens the trace, judges both, and closes it. */
export async function analyseBeside(
  sound: Recording,
  engine: Engine,
  options: Parameters<Engine['analyse']>[1],
  { path, reading, sharedClock }: Beside,
): Promise<Result> {
  const source = await engine.openSource(path);
  let trace: Recording | undefined;
  try {
    trace = await engine.openRecording(source, reading);
    const sha256 = await hash(source);
    return await engine.analyseBoth!(sound, trace, {
      ...options,
      trace: { path, sha256 },
      sharedClock,
    });
  } finally {
    await trace?.close?.();
    await source.close();
  }
}

function clockAlone(): ArcError {
  return new ArcError({
    code: 'shared-clock-alone',
    what: '--shared-clock was given without --with-trace.',
    expected: 'both, for a sound and a trace of one run',
    todo: 'Add --with-trace <file>, or leave --shared-clock out.',
  });
}

function notOne(count: number): ArcError {
  return new ArcError({
    code: 'with-trace-inputs',
    what: `--with-trace was given beside ${count === 1 ? 'a folder' : `${count} inputs`}.`,
    expected: 'one sound recording beside it',
    todo: 'Name the one sound of the same run, such as: classify run.wav --with-trace run.csv',
  });
}
