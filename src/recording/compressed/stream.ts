import type { Note } from '../../core/index.js';
import type { DecoderConfig } from '../reader.js';

/** One codec packet with its place on the container's time line. */
export interface Packet {
  data: Uint8Array;
  startS: number;
  /** 0 where the container does not say. */
  durationS: number;
}

/** The one sound track of a container, in packets. */
export interface PacketStream {
  /** Name of the container for the result, e.g. `m4a`. */
  container: string;
  config: DecoderConfig;
  /**
   * Samples at the start of the decoder's output that belong to the encoder and not to the recording, at
   * the decoder's rate. Negative when the sound begins after the start of the first packet's output.
   */
  skipFrames(rateHz: number): number;
  /** Length of the recording, where the container states it exactly. */
  totalS?: number;
  /** Length as stated roughly, for noticing that much is missing. */
  statedS?: number;
  notes: Note[];
  packets(): AsyncGenerator<Packet>;
  close(): void;
}
