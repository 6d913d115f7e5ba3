/** How samples are stored; each has a decoder in `samples.ts` (ADPCM in `ima-adpcm.ts`). */
export type PcmEncoding =
  | 'u8'
  | 's8'
  | 's16'
  | 's24'
  | 's32'
  | 'f32'
  | 'f64'
  | 'a-law'
  | 'mu-law'
  | 'ima-adpcm';

/** Layout of interleaved samples. */
export interface PcmFormat {
  encoding: PcmEncoding;
  channels: number;
  sampleRateHz: number;
  /** Bytes of one frame (a sample of each channel), or of one block in ADPCM. */
  blockBytes: number;
  /** Frames in one block: 1 but for ADPCM. */
  blockFrames: number;
}

/** Where the samples lie in a source, and in which byte order. */
export interface PcmData {
  bigEndian: boolean;
  dataOffset: number;
  /** Bytes of sound really present. */
  dataBytes: number;
  /** What the file declares, where it declares anything. */
  declaredBytes?: number;
  /** Frames as stated elsewhere, which tells how much of the last ADPCM block is padding. */
  factFrames?: number;
}
