import { ArcError } from '../../core/index.js';
import { parseRawFormat } from '../../recording/index.js';
import type { WatchOptions } from './options.js';
import { onceSource, reconnecting } from './sources/connect.js';
import { growingBytes } from './sources/follow.js';
import { microphoneBytes } from './sources/microphone.js';
import { replaySource } from './sources/replay.js';
import { serialBytes } from './sources/serial.js';
import { parseAddress, tcpBytes } from './sources/tcp.js';
import type { LiveSource } from './sources/types.js';

const MIC_RATE_HZ = 48_000;

/**
 * `-` stdin, `mic:<name>`, `tcp://host:port`, `serial:<device>`, or a file: replayed, or with `--follow` read as
 * it grows.
 *
 * @throws ArcError `bad-address`, and `useless-option` for an option that this source cannot have.
 */
export async function openSource(
  given: string,
  options: WatchOptions,
  raw: Readonly<Record<string, unknown>>,
): Promise<LiveSource> {
  const { reading, baud, endAfterS } = options;
  const file = !/^(-$|mic:|tcp:|serial:)/.test(given);
  refuseUseless(given, file, options.follow, raw);
  if (given === '-') return onceSource('stdin', () => process.stdin, reading);
  if (given.startsWith('tcp:')) {
    parseAddress(given);
    return reconnecting(given, (signal) => tcpBytes(given, signal), { reading, rows: true });
  }
  if (given.startsWith('serial:')) {
    const device = given.slice('serial:'.length);
    return reconnecting(given, (signal) => serialBytes(device, baud, signal), {
      reading,
      rows: true,
    });
  }
  if (given.startsWith('mic:')) return microphone(given, reading);
  if (!options.follow) return replaySource(given, options.speed, reading);
  if (Number.isFinite(endAfterS))
    return onceSource(given, (signal) => growingBytes(given, endAfterS, signal), reading);
  return reconnecting(given, (signal) => growingBytes(given, endAfterS, signal), {
    reading,
    rows: false,
  });
}

function microphone(given: string, reading: WatchOptions['reading']): LiveSource {
  const rateHz = reading.sampleRateHz ?? MIC_RATE_HZ;
  const stated = { ...reading, sampleRateHz: rateHz, raw: parseRawFormat('s16le') };
  const name = given.slice('mic:'.length);
  return reconnecting(given, (signal, losses) => microphoneBytes(name, rateHz, losses, signal), {
    reading: stated,
    rows: false,
  });
}

function refuseUseless(
  given: string,
  file: boolean,
  follow: boolean,
  raw: Readonly<Record<string, unknown>>,
): void {
  const useless = [
    ['speed', !file || follow, 'a file that is replayed'],
    ['follow', !file, 'a file'],
    ['endAfter', !follow, 'a file with --follow'],
    ['baud', !given.startsWith('serial:'), 'serial:<device>'],
  ] as const;
  for (const [key, wrong, expected] of useless) {
    if (!wrong || raw[key] === undefined) continue;
    const flag = key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
    throw new ArcError({
      code: 'useless-option',
      what: `--${flag} has no meaning for ${given}.`,
      expected,
      todo: 'Leave it out.',
    });
  }
}
