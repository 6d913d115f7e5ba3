import type { InputAudioTrack, Input as MediaInput } from 'mediabunny';
import type { Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import type { DecoderConfig } from '../reader.js';
import type { ByteSource } from '../types.js';
import { lameTrim } from './mpeg-audio.js';
import { opusPreSkip } from './opus-head.js';
import type { PacketStream } from './stream.js';

/** The demultiplexer's package, loaded when it is needed. */
export type Media = typeof import('mediabunny');

/** A file whose track has been chosen. */
export interface Opened {
  media: Media;
  input: MediaInput;
  source: ByteSource;
  container: string;
  track: InputAudioTrack;
  tracks: number;
}

/** How much of the decoder's output belongs to the encoder: each container says it in its own way. */
export async function trimOf(
  opened: Opened,
  config: DecoderConfig,
  firstS: number,
  notes: Note[],
): Promise<Pick<PacketStream, 'skipFrames' | 'totalS' | 'statedS'>> {
  const { container, track, source } = opened;
  const fromEditList = (rateHz: number): number => Math.max(0, Math.round(-firstS * rateHz));
  if (config.codec === 'opus') {
    const preSkip = opusPreSkip(config.description);
    // Opus counts its lead in samples of 48 kHz whatever the rate (RFC 7845).
    const skipFrames = (rateHz: number): number => Math.round((preSkip * rateHz) / 48_000);
    return { skipFrames, ...(await totalOf(track, container)) };
  }
  if (container === 'mp3') {
    const trim = await lameTrim(source);
    if (!trim) {
      notes.push(note('encoder-delay-unknown', { codec: 'mp3' }));
      return { skipFrames: () => 0 };
    }
    const totalS = await track.computeDuration();
    return trim.totalFrames === undefined
      ? { skipFrames: () => trim.skip }
      : {
          skipFrames: () => trim.skip,
          totalS: Math.min(totalS, trim.totalFrames / config.sampleRateHz),
        };
  }
  if (config.codec === 'aac' && firstS >= 0) {
    notes.push(note('encoder-delay-unknown', { codec: 'aac' }));
  }
  return { skipFrames: fromEditList, ...(await totalOf(track, container)) };
}

/** What was found (exact but in Matroska, whose times are rounded), and what the file states. */
async function totalOf(
  track: InputAudioTrack,
  container: string,
): Promise<Pick<PacketStream, 'totalS' | 'statedS'>> {
  const metadataS = await track.getDurationFromMetadata();
  const stated = metadataS === null ? {} : { statedS: metadataS };
  if (container === 'webm' || container === 'mkv') return stated;
  const firstS = await track.getFirstTimestamp();
  return { ...stated, totalS: (await track.computeDuration()) - Math.max(0, firstS) };
}
