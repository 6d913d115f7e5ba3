import { ArcError } from '../../core/index.js';
import { note } from '../../messages/index.js';
import { openPcm } from '../pcm/index.js';
import type { ByteSource, ReadOptions, Recording } from '../types.js';
import { type RawFormat, rawSampleBytes } from './format.js';

const MAX_RATE_HZ = 1e8;

/**
 * Opens bare samples by the stated layout. The rate must be stated too. Without stated voltage or
 * current channels they are taken as sound, as in a WAV file.
 *
 * @throws ArcError `no-sample-rate`, and what reading plain samples finds wrong.
 */
export async function openRaw(
  source: ByteSource,
  raw: RawFormat,
  options: ReadOptions,
): Promise<Recording> {
  const { encoding, bigEndian, channels, skipBytes } = raw;
  const sampleRateHz = options.sampleRateHz;
  if (sampleRateHz === undefined || !(sampleRateHz >= 1 && sampleRateHz <= MAX_RATE_HZ)) {
    throw noRate(source.name, sampleRateHz);
  }
  const blockBytes = channels * rawSampleBytes(encoding);
  const format = { encoding, channels, sampleRateHz, blockBytes, blockFrames: 1 };
  const dataBytes = Math.max(0, source.size - skipBytes);
  const data = { bigEndian, dataOffset: skipBytes, dataBytes };
  const stated = { encoding, bigEndian, channels, sampleRateHz, skippedBytes: skipBytes };
  const notes = [note('raw-stated', stated)];
  return openPcm({ source, container: 'raw', format, data, notes }, options);
}

function noRate(fileName: string, rateHz: number | undefined): ArcError {
  return new ArcError({
    code: 'no-sample-rate',
    what:
      rateHz === undefined
        ? `${fileName} is read as bare samples, which say no sample rate.`
        : `${fileName} is read as bare samples with a stated rate of ${rateHz} Hz.`,
    expected: 'a rate from 1 Hz to 100 MHz',
    todo: 'Pass --sample-rate.',
  });
}
