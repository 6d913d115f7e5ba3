import type { Reader, ReaderContext } from '../reader.js';
import { hasAscii, hasBytes } from '../sniff.js';
import type { ByteSource, ReadOptions, Recording } from '../types.js';
import { isAdts } from './adts.js';
import { amrStream, isAmr } from './amr-frames.js';
import { demux } from './demux.js';
import { openStream } from './open.js';
import type { PacketStream } from './stream.js';

export { adtsHeader } from './adts.js';

function reader(
  format: string,
  title: string,
  sniff: (head: Uint8Array) => boolean,
  stream: (source: ByteSource) => Promise<PacketStream> = (source) => demux(source, format),
): Reader {
  const open = async (
    source: ByteSource,
    options: ReadOptions,
    context: ReaderContext,
  ): Promise<Recording> => openStream(await stream(source), source.name, options, context);
  return { format, title, sniff, open };
}

const QUICKTIME_TOP_BOXES = ['moov', 'mdat', 'wide', 'free', 'skip', 'pnot'];

/** Brand of an ISO media file, or undefined. */
function brand(head: Uint8Array): string | undefined {
  return hasAscii(head, 4, 'ftyp') ? String.fromCharCode(...head.subarray(8, 12)) : undefined;
}

function isMov(head: Uint8Array): boolean {
  return brand(head) === 'qt  ' || QUICKTIME_TOP_BOXES.some((type) => hasAscii(head, 4, type));
}

function isEbml(head: Uint8Array): boolean {
  return hasBytes(head, 0, [0x1a, 0x45, 0xdf, 0xa3]);
}

/** The document type stands in the first header, of a few dozen bytes. */
function docTypeIsWebm(head: Uint8Array): boolean {
  for (let at = 4; at < 64; at++) if (hasAscii(head, at, 'webm')) return true;
  return false;
}

/** MPEG audio layer III: an ID3 tag, or two frame headers that agree. AAC in ADTS has layer 0. */
function isMp3(head: Uint8Array): boolean {
  if (hasAscii(head, 0, 'ID3')) return true;
  return head.length >= 4 && head[0] === 0xff && (head[1]! & 0xe6) === 0xe2 && head[2]! >> 4 !== 15;
}

/** Readers of compressed sound. The sound track alone is read where there are pictures too. */
export const COMPRESSED_READERS: readonly Reader[] = [
  reader('m4a', 'M4A', (head) => /^M4[AB] $/.test(brand(head) ?? '')),
  reader('3gp', '3GP', (head) => /^3g[p2]/.test(brand(head) ?? '')),
  reader('mov', 'MOV', isMov),
  reader('mp4', 'MP4', (head) => brand(head) !== undefined),
  reader('webm', 'WebM', (head) => isEbml(head) && docTypeIsWebm(head)),
  reader('mkv', 'Matroska', isEbml),
  reader('ogg', 'Ogg', (head) => hasAscii(head, 0, 'OggS')),
  reader('flac', 'FLAC', (head) => hasAscii(head, 0, 'fLaC')),
  reader('amr', 'AMR', isAmr, amrStream),
  reader('aac', 'AAC', isAdts),
  reader('mp3', 'MP3', isMp3),
];
