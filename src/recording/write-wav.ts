import { ArcError } from '../core/index.js';
import { loadWaveFile } from './pcm/index.js';

/** Sample formats that {@link writeWav} offers: PCM, float (`32f`, `64`), A-law and µ-law. */
export type WavBitDepth = '8' | '16' | '24' | '32' | '32f' | '64' | '8a' | '8m';

/**
 * The bytes of a WAV file. `channels` are equally long, full scale at 1; integers are rounded, and what
 * lies outside full scale is refused rather than clipped.
 *
 * @throws ArcError `bad-wav-samples` for no or unequal channels, samples that are not numbers, or, but
 * for float formats, samples beyond full scale.
 */
export async function writeWav(
  channels: readonly Float64Array[],
  sampleRateHz: number,
  bitDepth: WavBitDepth = '16',
): Promise<Uint8Array> {
  const companded = bitDepth === '8a' || bitDepth === '8m';
  const float = bitDepth === '32f' || bitDepth === '64';
  checkSamples(channels, float);
  const WaveFile = await loadWaveFile();
  const wav = new WaveFile();
  const stored = companded ? '16' : bitDepth;
  const data = float ? channels : channels.map((samples) => quantise(samples, Number(stored)));
  // A one-channel array of arrays is not accepted by the library.
  wav.fromScratch(
    channels.length,
    sampleRateHz,
    stored,
    (data.length === 1 ? data[0] : data) as never,
  );
  if (bitDepth === '8a') wav.toALaw();
  if (bitDepth === '8m') wav.toMuLaw();
  return wav.toBuffer();
}

function quantise(samples: Float64Array, bits: number): Float64Array {
  const half = 2 ** (bits - 1);
  // 8-bit WAV is unsigned. The topmost value is one step short of full scale.
  const zero = bits === 8 ? 128 : 0;
  return samples.map((value) => Math.min(half - 1, Math.round(value * half)) + zero);
}

function checkSamples(channels: readonly Float64Array[], float: boolean): void {
  const length = channels[0]?.length ?? 0;
  if (length === 0) throw refuse('There are no samples to write.');
  if (channels.some((samples) => samples.length !== length))
    throw refuse('The channels differ in length.');
  for (const samples of channels) {
    const at = samples.findIndex(
      (value) => !Number.isFinite(value) || (!float && Math.abs(value) > 1),
    );
    if (at >= 0) throw refuse(`Sample ${at} is ${samples[at]}.`);
  }
}

function refuse(what: string): ArcError {
  return new ArcError({
    code: 'bad-wav-samples',
    what,
    expected:
      'channels of equal length with finite samples from -1 to 1 (any finite number in float files)',
    todo: 'Scale the samples first, or write a float file.',
  });
}
