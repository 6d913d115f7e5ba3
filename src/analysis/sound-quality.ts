import type { QualityFlag } from '../core/index.js';
import type { RunEvidence } from '../judge/index.js';
import { flag } from '../messages/index.js';
import type { Recording } from '../recording/index.js';

/** Share of samples at the rails from which clipping is worth a word (common practice, no source). */
const CLIPPING = 0.001;
/** Below it the upper band is missing; and what is little to judge by, s (common practice, no source). */
const LOW_RATE_HZ = 16_000;
const SHORT_S = 2;
/** A recording that never goes beyond it is silent: about the last three steps of 16 bits (common practice, no source). */
const SILENT_PEAK = 1e-4;

/** Doubts about a sound recording as evidence. */
export function soundQuality(
  recording: Recording,
  evidence: RunEvidence,
  { durationS, peak }: { durationS: number; peak?: number },
): QualityFlag[] {
  const flags: QualityFlag[] = [];
  if (peak !== undefined && durationS > 0 && peak <= SILENT_PEAK) flags.push(flag('silent', 1));
  const clipped = evidence.clipped / Math.max(1, evidence.windows);
  if (clipped > CLIPPING) flags.push(flag('clipping', clipped, { shareOfSamples: clipped }));
  if (recording.sampleRateHz < LOW_RATE_HZ)
    flags.push(flag('sample-rate-low', 1, { of: 'sound', sampleRateHz: recording.sampleRateHz }));
  if (durationS < SHORT_S) flags.push(flag('short-recording', 1, { durationS }));
  return flags;
}
