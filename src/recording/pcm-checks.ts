import { ArcError, type Note } from '../core/index.js';
import { note } from '../messages/index.js';
import type { PcmEncoding, PcmFormat } from './pcm/index.js';
import type { ReadOptions } from './types.js';

/** What a container says of its plain samples. */
export interface StatedPcm {
  container: string;
  kind: 'signed' | 'unsigned' | 'float' | 'a-law' | 'mu-law';
  bits: number;
  channels: number;
  sampleRateHz: number;
  /** True unless stated: AIFF and CAF are big-endian by default. */
  bigEndian?: boolean;
}

const MAX_CHANNELS = 256;
const MAX_RATE_HZ = 50_000_000;

/**
 * Checks a stated format and turns it into one that can be read.
 *
 * @throws ArcError `bad-sample-rate`, `bad-channel-count`, `bad-sample-size`, `contradicting-sample-rate`.
 */
export function checkedFormat(
  stated: StatedPcm,
  options: ReadOptions,
  notes: Note[],
): { format: PcmFormat; bigEndian: boolean } {
  const { container, channels, kind, bits } = stated;
  const sampleRateHz = checkRate(stated.sampleRateHz, options.sampleRateHz, container, notes);
  if (!Number.isInteger(channels) || channels < 1 || channels > MAX_CHANNELS) {
    throw refuse(container, 'bad-channel-count', `${channels} channels`, `1 to ${MAX_CHANNELS}`);
  }
  const width = kind === 'a-law' || kind === 'mu-law' ? 1 : Math.ceil(bits / 8);
  const encoding = encodingOf(kind, width);
  if (!encoding || bits < 1) {
    throw refuse(
      container,
      'bad-sample-size',
      `${kind} samples of ${bits} bits`,
      '8 to 32 bits, or float of 32 or 64',
    );
  }
  const blockBytes = width * channels;
  const format = { encoding, channels, sampleRateHz, blockBytes, blockFrames: 1 };
  return { format, bigEndian: stated.bigEndian ?? true };
}

function encodingOf(kind: StatedPcm['kind'], width: number): PcmEncoding | undefined {
  if (kind === 'a-law' || kind === 'mu-law') return kind;
  if (kind === 'float') return ({ 4: 'f32', 8: 'f64' } as const)[width];
  if (kind === 'unsigned') return width === 1 ? 'u8' : undefined;
  return ({ 1: 's8', 2: 's16', 3: 's24', 4: 's32' } as const)[width];
}

/**
 * The rate to use: the file's own, or the stated one where the file says 0.
 *
 * @throws ArcError `bad-sample-rate`, `contradicting-sample-rate`.
 */
export function checkRate(
  inFile: number,
  stated: number | undefined,
  container: string,
  notes: Note[],
): number {
  if (inFile === 0 && stated !== undefined && stated > 0) {
    notes.push(note('sample-rate-stated', { sampleRateHz: stated }));
    return stated;
  }
  if (!(inFile >= 1 && inFile <= MAX_RATE_HZ)) {
    throw refuse(
      container,
      'bad-sample-rate',
      `a sample rate of ${inFile} Hz`,
      `1 to ${MAX_RATE_HZ} Hz`,
    );
  }
  if (stated === undefined || stated === inFile) return inFile;
  throw new ArcError({
    code: 'contradicting-sample-rate',
    what: `A sample rate of ${stated} Hz was stated, but the file says ${inFile} Hz.`,
    expected: 'no stated rate for a file that has its own',
    todo: 'Leave out the sample rate.',
  });
}

function refuse(container: string, code: string, what: string, expected: string): ArcError {
  return new ArcError({
    code,
    what: `The ${container} file states ${what}.`,
    expected,
    todo: 'The file is damaged or of a kind we do not read; export the recording as 16-bit PCM.',
  });
}
