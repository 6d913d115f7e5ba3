import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { bufferSource } from '../../src/recording/sources/buffer.js';
import type { ByteSource } from '../../src/recording/types.js';
import { errorOf } from '../unit/recording/logs/read-log.js';
import { fixture, RATE_HZ, readLog } from './log-files.js';

/*
 * Files that claim more than they hold, or unpack to far more than they weigh. Each must end soon, in
 * samples or one clear error, without taking memory for the claim. Sizes are made up by hand.
 */

const OPTIONS = { sampleRateHz: RATE_HZ, channelMap: { voltage: 1, time: 'none' } };

/** An `.npy` file (format 1.0) of little-endian float64 with the given shape text. */
function npy(shape: string, dataBytes: number): Uint8Array {
  const dict = `{'descr': '<f8', 'fortran_order': False, 'shape': (${shape}), }`;
  const header = dict.padEnd(117, ' ');
  const bytes = new Uint8Array(10 + header.length + 1 + dataBytes);
  bytes.set([0x93, 0x4e, 0x55, 0x4d, 0x50, 0x59, 1, 0, header.length + 1, 0]);
  bytes.set(new TextEncoder().encode(`${header}\n`), 10);
  return bytes;
}

describe('claims without substance', () => {
  it.each([
    ['npy: a trillion values', npy('1000000000000,', 4096), 'damaged-file'],
    ['npy: more than numbers can count', npy('99999999999999999999999,', 64), 'no-series'],
    ['npy: a picture', npy('500, 500', 500 * 500 * 8), 'no-series'],
    ['npz: a trillion values', zipSync({ 'u.npy': npy('1000000000000,', 4096) }), 'damaged-file'],
  ])('%s', async (_, bytes, code) => {
    expect((await errorOf(readLog(bytes, OPTIONS))).code).toBe(code);
  });

  it('npy: a header of 4 GB', async () => {
    const bytes = npy('4,', 32);
    bytes.set([0x93, 0x4e, 0x55, 0x4d, 0x50, 0x59, 2, 0, 0xff, 0xff, 0xff, 0xff]);
    expect((await errorOf(readLog(bytes, OPTIONS))).code).toBe('damaged-file');
  });

  it('mat: a variable of 4 GB in a file of 10 kB', async () => {
    const bytes = fixture('v5-plain.mat');
    bytes.set([0xff, 0xff, 0xff, 0xff], 132);
    expect((await errorOf(readLog(bytes, OPTIONS))).code).toBe('damaged-file');
  });

  // Rejects a reader that unpacks the entry before it reads it: 16 MB come out of some 100 kB.
  it('npz: a thousandfold packed entry is read in pieces', async () => {
    const values = 2_000_000;
    const bytes = zipSync({ 'voltage.npy': npy(`${values},`, values * 8) }, { level: 1 });
    expect(bytes.length).toBeLessThan(500_000);
    const source = bufferSource(bytes, 'bomb.npz');
    const { LOG_READERS } = await import('../../src/recording/logs/index.js');
    const reader = LOG_READERS.find(({ format }) => format === 'npz');
    const recording = await reader?.open(source, OPTIONS, { decoders: [] });
    let samples = 0;
    setFlagsFromString('--expose-gc');
    const collect = runInNewContext('gc') as () => void;
    const held = (): number => {
      collect();
      return process.memoryUsage().arrayBuffers;
    };
    const during: number[] = [];
    for await (const block of recording?.blocks() ?? []) {
      samples += block.channels[0]?.length ?? 0;
      if (samples % 5 === 0) during.push(held());
    }
    // A step of unpacking holds more for a moment; the usual state is what counts.
    const usual = during.sort((a, b) => a - b)[Math.floor(during.length / 2)] as number;
    expect(samples).toBe(values);
    expect(usual - held()).toBeLessThan((values * 8) / 2);
  });
});

describe('text without end', () => {
  /** Endless bytes, made on demand. */
  const endless = (byte: number, size: number): ByteSource => ({
    name: 'endless.csv',
    size,
    read: async (offset, length) => new Uint8Array(Math.min(length, size - offset)).fill(byte),
  });

  it('4 GB without a line end, or of nothing but line ends, end at once', async () => {
    expect((await errorOf(readLog(endless(0x31, 4e9), OPTIONS))).code).toMatch(
      /line-too-long|not-a-table/,
    );
    expect((await errorOf(readLog(endless(0x0a, 4e9), OPTIONS))).code).toBe('not-a-table');
  });

  it('a table whose last line never ends', async () => {
    const head = new TextEncoder().encode('U\n20\n21\n22\n');
    const size = 4e9;
    const source: ByteSource = {
      name: 'endless.csv',
      size,
      read: async (offset, length) => {
        const bytes = new Uint8Array(Math.min(length, size - offset)).fill(0x37);
        if (offset < head.length) bytes.set(head.subarray(offset, offset + bytes.length));
        return bytes;
      },
    };
    expect((await errorOf(readLog(source, OPTIONS))).code).toBe('line-too-long');
  });
});
