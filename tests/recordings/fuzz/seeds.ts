import { execFileSync } from 'node:child_process';
import { parseRawFormat, type ReadOptions } from '../../../src/recording/index.js';
import { CURRENT, fixture, TIME, VOLTAGE } from '../log-files.js';
import { csvOf, hdf5Of, parquetOf } from '../log-writers.js';
import { HAS_FFMPEG, HAS_SOX, type MediaFolder } from '../media.js';

/** A valid file to spoil. */
export interface Seed {
  name: string;
  /** False where the program that makes it is missing. */
  available: boolean;
  bytes(media: MediaFolder): Promise<Uint8Array> | Uint8Array;
  options?: ReadOptions;
}

const PICTURES = ['-f', 'lavfi', '-i', 'testsrc=s=32x32:r=5', '-shortest', '-c:v', 'mpeg4'];
const FRAGMENTS = ['-c:a', 'aac', '-movflags', 'frag_keyframe+empty_moov'];
const AMR = 'fuzz.amr';

const ENCODED: [file: string, ...options: string[]][] = [
  ['plain.wav'],
  ['float.wav', '-c:a', 'pcm_f32le'],
  ['ima.wav', '-c:a', 'adpcm_ima_wav'],
  ['alaw.wav', '-c:a', 'pcm_alaw'],
  ['plain.aiff'],
  ['plain.caf', '-c:a', 'pcm_s16le'],
  ['alaw.caf', '-c:a', 'pcm_alaw'],
  ['aac.m4a', '-c:a', 'aac', '-movflags', '+faststart'],
  ['alac.m4a', '-c:a', 'alac'],
  ['film.mp4', ...PICTURES, '-c:a', 'aac'],
  ['parts.mp4', ...FRAGMENTS],
  ['pcm.mov', '-c:a', 'pcm_s16be'],
  ['bare.aac', '-c:a', 'aac'],
  ['plain.mp3', '-c:a', 'libmp3lame'],
  ['vorbis.ogg', '-c:a', 'libvorbis'],
  ['opus.ogg', '-c:a', 'libopus'],
  ['opus.webm', '-c:a', 'libopus'],
  ['pcm.mkv', '-c:a', 'pcm_s16le'],
  ['plain.flac', '-c:a', 'flac'],
];

const encoded: Seed[] = ENCODED.map(([file, ...options]) => ({
  name: file,
  available: HAS_FFMPEG,
  bytes(media) {
    media.encode(file, ...options);
    return media.bytes(file);
  },
}));

function amr(media: MediaFolder): string {
  const path = media.path(AMR);
  execFileSync('sox', [media.path('source.wav'), '-r', '8000', '-t', 'amr-nb', path]);
  return path;
}

const phones: Seed[] = [
  {
    name: 'phone.amr',
    available: HAS_SOX,
    bytes(media) {
      amr(media);
      return media.bytes(AMR);
    },
  },
  {
    name: 'phone.3gp',
    available: HAS_SOX && HAS_FFMPEG,
    bytes(media) {
      const to = media.path('phone.3gp');
      execFileSync('ffmpeg', ['-v', 'error', '-y', '-i', amr(media), '-c', 'copy', to]);
      return media.bytes('phone.3gp');
    },
  },
];

/** So that damage to names and rates does not end every case before a sample is read. */
const STATED: ReadOptions = { sampleRateHz: 10_000, channelMap: { time: 'none', voltage: 1 } };
const columns = {
  time: Float64Array.from(TIME),
  voltage: Float64Array.from(VOLTAGE),
  current: Float64Array.from(CURRENT),
};
const made: Record<string, () => Uint8Array | Promise<Uint8Array>> = {
  'trace.csv': () => csvOf(columns),
  'trace.parquet': () => parquetOf(columns),
  'float.parquet': () => parquetOf(columns, 'FLOAT', 10_000),
  'trace.h5': () => hdf5Of(columns),
  'packed.h5': () => hdf5Of(columns, false, true),
  'v73.mat': () => hdf5Of(columns, true),
};
const FIXTURES = ['v5-compressed.mat', 'v5-plain.mat', 'v5-struct.mat'].concat([
  'table.npy',
  'structured.npy',
  'stored.npz',
  'deflated.npz',
]);

function log(name: string, bytes: () => Uint8Array | Promise<Uint8Array>): Seed[] {
  const plain = { name, available: true, bytes };
  return [plain, { ...plain, name: `${name}, stated`, options: STATED }];
}

/** Every kind of file that is read. */
export const SEEDS: readonly Seed[] = [
  ...encoded,
  ...phones,
  ...Object.entries(made).flatMap(([name, bytes]) => log(name, bytes)),
  ...FIXTURES.flatMap((name) => log(name, () => fixture(name))),
  { ...log('half.npy, stated', () => fixture('half.npy'))[0]!, options: STATED },
  {
    ...log('v5-matrix.mat, mapped', () => fixture('v5-matrix.mat'))[0]!,
    options: { channelMap: { voltage: 'log[1]', current: 'log[2]' } },
  },
  {
    name: 'bare samples',
    available: true,
    bytes: () => new Uint8Array(columns.voltage.buffer),
    options: { raw: parseRawFormat('f64le:2'), sampleRateHz: 10_000 },
  },
];
