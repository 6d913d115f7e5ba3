import type { Nothing } from '../terms.js';

/** Notes on a recording as a file of sound, and on what all files have in common. */
export interface RecordingParams {
  'damaged-packets': { damaged: number; packets: number; damagedS: number };
  truncated:
    | { how: 'breaks-off'; readS: number; cause: string }
    | { how: 'decoded-less'; declaredS: number; readS: number }
    | { how: 'damaged-frame'; readS: number }
    | { how: 'rest-no-block'; restBytes: number }
    | { how: 'damaged-packet'; readBytes: number; fileBytes: number }
    | { how: 'holds-less'; declaredS: number; heldS: number };
  'encoder-delay-unknown': { codec: 'mp3' | 'aac' };
  'host-decoder': { decoder: string };
  /** `frameSamples`: what a frame of the codec spans, null where not known. */
  'lossy-codec': { codec: string; frameSamples: number | null; sampleRateHz: number };
  'track-assumed': { tracks: number };
  'sound-starts-late': { startS: number };
  'wav-wide-samples': Nothing;
  'wav-frame-size': { blockBytes: number; channels: number; bits: number; usedBytes: number };
  'wav-unpadded-chunk': Nothing;
  'wav-size-missing': Nothing;
  'chosen-channel-silent': Nothing;
  'above-full-scale': { peakOverFullScale: number };
  /** Times of the first few; more may have been met. */
  'not-finite': { samples: number; firstTimesS: number[]; replacedBy: 'last-good' | 'zero' };
  /** Samples on one side of zero, as volts and amperes are. */
  'one-sided-sound': Nothing;
  'channel-assumed': { channels: number };
  'sample-rate-stated': { sampleRateHz: number };
  'file-growing': { openedBytes: number; nowBytes: number };
  'raw-stated': {
    encoding: string;
    bigEndian: boolean;
    channels: number;
    sampleRateHz: number;
    skippedBytes: number;
  };
  'partial-frame': { restBytes: number };
  'bytes-after-sound': { bytes: number };
}
