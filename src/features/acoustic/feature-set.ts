import type { FeatureSet } from '../vector.js';

/** Edges of the modulation bands, Hz. */
export const MODULATION_BAND_EDGES_HZ = [1.5, 4, 10, 25, 60, 150, 400, 1000] as const;

const bands = MODULATION_BAND_EDGES_HZ.slice(0, -1).map((low, i) => ({
  low,
  high: MODULATION_BAND_EDGES_HZ[i + 1]!,
}));

/** Features of one window of sound. All are independent of the recording's level. */
export const SOUND_FEATURES: FeatureSet = {
  id: 'sound',
  version: 3,
  features: [
    ...bands.map(({ low, high }) => ({
      id: `modulation${low}to${high}`,
      unit: 'log10',
      meaning: `how strongly the loudness fluctuates at ${low} to ${high} Hz`,
    })),
    ...bands.map(({ low, high }) => ({
      id: `coherence${low}to${high}`,
      unit: '1',
      meaning: `how far the lower and upper half of the band fluctuate together at ${low} to ${high} Hz`,
    })),
    { id: 'lineRate', unit: 'log2 Hz', meaning: 'rate of the strongest beat in the loudness' },
    {
      id: 'lineProminence',
      unit: 'log10',
      meaning: 'clearness of the strongest beat',
    },
    { id: 'lineSharpness', unit: '1', meaning: 'how clock-like the strongest beat is' },
    {
      id: 'lineShare',
      unit: '1',
      meaning: 'share of the fluctuation that the strongest beat carries',
    },
    { id: 'lineHarmonics', unit: '1', meaning: 'harmonics of the strongest beat' },
    {
      id: 'fastLineProminence',
      unit: 'log10',
      meaning: 'clearness of the strongest beat above 60 Hz',
    },
    { id: 'fastLineRate', unit: 'log2 Hz', meaning: 'rate of the strongest beat above 60 Hz' },
    {
      id: 'slowLineProminence',
      unit: 'log10',
      meaning: 'clearness of the strongest beat below 60 Hz',
    },
    {
      id: 'steadyLineRate',
      unit: 'log2 Hz',
      meaning: 'rate of the beat that stands over seconds',
    },
    {
      id: 'steadyLineProminence',
      unit: 'log10',
      meaning: 'clearness of the beat that stands over seconds',
    },
    { id: 'onsetRate', unit: 'log2 Hz', meaning: 'rate of sudden rises of loudness' },
    { id: 'onsetIntervalCv', unit: '1', meaning: 'irregularity of the time between sudden rises' },
    {
      id: 'onsetDispersion',
      unit: 'log10',
      meaning: 'unevenness of the number of sudden rises',
    },
    { id: 'onsetStrength', unit: 'octaves', meaning: 'suddenness of the sharpest rises' },
    {
      id: 'strongOnsetRate',
      unit: 'log2 Hz',
      meaning: 'rate of cracks and pops far above the hiss',
    },
    { id: 'commonRise', unit: 'octaves', meaning: 'suddenness of common rises' },
    {
      id: 'onsetRise',
      unit: 'octaves',
      meaning: 'how far an event stands over the moment before it',
    },
    {
      id: 'onsetDecaySoon',
      unit: '1',
      meaning: 'share of an event that is gone after 1 to 2 ms',
    },
    {
      id: 'onsetDecayLate',
      unit: '1',
      meaning: 'share of an event that is gone after 3 to 5 ms',
    },
    {
      id: 'gapBeforeOnset',
      unit: 'octaves',
      meaning: 'how much quieter it is just before an event than earlier',
    },
    {
      id: 'rateDisagreement',
      unit: 'octaves',
      meaning: 'distance between two counts of the events',
    },
    { id: 'kurtosis', unit: 'log10', meaning: 'impulsiveness of the sound' },
    { id: 'envelopeCv', unit: 'log10', meaning: 'spread of the loudness over its mean' },
    {
      id: 'loudOverMiddle',
      unit: 'log10',
      meaning: 'loud moments (95th percentile) over the median',
    },
    {
      id: 'middleOverQuiet',
      unit: 'log10',
      meaning: 'median loudness over quiet moments (5th percentile)',
    },
    { id: 'riseSkew', unit: '1', meaning: 'how much faster loudness leaps up than it falls' },
    { id: 'flatness', unit: '1', meaning: 'evenness of the spectrum within the band' },
    { id: 'centroid', unit: 'log2 Hz', meaning: 'centre of the spectrum above 300 Hz' },
    { id: 'spread', unit: 'log2 Hz', meaning: 'width of the spectrum above 300 Hz' },
    { id: 'spectralCrest', unit: 'log10', meaning: 'how far a single tone stands out of the band' },
    { id: 'rumbleRatio', unit: 'log10', meaning: '0.3–1 kHz over 1.5–6 kHz' },
    { id: 'midRatio', unit: 'log10', meaning: '1–2 kHz over 1.5–6 kHz' },
    { id: 'brightRatio', unit: 'log10', meaning: '6–12 kHz over 1.5–6 kHz' },
    { id: 'airRatio', unit: 'log10', meaning: '12–18 kHz over 1.5–6 kHz' },
  ],
};
