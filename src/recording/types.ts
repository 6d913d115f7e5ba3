import type { Note, RecordingKind } from '../core/index.js';
import type { RawFormat } from './raw/format.js';

/** Bytes that can be read at any place: a file, a Blob, a buffer. The one seam between hosts. */
export interface ByteSource {
  /** For messages and provenance only; content decides the reader, never the name. */
  readonly name: string;
  /** Length in bytes. */
  readonly size: number;
  /**
   * Up to `length` bytes from `offset`; fewer only at the end of the data. The returned view is valid
   * until the next call.
   */
  read(offset: number, length: number): Promise<Uint8Array>;
  /** Length now, where the data may still be growing. `size` stays what it was at the opening. */
  currentSize?(): Promise<number>;
}

/** What a channel holds. `full-scale` means that digital full scale is 1. */
export interface Channel {
  /** Name as found in the file, or `channel 1`, `channel 2`, … */
  name: string;
  quantity: 'sound' | 'voltage' | 'current';
  unit: 'full-scale' | 'V' | 'A';
}

/** Consecutive samples, one array a channel, all of the same length. The arrays may be reused by the next block. */
export interface SampleBlock {
  /** Index of the first sample of the block within the recording. */
  startSample: number;
  channels: Float64Array[];
}

/** What the sound went through before it was stored, where the container says so. */
export interface CodecInfo {
  name: string;
  lossy: boolean;
  /** Samples a codec frame spans (at the recording's rate), within which time detail smears. */
  frameSamples?: number;
}

/** An opened recording: already chosen channels, in their units, on a uniform time base. */
export interface Recording {
  kind: RecordingKind;
  /** Reader that took it, e.g. `wav`, `csv`, `m4a`. */
  format: string;
  sampleRateHz: number;
  /** Order is fixed: sound, or voltage then current. */
  channels: Channel[];
  /** Known in advance only for some formats; the number of samples delivered is the truth. */
  expectedSamples?: number;
  codec?: CodecInfo;
  /** Filled while reading too: complete only after the last block. */
  notes: Note[];
  /** Blocks in order, without gaps. May be called once. */
  blocks(): AsyncIterable<SampleBlock>;
  /** Frees what the opening took; for those who open a recording and do not read it to its end. */
  close?(): Promise<void>;
}

/** What the user states about a file; nothing of it is guessed. Channel numbers count from 1. */
export interface ReadOptions {
  /** Which channel is which: WAV channel number, or column/dataset name. */
  channelMap?: Partial<Record<'sound' | 'voltage' | 'current' | 'time', number | string>>;
  /** Volts and amperes at digital full scale (WAV), or per unit of the column (logs). */
  scale?: Partial<Record<'voltage' | 'current', number>>;
  /** Rate where the file has no time column, in Hz. */
  sampleRateHz?: number;
  /** States that the file is bare samples in this layout; its content is then not looked at. */
  raw?: RawFormat;
}
