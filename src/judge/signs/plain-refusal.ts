import type { FeatureSet } from '../../features/index.js';
import type { RunEvidence } from '../run-evidence.js';

/** What is heard in place of an arc, as far as plain measurements tell. */
export type PlainRefusal = 'nothing-recorded' | 'tone' | 'hum';

/**
 * Mean level of the analysis band, dB of full scale, below which only the recorder itself is heard. 16 bits round at
 * −101 dB; drawn arcs lie above −50 dB, arcs of other simulators above −59 dB.
 */
const NOTHING_DB = -85;
/**
 * A tone holds the band: log10 of its peak over the mean of the band, and evenness of the spectrum. Arcs, drawn and of
 * other simulators: at most 0.97, at least 0.05, and not both; tones: 1.2 and 0.06.
 */
const TONE_CREST = 1.1;
const TONE_FLATNESS = 0.15;
/**
 * A hum: log10 of the prominence of an even beat that stands for seconds, without the hiss of an arc between its
 * harmonics. Arcs: at most 3.5; buzzing at 100 Hz: 4.4 and more, at an evenness of at most 0.36.
 */
const HUM_PROMINENCE = 4;
const HUM_FLATNESS = 0.45;

/** Why an interval is plainly no arc; null where the measurements leave that open. */
export function plainRefusal(evidence: RunEvidence, set: FeatureSet): PlainRefusal | null {
  if (evidence.levelDb < NOTHING_DB) return 'nothing-recorded';
  const mean = (feature: string): number =>
    evidence.vector.mean(set.features.findIndex(({ id }) => id === feature));
  const flatness = mean('flatness');
  if (mean('spectralCrest') > TONE_CREST && flatness < TONE_FLATNESS) return 'tone';
  if (mean('steadyLineProminence') > HUM_PROMINENCE && flatness < HUM_FLATNESS) return 'hum';
  return null;
}
