/** One file that is made, read and compared. */
export interface FormatCase {
  file: string;
  /** `format` of the reader that has to take it. */
  format: string;
  /** What the file is, in words. */
  title: string;
  /** Packages that do the work; ours where it says so. */
  reader: string;
  /** What it is compared with. */
  reference: string;
}

/** A sound file, encoded from one WAV. */
export interface SoundCase extends FormatCase {
  encoder: string[];
  program: 'ffmpeg' | 'sox';
  /** The container states no encoder delay, so the first 2,048 samples (its fade-in) are not compared. */
  delayUnknown?: boolean;
  /** Only so many seconds are compared: after some time the encoder of AMR takes an even sound for a pause. */
  compareS?: number;
}

const FFMPEG = "ffmpeg's decode";
const MEDIABUNNY = 'mediabunny, ';
const AAC_READER = `${MEDIABUNNY}@audio/decode-aac`;
/** Without noise substitution, which the standard lets every decoder fill in its own way. */
const AAC = ['-c:a', 'aac', '-aac_pns', '0', '-b:a', '128k'];
const PICTURES = ['-f', 'lavfi', '-i', 'testsrc=s=64x48:r=25', '-shortest', '-c:v', 'mpeg4'];

function sound(
  file: string,
  format: string,
  title: string,
  reader: string,
  encoder: string[],
  more: Partial<SoundCase> = {},
): SoundCase {
  return { file, format, title, reader, encoder, program: 'ffmpeg', reference: FFMPEG, ...more };
}

/** Every kind of sound file that is read. */
export const SOUND_CASES: readonly SoundCase[] = [
  sound('plain.wav', 'wav', 'WAV, 16 bits', 'own', ['-c:a', 'pcm_s16le']),
  sound('plain.aiff', 'aiff', 'AIFF, 16 bits', 'own', ['-c:a', 'pcm_s16be']),
  sound('deep.caf', 'caf', 'CAF, 24 bits', 'own', ['-c:a', 'pcm_s24le']),
  sound('memo.m4a', 'm4a', 'M4A with AAC, 128 kbit/s', AAC_READER, AAC),
  sound('noisy.m4a', 'm4a', 'M4A with AAC, noise substituted', AAC_READER, [
    '-c:a',
    'aac',
    '-b:a',
    '64k',
  ]),
  sound('apple.m4a', 'm4a', 'M4A with ALAC', AAC_READER, ['-c:a', 'alac']),
  sound('film.mp4', 'mp4', 'MP4 film with AAC, index at the end', AAC_READER, [
    ...PICTURES,
    ...AAC,
  ]),
  sound('film.mov', 'mov', 'MOV film with AAC', AAC_READER, [...PICTURES, ...AAC]),
  sound(
    'phone.3gp',
    '3gp',
    '3GP with AMR, 8 kHz',
    `${MEDIABUNNY}@audio/decode-amr`,
    ['-c', 'copy'],
    {
      program: 'sox',
      reference: "sox's decode",
      compareS: 30,
    },
  ),
  sound('phone.amr', 'amr', 'AMR, 8 kHz', 'own, @audio/decode-amr', [], {
    program: 'sox',
    reference: "sox's decode",
    compareS: 30,
  }),
  sound('bare.aac', 'aac', 'AAC without container', AAC_READER, AAC, { delayUnknown: true }),
  sound('plain.mp3', 'mp3', 'MP3, 128 kbit/s', `${MEDIABUNNY}mpg123-decoder`, [
    '-c:a',
    'libmp3lame',
    '-b:a',
    '128k',
  ]),
  sound('vorbis.ogg', 'ogg', 'Ogg Vorbis', `${MEDIABUNNY}@wasm-audio-decoders/ogg-vorbis`, [
    '-c:a',
    'libvorbis',
  ]),
  sound('opus.ogg', 'ogg', 'Ogg Opus', `${MEDIABUNNY}opus-decoder`, ['-c:a', 'libopus']),
  sound('opus.webm', 'webm', 'WebM with Opus', `${MEDIABUNNY}opus-decoder`, ['-c:a', 'libopus']),
  sound('plain.mkv', 'mkv', 'Matroska, 16 bits', `${MEDIABUNNY}own`, ['-c:a', 'pcm_s16le']),
  sound('plain.flac', 'flac', 'FLAC', `${MEDIABUNNY}@wasm-audio-decoders/flac`, ['-c:a', 'flac']),
];

const WRITTEN = 'the values written';
const log = (file: string, format: string, title: string, reader: string): FormatCase => ({
  file,
  format,
  title,
  reader,
  reference: WRITTEN,
});

/** Every kind of log that is read. */
export const LOG_CASES: readonly FormatCase[] = [
  log('trace.csv', 'csv', 'CSV, shortest digits', 'own'),
  log('short.csv', 'csv', 'CSV, 4 decimals', 'own'),
  log('trace.parquet', 'parquet', 'Parquet, Snappy', 'hyparquet'),
  log('trace.h5', 'hdf5', 'HDF5, gzip', 'h5wasm'),
  log('v73.mat', 'mat', 'MATLAB v7.3', 'h5wasm'),
  log('v5.mat', 'mat', 'MATLAB v5, packed', 'own, fflate'),
  log('trace.npy', 'npy', 'NumPy .npy', 'own'),
  log('trace.npz', 'npz', 'NumPy .npz, packed', 'own, fflate'),
  log('trace.f64', 'raw', 'bare samples, float64', 'own'),
];
