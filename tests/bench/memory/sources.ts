import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { createWriteStream } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { openSource } from '../../../src/apps/watch/open-source.js';
import { readWatchOptions, type WatchOptions } from '../../../src/apps/watch/options.js';
import { onceSource, reconnecting } from '../../../src/apps/watch/sources/connect.js';
import { growingBytes } from '../../../src/apps/watch/sources/follow.js';
import { microphoneBytes } from '../../../src/apps/watch/sources/microphone.js';
import type { LiveSource } from '../../../src/apps/watch/sources/types.js';
import { rowSignal, type Signal, soundSignal } from './signals.js';

/** A source that gives `hours` of signal as fast as it is read. */
export interface Opened {
  source: LiveSource;
  options: WatchOptions;
  close(): Promise<void> | void;
}

export type Open = (hours: number, folder: string) => Promise<Opened>;

const rows = rowSignal();
const wav = soundSignal(true);
const bare = soundSignal(false);
const BARE = { format: 's16le', sampleRate: '44100' };
const nothing = (): void => {};

const pipe =
  (signal: Signal, raw: Record<string, unknown>): Open =>
  async (hours) => {
    const options = await readWatchOptions(raw);
    const stream = Readable.from(signal.bytes(hours));
    return { source: onceSource('stdin', () => stream, options.reading), options, close: nothing };
  };

/** A server on this machine that sends rows and then closes. */
const tcp: Open = async (hours) => {
  const server = createServer((socket) => {
    socket.on('error', nothing);
    void pipeline(Readable.from(rows.bytes(hours)), socket).catch(nothing);
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as { port: number };
  const options = await readWatchOptions({});
  const source = await openSource(`tcp://127.0.0.1:${port}`, options, {});
  return { source, options, close: () => void server.close() };
};

/** A pair of pseudo-terminals stands for the wire. */
const serial: Open = async (hours) => {
  const script =
    'import os, pty, sys, tty; m, s = pty.openpty(); tty.setraw(s); print(os.ttyname(s), flush=True)\n' +
    'while True:\n' +
    '  piece = sys.stdin.buffer.read(4096)\n' +
    '  if not piece: break\n' +
    '  while piece: piece = piece[os.write(m, piece):]\n';
  const wire = spawn('python3', ['-c', script]);
  wire.stdin.on('error', nothing);
  const [name] = (await once(wire.stdout, 'data')) as [Buffer];
  const options = await readWatchOptions({});
  const source = await openSource(`serial:${name.toString().trim()}`, options, {});
  void pipeline(Readable.from(rows.bytes(hours)), wire.stdin).catch(nothing);
  return { source, options, close: () => void wire.kill() };
};

/** A file that is written while it is read. */
const follow: Open = async (hours, folder) => {
  const path = join(folder, 'grows.csv');
  const options = await readWatchOptions({ follow: true, endAfter: '2' });
  const writer = createWriteStream(path);
  await once(writer, 'open');
  void pipeline(Readable.from(rows.bytes(hours)), writer);
  const read = (signal: AbortSignal) => growingBytes(path, 2, signal);
  return { source: onceSource(path, read, options.reading), options, close: nothing };
};

const replay: Open = async (hours, folder) => {
  const path = join(folder, 'played.wav');
  await pipeline(Readable.from(wav.bytes(hours)), createWriteStream(path));
  const options = await readWatchOptions({ speed: 'max' });
  const source = await openSource(path, options, { speed: 'max' });
  return { source, options, close: nothing };
};

/** Another process stands for the recorder of the platform: the bytes of an endless file. */
const microphone: Open = async (hours, folder) => {
  const path = join(folder, 'heard.raw');
  await pipeline(Readable.from(bare.bytes(hours)), createWriteStream(path));
  const recorder = { program: 'cat', record: () => [path], list: [], names: () => [] };
  const options = await readWatchOptions(BARE);
  const source = reconnecting(
    'mic:bench',
    (signal, losses) => microphoneBytes('bench', 44_100, losses, signal, recorder),
    { reading: options.reading, rows: false },
  );
  return { source, options, close: nothing };
};

/** Every way in that `watch` has, by its name. */
export const SOURCES: Record<string, Open> = {
  'stdin-wav': pipe(wav, {}),
  'stdin-bare': pipe(bare, BARE),
  'stdin-rows': pipe(rows, {}),
  tcp,
  ...(spawnSync('python3', ['-c', 'import pty']).status === 0 ? { serial } : {}),
  follow,
  replay,
  microphone,
};
