import type { QualityFlag } from '../core/index.js';
import type { RunEvidence } from '../judge/index.js';
import type { Recording } from '../recording/index.js';

/** Share of samples at the rails from which clipping is worth a word (common practice, no source). */
const CLIPPING = 0.001;
/** Below it the upper band is missing; and what is little to judge by, s (common practice, no source). */
const LOW_RATE_HZ = 16_000;
const SHORT_S = 2;

/** Doubts about a sound recording as evidence. */
export function soundQuality(
  recording: Recording,
  evidence: RunEvidence,
  durationS: number,
): QualityFlag[] {
  const flags: QualityFlag[] = [];
  const clipped = evidence.clipped / Math.max(1, evidence.windows);
  if (clipped > CLIPPING)
    flags.push({
      code: 'clipping',
      share: clipped,
      message: `${(100 * clipped).toFixed(1)} % of the samples stand at the rails: move the microphone away or lower the gain.`,
    });
  if (recording.sampleRateHz < LOW_RATE_HZ)
    flags.push({
      code: 'sample-rate-low',
      share: 1,
      message: `At ${recording.sampleRateHz} samples a second the band above ${Math.round(recording.sampleRateHz / 2)} Hz is missing; 44,100 or 48,000 hears the whole arc.`,
    });
  if (durationS < SHORT_S)
    flags.push({
      code: 'short-recording',
      share: 1,
      message: `${durationS.toFixed(2)} s is little to judge by; record 5 s of steady arc or more.`,
    });
  return flags;
}
