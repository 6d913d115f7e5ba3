import type { ByteSource, ReadOptions, Recording } from './types.js';

/** Decoders that only the host can offer, such as a system program or the browser's own codec. */
export interface ReaderContext {
  /** Tried in order before the decoders that come with the package. */
  decoders: readonly HostDecoder[];
}

/** A decoder offered by the host: raw codec packets in, samples out. */
export interface HostDecoder {
  /** For notes, e.g. `ffmpeg 5.1`. */
  name: string;
  /** Codec names it takes, e.g. `aac`. */
  codecs: readonly string[];
  /** Starts decoding one stream. Rejects when it can't. */
  start(config: DecoderConfig): Promise<PacketDecoder>;
}

/** What the container says of a stream. */
export interface DecoderConfig {
  codec: string;
  sampleRateHz: number;
  channels: number;
  /** Codec-private bytes of the container (AudioSpecificConfig, ALAC cookie, Opus head, …). */
  description?: Uint8Array;
}

/** Decoded sound: one array a channel, digital full scale at 1. */
export interface DecodedSound {
  sampleRateHz: number;
  channels: Float32Array[];
}

/** One running decoder. Packets go in by order; the samples of all of them come out by the end. */
export interface PacketDecoder {
  /** Samples at the very start that this decoder keeps to itself, at its output rate. 0 unless stated. */
  leadFrames?(rateHz: number): number;
  /** True when output comes late, so that an empty answer does not mean a damaged packet. */
  delayed?: boolean;
  push(packet: Uint8Array): Promise<DecodedSound | undefined>;
  flush(): Promise<DecodedSound | undefined>;
  /** Frees what it holds; safe to call twice. */
  close(): void;
}

/** A format reader. `sniff` sees the content only; the name of a file decides nothing. */
export interface Reader {
  /** Short name used in results, e.g. `wav`, `csv`, `m4a`. */
  format: string;
  /** What it reads, for the message that lists ours. */
  title: string;
  /** True when the first bytes (up to {@link SNIFF_BYTES}) are of this format. Must not throw. */
  sniff(head: Uint8Array, source: ByteSource): boolean;
  /** Opens the recording; errors are ArcErrors. */
  open(source: ByteSource, options: ReadOptions, context: ReaderContext): Promise<Recording>;
}

/** How much of the start of a source a reader may look at before it claims it. */
export const SNIFF_BYTES = 64 * 1024;
