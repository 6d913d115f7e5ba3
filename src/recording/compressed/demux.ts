import type { Input as MediaInput } from 'mediabunny';
import { type ArcError, isArcError, type Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import type { DecoderConfig } from '../reader.js';
import { hasAscii } from '../sniff.js';
import type { ByteSource } from '../types.js';
import { adtsConfig, stripAdts } from './adts.js';
import { oneAtATime } from './byte-views.js';
import { type Media, type Opened, trimOf } from './encoder-trim.js';
import { damaged, encrypted, noSound, unfinished, unknownCodec } from './errors.js';
import { wholeMatroskaBlocks } from './matroska-cut.js';
import { findAlacCookie, findTopBox, hasProtectedEntry } from './mp4-boxes.js';
import { mpegChannels } from './mpeg-audio.js';
import { wholeOggPages } from './ogg-cut.js';
import type { Packet, PacketStream } from './stream.js';

const CACHE_BYTES = 4 * 1024 * 1024;
/** Sample entries of protected tracks (ISO/IEC 14496-12 `enca`, and the older `drms`). */
const PROTECTED = ['enca', 'drms'];
/** Codecs that the demultiplexer carries without knowing them. */
const BY_ENTRY: Readonly<Record<string, string>> = { alac: 'alac', samr: 'amr-nb', sawb: 'amr-wb' };

/**
 * Opens the sound track of a container. Pictures and other tracks are left alone.
 *
 * @throws ArcError `unfinished-recording`, `no-sound-track`, `encrypted`, `unknown-codec`,
 * `damaged-container`.
 */
export async function demux(file: ByteSource, container: string): Promise<PacketStream> {
  const source = oneAtATime(file);
  if (isMp4(container) && !(await findTopBox(source, 'moov'))) throw unfinished(source.name);
  const media = await loadMedia();
  const whole = await wholePart(source, container);
  const input = openInput(media, whole);
  try {
    const tracks = await input.getAudioTracks();
    const track = tracks[0];
    if (!track) throw await trackless(source, container);
    const stream = await trackStream({
      media,
      input,
      source,
      container,
      track,
      tracks: tracks.length,
    });
    if (whole.size < source.size) stream.notes.push(cutNote(source.size - whole.size));
    return stream;
  } catch (error) {
    input.dispose();
    if (isArcError(error)) throw error;
    if (isMp4(container) && (await hasProtectedEntry(source))) throw encrypted(source.name);
    throw damaged(source.name, container, error);
  }
}

function wholePart(source: ByteSource, container: string): Promise<ByteSource> | ByteSource {
  if (container === 'ogg') return wholeOggPages(source);
  if (container === 'webm' || container === 'mkv') return wholeMatroskaBlocks(source);
  return source;
}

function cutNote(bytes: number): Note {
  return note('truncated', { how: 'rest-no-block', restBytes: bytes });
}

function isMp4(container: string): boolean {
  return ['m4a', 'mp4', 'mov', '3gp'].includes(container);
}

async function loadMedia(): Promise<Media> {
  const media = await import('mediabunny');
  media.Logging.level = media.LogLevel.Silent;
  return media;
}

function openInput(media: Media, source: ByteSource): MediaInput {
  const bytes = new media.CustomSource({
    getSize: () => source.size,
    read: (start, end) => source.read(start, end - start),
    maxCacheSize: CACHE_BYTES,
    prefetchProfile: 'fileSystem',
  });
  return new media.Input({ source: bytes, formats: media.ALL_FORMATS });
}

function leftNote(read: number, size: number): Note {
  return note('truncated', { how: 'damaged-packet', readBytes: read, fileBytes: size });
}

async function trackStream(opened: Opened): Promise<PacketStream> {
  const { media, input, source, container, track } = opened;
  const sink = new media.EncodedPacketSink(track);
  const first = await sink.getFirstPacket();
  if (!first) throw noSound(source.name, container);
  const config = await decoderConfig(opened, first.data);
  const notes: Note[] = [];
  if (opened.tracks > 1) {
    notes.push(note('track-assumed', { tracks: opened.tracks }));
  }
  if (first.timestamp > 0.001 && container !== 'ts') {
    notes.push(note('sound-starts-late', { startS: first.timestamp }));
  }
  const trim = await trimOf(opened, config, first.timestamp, notes);
  return {
    container,
    config,
    notes,
    ...trim,
    async *packets(): AsyncGenerator<Packet> {
      let bytes = 0;
      for await (const packet of sink.packets(first)) {
        bytes += packet.byteLength;
        const data = config.codec === 'aac' ? stripAdts(packet.data) : packet.data;
        yield { data, startS: packet.timestamp, durationS: packet.duration };
      }
      // A bare stream is all packets: what is left over lies behind the first one that is damaged.
      if (container === 'aac' && bytes < 0.9 * source.size)
        notes.push(leftNote(bytes, source.size));
    },
    close: () => input.dispose(),
  };
}

async function decoderConfig(opened: Opened, first: Uint8Array): Promise<DecoderConfig> {
  const { track, source, container } = opened;
  const entry = String(await track.getInternalCodecId());
  if (PROTECTED.includes(entry)) throw encrypted(source.name);
  const codec = (await track.getCodec()) ?? BY_ENTRY[entry];
  if (!codec) throw unknownCodec(container, entry);
  const config: DecoderConfig = {
    codec,
    sampleRateHz: await track.getSampleRate(),
    channels: codec === 'mp3' ? mpegChannels(first) : await track.getNumberOfChannels(),
  };
  const description = await describe(opened, codec, first);
  return description ? { ...config, description } : config;
}

async function describe(
  { track, source }: Opened,
  codec: string,
  first: Uint8Array,
): Promise<Uint8Array | undefined> {
  if (codec === 'alac') return findAlacCookie(source);
  const stated = (await track.getDecoderConfig())?.description;
  if (stated) {
    return ArrayBuffer.isView(stated)
      ? new Uint8Array(stated.buffer, stated.byteOffset, stated.byteLength).slice()
      : new Uint8Array(stated as ArrayBuffer).slice();
  }
  return codec === 'aac' ? adtsConfig(first) : undefined;
}

/** An Ogg file always has a stream; one without a track holds a codec we don't read, or is cut. */
async function trackless(source: ByteSource, container: string): Promise<ArcError> {
  if (container !== 'ogg') return noSound(source.name, container);
  const head = (await source.read(28, 8)).slice();
  if (hasAscii(head, 1, 'vorbis') || hasAscii(head, 0, 'OpusHead'))
    return noSound(source.name, container);
  return unknownCodec(container, String.fromCharCode(...head).replace(/[^ -~]/g, ''));
}
