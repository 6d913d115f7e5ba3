import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { appendFile, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { byteItems } from '../../../../src/apps/watch/sources/byte-items.js';
import { reconnecting } from '../../../../src/apps/watch/sources/connect.js';
import { growingBytes } from '../../../../src/apps/watch/sources/follow.js';
import { microphoneBytes } from '../../../../src/apps/watch/sources/microphone.js';
import { recordersFor } from '../../../../src/apps/watch/sources/recorders.js';
import { serialBytes } from '../../../../src/apps/watch/sources/serial.js';
import { parseAddress, tcpBytes } from '../../../../src/apps/watch/sources/tcp.js';
import { type LiveItem, noLosses } from '../../../../src/apps/watch/sources/types.js';
import { untilAborted } from '../../../../src/apps/watch/sources/until-aborted.js';
import { writeWav } from '../../../../src/recording/index.js';

/** A sine of 1 kHz at 8 kHz, one second. */
const SINE = Float64Array.from({ length: 8000 }, (_, i) => 0.5 * Math.sin((Math.PI * i) / 4));

/** No abort. */
const NEVER = new AbortController().signal;

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'arc-watch-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

async function* pieces(bytes: Uint8Array, size: number): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.slice(at, at + size);
}

async function gather(
  items: AsyncIterable<LiveItem>,
): Promise<{ kinds: string[]; samples: number[] }> {
  const kinds: string[] = [];
  const samples: number[] = [];
  for await (const item of items) {
    if (item.type === 'samples') samples.push(...item.channels[0]!);
    else kinds.push(item.type);
  }
  return { kinds, samples };
}

const wav = async (): Promise<Uint8Array<ArrayBuffer>> =>
  new Uint8Array(await writeWav([SINE], 8000));

describe('WAV from a pipe', () => {
  // The sizes that recorders write to a pipe: none, all ones, and the largest they can. Sizes from memory of
  // common recorders. Rejects a reader that believes them and ends at once, or waits for what never comes.
  it.each([0, 0xffffffff, 0x7fffffdc])('reads on with a stated size of %i', async (size) => {
    const bytes = await wav();
    new DataView(bytes.buffer).setUint32(40, size, true);
    const { samples } = await gather(byteItems('pipe', pieces(bytes, 777), {}, noLosses()));
    expect(samples).toHaveLength(8000);
    expect(samples[2]).toBeCloseTo(0.5, 3);
  });

  it('ends where a true size ends, before chunks that follow', async () => {
    const tail = new TextEncoder().encode('LIST\x04\0\0\0INFO');
    const bytes = new Uint8Array([...(await wav()), ...tail]);
    const { samples } = await gather(byteItems('pipe', pieces(bytes, 1000), {}, noLosses()));
    expect(samples).toHaveLength(8000);
  });

  it('counts the bytes of an unfinished sample', async () => {
    const losses = noLosses();
    const bytes = await wav();
    new DataView(bytes.buffer).setUint32(40, 0xffffffff, true);
    const cut = bytes.slice(0, -1);
    const { samples } = await gather(byteItems('pipe', pieces(cut, 999), {}, losses));
    expect(samples).toHaveLength(7999);
    expect(losses.looseBytes).toBe(1);
  });

  it('refuses what is neither WAV nor rows', async () => {
    const bytes = Uint8Array.from({ length: 100 }, (_, i) => i);
    await expect(
      gather(byteItems('pipe', pieces(bytes, 50), {}, noLosses())),
    ).rejects.toMatchObject({
      code: 'not-live',
    });
  });
});

describe('a growing file', () => {
  it('is read as it grows, and ends after the idle time', async () => {
    const path = join(folder, 'log.csv');
    await writeFile(path, 'one');
    const got: string[] = [];
    setTimeout(() => void appendFile(path, 'two'), 150);
    for await (const chunk of growingBytes(path, 0.6, new AbortController().signal))
      got.push(Buffer.from(chunk).toString());
    expect(got).toEqual(['one', 'two']);
  });
});

describe('a logger on the network', () => {
  let server: Server | undefined;
  afterEach(() => void server?.close());

  // Rejects a client that gives up, one that joins what does not join, and one that hides the loss.
  it('is connected again after it was lost, with a gap that is counted', async () => {
    let visits = 0;
    server = createServer((socket) => {
      visits++;
      const from = visits === 1 ? 0 : 2000;
      const rows = Array.from({ length: 500 }, (_, i) => `${(from + i) / 1000},25,180\n`);
      socket.end(rows.join(''));
    });
    await new Promise<void>((resolve) => server!.listen(0, '127.0.0.1', resolve));
    const { port } = server.address() as { port: number };
    const address = `tcp://127.0.0.1:${port}`;
    const source = reconnecting(address, (signal) => tcpBytes(address, signal), {
      reading: {},
      rows: true,
    });
    const abort = new AbortController();
    const kinds: string[] = [];
    let samples = 0;
    for await (const item of source.items(abort.signal)) {
      if (item.type === 'samples') samples += item.channels[0]!.length;
      else kinds.push(item.type);
      if (samples >= 1000) abort.abort();
    }
    expect(samples).toBe(1000);
    expect(kinds.slice(0, 2)).toEqual(['format', 'gap']);
    expect(source.losses.reconnects).toBe(1);
    expect(source.losses.lostSamples).toBe(1500);
  });

  it('fails at once where nobody listens from the start', async () => {
    const source = reconnecting('x', (signal) => tcpBytes('tcp://127.0.0.1:9', signal), {
      reading: {},
      rows: true,
    });
    await expect(gather(source.items(new AbortController().signal))).rejects.toMatchObject({
      code: 'cannot-connect',
    });
  });

  it.each(['tcp://host', 'tcp://host:0', 'tcp://:5', 'tcp://host:99999'])(
    'refuses %s',
    (address) => {
      expect(() => parseAddress(address)).toThrow(expect.objectContaining({ code: 'bad-address' }));
    },
  );
});

describe('a serial line', () => {
  const python = spawnSync('python3', ['-c', 'import pty']).status === 0;

  // A pair of pseudo-terminals stands for the wire. Rejects a reader that leaves the line in cooked mode,
  // where line ends and control characters are changed.
  it.skipIf(!python)('is set to raw and read', async () => {
    const script = [
      'import os, pty, sys, time',
      'master, slave = pty.openpty()',
      'print(os.ttyname(slave), flush=True)',
      'sys.stdin.readline()',
      'os.write(master, b"0.1,25,180\\r\\n\\x03\\x04")',
      'time.sleep(5)',
    ].join('\n');
    const other = spawn('python3', ['-c', script]);
    try {
      const [name] = (await once(other.stdout, 'data')) as [Buffer];
      const lines = serialBytes(name.toString().trim(), 115_200, NEVER);
      const first = lines.next();
      setTimeout(() => other.stdin.write('go\n'), 400);
      const { value } = await first;
      expect(Buffer.from(value!).toString()).toBe('0.1,25,180\r\n\x03\x04');
    } finally {
      other.kill();
    }
  });

  it.skipIf(!python)('can be given up while it is silent', async () => {
    const script =
      'import os, pty, sys; m, s = pty.openpty(); print(os.ttyname(s), flush=True); sys.stdin.read()';
    const other = spawn('python3', ['-c', script]);
    const [name] = (await once(other.stdout, 'data')) as [Buffer];
    const abort = new AbortController();
    setTimeout(() => abort.abort(), 600);
    // Rejects a read that waits for a byte that never comes.
    const gathered = await serialBytes(name.toString().trim(), 9600, abort.signal)
      .next()
      .catch(() => ({ done: true }));
    other.kill();
    expect(gathered.done).toBe(true);
  });

  it('that is not there is an error at once', async () => {
    await expect(serialBytes('/dev/no-such-line', 9600, NEVER).next()).rejects.toMatchObject({
      code: 'cannot-open-serial',
    });
  });
});

describe('microphones', () => {
  // Answers from memory of the programs' formats; the names are invented.
  const [alsa] = recordersFor('linux');
  const [mac] = recordersFor('darwin');
  const [windows] = recordersFor('win32');

  it('are found in what each recorder lists', () => {
    expect(
      alsa!.names('null\n    Discard\ndefault\n    Default\nplughw:CARD=Desk,DEV=0\n    Desk\n'),
    ).toEqual(['default', 'plughw:CARD=Desk,DEV=0']);
    const video =
      '[AVFoundation indev @ 0x1] AVFoundation video devices:\n[AVFoundation indev @ 0x1] [0] Camera\n';
    const audio =
      '[AVFoundation indev @ 0x1] AVFoundation audio devices:\n[AVFoundation indev @ 0x1] [0] Desk mic\n';
    expect(mac!.names(video + audio)).toEqual(['Desk mic']);
    expect(
      windows!.names('[dshow @ 1] "Camera" (video)\n[dshow @ 1] "Desk mic" (audio)\n'),
    ).toEqual(['Desk mic']);
  });

  const fake = (script: string) => ({
    ...alsa!,
    program: process.execPath,
    record: () => ['-e', script],
  });

  it('give the samples of the recorder and count its overruns', async () => {
    const losses = noLosses();
    const script =
      'process.stderr.write("overrun!!! (at least 5 ms long)\\n");process.stdout.write(Buffer.alloc(4096))';
    let bytes = 0;
    const read = async () => {
      for await (const chunk of microphoneBytes('any', 8000, losses, NEVER, fake(script)))
        bytes += chunk.length;
    };
    await expect(read()).rejects.toMatchObject({ code: 'recorder-failed' });
    expect(bytes).toBe(4096);
    expect(losses.gaps).toBe(1);
  });

  it('say what the recorder said when it fails', async () => {
    const script = 'process.stderr.write("No such device");process.exitCode=1';
    const read = async () => {
      for await (const _ of microphoneBytes('gone', 8000, noLosses(), NEVER, fake(script)));
    };
    await expect(read()).rejects.toThrow(/"gone".*status 1.*No such device/s);
  });
});

describe('a source that is given up', () => {
  // A race of each item against one promise that lives as long as the source kept every item: 0.35 MB for each
  // second of signal.
  it('keeps nothing of what it has handed on', async () => {
    const kept: WeakRef<Uint8Array>[] = [];
    async function* items(): AsyncGenerator<Uint8Array> {
      for (let i = 0; i < 50; i++) {
        const item = new Uint8Array(1000);
        kept.push(new WeakRef(item));
        yield item;
      }
    }
    setFlagsFromString('--expose-gc');
    const collect = runInNewContext('gc') as () => void;
    let alive = 0;
    for await (const _ of untilAborted(items(), new AbortController().signal)) {
      if (kept.length < 50) continue;
      // What a turn of the loop refers to weakly lives until the turn ends.
      await new Promise((resolve) => setTimeout(resolve, 5));
      collect();
      alive = kept.filter((one) => one.deref() !== undefined).length;
    }
    expect(alive).toBeLessThan(5);
  });

  it('closes what is behind it', async () => {
    let closed = false;
    async function* chunks(): AsyncGenerator<Uint8Array> {
      try {
        for (let i = 0; ; i++) yield Buffer.from(`${i / 1000},25,180\n`);
      } finally {
        closed = true;
      }
    }
    for await (const item of byteItems('pipe', chunks(), {}, noLosses()))
      if (item.type === 'samples') break;
    expect(closed).toBe(true);
  });
});
