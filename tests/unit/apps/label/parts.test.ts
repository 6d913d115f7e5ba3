import { utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { defaultSettings } from '../../../../src/analysis/index.js';
import { cutParts } from '../../../../src/apps/label/clip-cut.js';
import { fileHash, fileKey } from '../../../../src/apps/label/file-key.js';
import { labelInputs } from '../../../../src/apps/label/inputs.js';
import { readLabelOptions } from '../../../../src/apps/label/label-options.js';
import { createLabelProgress, progressText } from '../../../../src/apps/label/label-progress.js';
import { OwnFiles } from '../../../../src/apps/label/own-files.js';
import { planFingerprint } from '../../../../src/apps/label/plan.js';
import { isReusable } from '../../../../src/apps/label/reuse.js';
import { parseShard, shardOf } from '../../../../src/apps/label/shard.js';
import { listedInputs } from '../../../../src/apps/label/stdin-list.js';
import { trackName } from '../../../../src/apps/label/tracks.js';
import { bufferSource, openRecording } from '../../../../src/recording/index.js';
import { scratch } from '../../../support/scratch.js';

describe('shards', () => {
  it('put behind one another are the whole, whatever their number', () => {
    const all = Array.from({ length: 23 }, (_, i) => i);
    for (const parts of [1, 2, 7, 23, 40]) {
      const joined = Array.from({ length: parts }, (_, i) => shardOf(all, { part: i + 1, parts }));
      expect(joined.flat()).toEqual(all);
      const sizes = joined.map((one) => one.length);
      expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
    }
  });

  it.each(['0/3', '4/3', '1', '1/0', 'a/b', '-1/2', '1.5/2'])('refuses %s', (given) => {
    expect(() => parseShard(given)).toThrow(expect.objectContaining({ code: 'bad-shard' }));
  });
});

describe('labelInputs', () => {
  it('expands patterns and folders in order of name, each file once, without its own files', async () => {
    const folder = scratch({
      'b.wav': '',
      'a.wav': '',
      'sub/c.wav': '',
      'sub/[x].wav': '',
      't.csv': '',
    });
    const at = (name: string): string => join(folder, name);
    const names = async (given: string[], own: string[] = []) => {
      const [out] = own.map(at);
      const { inputs, twice } = await labelInputs(given.map(at), new OwnFiles({ out }));
      return [inputs.map((one) => one.path.slice(folder.length + 1)), twice];
    };
    expect(await names(['**/*.wav'])).toEqual([['a.wav', 'b.wav', 'sub/[x].wav', 'sub/c.wav'], 0]);
    expect(await names(['b.wav', '.', 'sub'], ['t.csv'])).toEqual([
      ['b.wav', 'a.wav', 'sub/[x].wav', 'sub/c.wav'],
      3,
    ]);
    // A name that looks like a pattern and is there is that file.
    expect(await names(['sub/[x].wav'])).toEqual([['sub/[x].wav'], 0]);
    // What is not there keeps its place, so that it gets a row.
    expect(await names(['gone.wav', 'a.wav'])).toEqual([['gone.wav', 'a.wav'], 0]);
    await expect(names(['*.flac'])).rejects.toMatchObject({ code: 'no-match' });
  });
});

describe('listedInputs', () => {
  const read = async (text: string) => {
    const all = [];
    for await (const one of listedInputs(Readable.from([text]))) all.push(one);
    return all;
  };

  it('reads paths, JSON strings and objects with set-up keys', async () => {
    expect(
      await read('a b.wav\r\n\n"c\\td.wav"\n{"file":"e.wav","gas":"C1","setVoltage":22,"x":null}'),
    ).toEqual([
      { path: 'a b.wav', setup: {} },
      { path: 'c\td.wav', setup: {} },
      { path: 'e.wav', setup: { gas: 'C1', setVoltage: 22 } },
    ]);
  });

  it.each(['{"gas":"C1"}', '{"file":"a.wav"', '{"file":3}', '{"file":"a","gas":["C1"]}', '""'])(
    'refuses %s',
    async (line) => {
      await expect(read(line)).rejects.toMatchObject({ code: 'bad-list-line' });
    },
  );
});

describe('stillHolds', () => {
  const plan = { settings: defaultSettings(), reading: {}, windows: false };
  const task = (path: string) => ({ path, origin: 'named' as const, setup: {}, fingerprint: 'f' });
  const remembered = async (path: string, changes: object = {}) => ({
    place: { offset: 0, length: 0 },
    fingerprint: 'f',
    key: await fileKey(path),
    sha256: await fileHash(path),
    status: 'ok',
    errorCode: null,
    hasWindows: false,
    ...changes,
  });

  it('holds for an unchanged file and for one that was only touched', async () => {
    const path = join(scratch({ a: 'one' }), 'a');
    const earlier = await remembered(path);
    expect(await isReusable(earlier, task(path), plan)).toBe(true);
    utimesSync(path, 1, 1);
    expect(await isReusable(earlier, task(path), plan)).toBe(true);
  });

  it('sees a change that keeps size and time of modification', async () => {
    // Rejects one that trusts size and modification time alone.
    const path = join(scratch({ a: 'one' }), 'a');
    utimesSync(path, 1000, 1000);
    const earlier = await remembered(path);
    writeFileSync(path, 'two');
    utimesSync(path, 1000, 1000);
    expect(await isReusable(earlier, task(path), plan)).toBe(false);
  });

  it.each([
    ['other settings', { fingerprint: 'g' }],
    ['a failure that may pass', { status: 'failed', errorCode: 'no-permission' }],
    ['an unread file', { key: null }],
    ['a file that was passed over in a folder and is now named', { status: 'skipped' }],
  ])('does not hold for %s', async (_, changes) => {
    const path = join(scratch({ a: 'one' }), 'a');
    expect(await isReusable(await remembered(path, changes), task(path), plan)).toBe(false);
  });

  it('needs the windows where they are wanted', async () => {
    const path = join(scratch({ a: 'one' }), 'a');
    const wanted = { ...plan, windows: true };
    expect(await isReusable(await remembered(path), task(path), wanted)).toBe(false);
    const with_ = await remembered(path, { hasWindows: true });
    expect(await isReusable(with_, task(path), wanted)).toBe(true);
  });

  it('names a plan by everything but the kind of table', () => {
    const print = (changes: object, setup = {}, models = 'm') =>
      planFingerprint({ ...plan, ...changes }, setup, models);
    expect(print({ windows: true })).toBe(print({}));
    const others = [
      print({ settings: { ...defaultSettings(), mixedShare: 0.8 } }),
      print({ reading: { sampleRateHz: 1 } }),
      print({}, { gas: 'C1' }),
      print({}, {}, 'n'),
    ];
    expect(new Set([print({}), ...others]).size).toBe(5);
  });
});

describe('readLabelOptions', () => {
  it.each([
    [{}],
    [{ out: 'table' }],
    [{ out: 't.xlsx' }],
    [{ format: 'parquet' }],
    [{ out: 't.csv', rows: 'runz' }],
    [{ out: 't.parquet', csvFor: 'excel' }],
    [{ out: 't.csv', resume: true, overwrite: true }],
    [{ out: 't.csv', workers: '0' }],
    [{ out: 't.csv', workers: 'two' }],
    [{ out: 't.csv', shard: '3/2' }],
    [{ format: 'ndjson', clips: 'c' }],
  ])('refuses %j', async (given) => {
    await expect(readLabelOptions(given)).rejects.toMatchObject({ name: 'ArcError' });
  });

  it('takes the format from the ending, and a stated one over it', async () => {
    expect((await readLabelOptions({ out: 'a.JSONL' })).format).toBe('ndjson');
    expect((await readLabelOptions({ out: 'a.txt', format: 'tsv' })).format).toBe('tsv');
    expect((await readLabelOptions({ out: 'a.csv', csvFor: 'excel' })).format).toBe('excel');
  });
});

describe('progress', () => {
  it('counts the rate of this run only, and says what is left', () => {
    // Hand calculation: 50 labelled in 10 s are 5 a second; 300 left take 60 s.
    const text = progressText({ done: 100, failed: 2, fresh: 50 }, 400, 10);
    expect(text).toBe('100 of 400 done, 2 failed, 5.00 a second, 60 s left');
  });

  it('writes plain lines every ten seconds where there is no terminal', () => {
    let nowMs = 0;
    const said: string[] = [];
    const stream = { isTTY: false, write: (text: string) => said.push(text) };
    const progress = createLabelProgress({ total: 100, stream, now: () => nowMs });
    for (; nowMs < 25_000; nowMs += 1000) progress.count('ok', true);
    progress.clear();
    expect(said).toHaveLength(2);
    for (const mark of ['\r', '\u001b']) expect(said.join('')).not.toContain(mark);
  });
});

describe('cutParts', () => {
  it('cuts the samples of each stretch across blocks, and what there is of one beyond the end', async () => {
    const blocks = async function* () {
      for (let start = 0; start < 100; start += 30) {
        const length = Math.min(30, 100 - start);
        yield {
          startSample: start,
          channels: [Float64Array.from({ length }, (_, i) => (start + i) / 128)],
        };
      }
    };
    const recording = {
      kind: 'sound' as const,
      format: 'invented',
      sampleRateHz: 10,
      channels: [{ name: 'channel 1', quantity: 'sound' as const, unit: 'full-scale' as const }],
      notes: [],
      blocks,
    };
    const wavs = await cutParts(recording, [
      { startS: 2.5, endS: 6.5 },
      { startS: 9, endS: 12 },
      { startS: 11, endS: 12 },
    ]);
    expect(wavs[2]).toBeUndefined();
    const samples = async (wav: Uint8Array): Promise<number[]> => {
      const all: number[] = [];
      for await (const block of (await openRecording(bufferSource(wav, 'clip'))).blocks())
        all.push(...(block.channels[0] ?? []));
      return all;
    };
    // Rates below what readers take are raised for this check only: the data chunk is what counts.
    const raise = (wav: Uint8Array): Uint8Array => {
      const copy = wav.slice();
      new DataView(copy.buffer).setUint32(24, 8000, true);
      return copy;
    };
    expect(await samples(raise(wavs[0]!))).toEqual(
      Array.from({ length: 40 }, (_, i) => (25 + i) / 128),
    );
    expect(await samples(raise(wavs[1]!))).toEqual(
      Array.from({ length: 10 }, (_, i) => (90 + i) / 128),
    );
  });
});

describe('trackName', () => {
  it('keeps equal names in different folders apart', () => {
    expect(trackName('./a/x.wav')).toBe('a__x.wav.tsv');
    expect(trackName('../b/x.wav')).toBe('b__x.wav.tsv');
  });
});
