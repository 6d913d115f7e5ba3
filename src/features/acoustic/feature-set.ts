import { type FeatureUnit, message, type SoundFeature } from '../../messages/index.js';
import { define, type FeatureDefinition, type FeatureSet } from '../vector.js';

/** Edges of the modulation bands, Hz. */
export const MODULATION_BAND_EDGES_HZ = [1.5, 4, 10, 25, 60, 150, 400, 1000] as const;

const bands = MODULATION_BAND_EDGES_HZ.slice(0, -1).map((lowHz, i) => ({
  lowHz,
  highHz: MODULATION_BAND_EDGES_HZ[i + 1]!,
}));

const sound = (id: SoundFeature, unit: FeatureUnit): FeatureDefinition =>
  define(id, unit, message('sound-feature', { feature: id }));

/** Features of one window of sound. All are independent of the recording's level. */
export const SOUND_FEATURES: FeatureSet = {
  id: 'sound',
  version: 3,
  features: [
    ...bands.map(({ lowHz, highHz }) =>
      define(
        `modulation${lowHz}to${highHz}`,
        'log10',
        message('band-modulation', { lowHz, highHz }),
      ),
    ),
    ...bands.map(({ lowHz, highHz }) =>
      define(`coherence${lowHz}to${highHz}`, '1', message('band-coherence', { lowHz, highHz })),
    ),
    sound('lineRate', 'log2 Hz'),
    sound('lineProminence', 'log10'),
    sound('lineSharpness', '1'),
    sound('lineShare', '1'),
    sound('lineHarmonics', '1'),
    sound('fastLineProminence', 'log10'),
    sound('fastLineRate', 'log2 Hz'),
    sound('slowLineProminence', 'log10'),
    sound('steadyLineRate', 'log2 Hz'),
    sound('steadyLineProminence', 'log10'),
    sound('onsetRate', 'log2 Hz'),
    sound('onsetIntervalCv', '1'),
    sound('onsetDispersion', 'log10'),
    sound('onsetStrength', 'octaves'),
    sound('strongOnsetRate', 'log2 Hz'),
    sound('commonRise', 'octaves'),
    sound('onsetRise', 'octaves'),
    sound('onsetDecaySoon', '1'),
    sound('onsetDecayLate', '1'),
    sound('gapBeforeOnset', 'octaves'),
    sound('rateDisagreement', 'octaves'),
    sound('kurtosis', 'log10'),
    sound('envelopeCv', 'log10'),
    sound('loudOverMiddle', 'log10'),
    sound('middleOverQuiet', 'log10'),
    sound('riseSkew', '1'),
    sound('flatness', '1'),
    sound('centroid', 'log2 Hz'),
    sound('spread', 'log2 Hz'),
    sound('spectralCrest', 'log10'),
    sound('rumbleRatio', 'log10'),
    sound('midRatio', 'log10'),
    sound('brightRatio', 'log10'),
    sound('airRatio', 'log10'),
  ],
};
