import type { Nothing } from '../terms.js';

/** Doubts about the evidence. */
export interface QualityParams {
  clipping: { shareOfSamples: number };
  'sample-rate-low':
    | { of: 'sound'; sampleRateHz: number }
    | { of: 'trace'; sampleRateHz: number; enoughHz: number };
  'short-recording': { durationS: number };
  /** Nothing above the last steps of the converter. */
  silent: Nothing;
  'voltage-missing-samples': { samples: number };
  'current-missing-samples': { samples: number };
  'voltage-clipped': Nothing;
  'current-clipped': Nothing;
  'voltage-held': Nothing;
  'current-held': Nothing;
  /** A note of the trace: an arc burns with the leads swapped. */
  'voltage-negative': Nothing;
}
