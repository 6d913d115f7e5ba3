import { type ArcError, isArcError } from '../../../core/index.js';
import type { DecoderConfig, PacketDecoder, ReaderContext } from '../../reader.js';
import { noDecoder } from '../errors.js';
import { startAac, startAlac } from './aac.js';
import { startAmr } from './amr.js';
import { startFlac } from './flac.js';
import { startMp3 } from './mp3.js';
import { startOpus } from './opus.js';
import { startPcm } from './pcm.js';
import { startVorbis } from './vorbis.js';

export { vorbisLongBlock } from './vorbis.js';

type Starter = (config: DecoderConfig) => Promise<PacketDecoder>;

/** Decoders that come with the package; each loads its library when it is first started. */
const OURS: Readonly<Record<string, Starter>> = {
  aac: startAac,
  alac: startAlac,
  'amr-nb': startAmr,
  'amr-wb': startAmr,
  flac: startFlac,
  mp3: startMp3,
  opus: startOpus,
  vorbis: startVorbis,
};

/**
 * Starts a decoder: the host's where it offers one that takes the stream, else ours.
 *
 * @throws ArcError `no-decoder`.
 */
export async function startDecoder(
  config: DecoderConfig,
  context: ReaderContext,
): Promise<{ decoder: PacketDecoder; host?: string }> {
  let refusal: unknown;
  for (const host of context.decoders) {
    if (!host.codecs.includes(config.codec)) continue;
    try {
      return { decoder: await host.start(config), host: host.name };
    } catch (error) {
      refusal = error;
    }
  }
  const isPcm = config.codec.startsWith('pcm-') || ['alaw', 'ulaw'].includes(config.codec);
  const start = OURS[config.codec] ?? (isPcm ? startPcm : undefined);
  if (!start) throw noDecoder(config.codec, refusal);
  try {
    return { decoder: await start(config) };
  } catch (error) {
    throw asNoDecoder(config.codec, error);
  }
}

function asNoDecoder(codec: string, error: unknown): ArcError {
  return isArcError(error) ? error : noDecoder(codec, error);
}
