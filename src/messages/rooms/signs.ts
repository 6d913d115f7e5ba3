import type { Mode } from '../../core/index.js';
import type { Message, Nothing } from '../terms.js';

/** Features of a window of sound, beside those of its bands. */
export type SoundFeature =
  | 'lineRate'
  | 'lineProminence'
  | 'lineSharpness'
  | 'lineShare'
  | 'lineHarmonics'
  | 'fastLineProminence'
  | 'fastLineRate'
  | 'slowLineProminence'
  | 'steadyLineRate'
  | 'steadyLineProminence'
  | 'onsetRate'
  | 'onsetIntervalCv'
  | 'onsetDispersion'
  | 'onsetStrength'
  | 'strongOnsetRate'
  | 'commonRise'
  | 'onsetRise'
  | 'onsetDecaySoon'
  | 'onsetDecayLate'
  | 'gapBeforeOnset'
  | 'rateDisagreement'
  | 'kurtosis'
  | 'envelopeCv'
  | 'loudOverMiddle'
  | 'middleOverQuiet'
  | 'riseSkew'
  | 'flatness'
  | 'centroid'
  | 'spread'
  | 'spectralCrest'
  | 'rumbleRatio'
  | 'midRatio'
  | 'brightRatio'
  | 'airRatio';

/** Measured quantities of the sound of a run, in units that a person reads. */
export type SoundSign =
  | 'crackRateHz'
  | 'crackSpacingCv'
  | 'beatRateHz'
  | 'beatClearness'
  | 'quietMomentsDb'
  | 'loudMomentsDb'
  | 'slowSwingShare'
  | 'fastSwingShare';

/** Features of a window of a voltage or current trace. */
export type TraceFeature =
  | 'shortRateHz'
  | 'allShortsRateHz'
  | 'incipientShare'
  | 'shortShare'
  | 'shortDurationS'
  | 'shortDurationCv'
  | 'shortIntervalCv'
  | 'arcTimeS'
  | 'shortDepthV'
  | 'arcSdV'
  | 'arcSpreadV'
  | 'arcSkewness'
  | 'arcKurtosis'
  | 'slowFluctuationV'
  | 'midFluctuationV'
  | 'highFluctuationV'
  | 'stepNoiseV'
  | 'stepTilt'
  | 'dropStepRateHz'
  | 'dropStepV'
  | 'dropStepCv'
  | 'lineRateHz'
  | 'lineProminence'
  | 'lineTonalShare'
  | 'mainsRippleV'
  | 'pulseRateHz'
  | 'pulseSwingV'
  | 'pulseSeparation'
  | 'pulseDutyShare'
  | 'pulseClockCv'
  | 'currentCv'
  | 'currentSkewness'
  | 'currentHighRatio'
  | 'currentLowRatio'
  | 'currentSlowShare'
  | 'currentLineHz'
  | 'currentLineProminence'
  | 'currentLineTonalShare'
  | 'currentPulseRateHz'
  | 'currentSwingShare'
  | 'currentSeparation'
  | 'currentDutyShare'
  | 'currentClockCv'
  | 'arcCurrentCv'
  | 'shortOverArcCurrent'
  | 'breakOverArcCurrent'
  | 'leastOverStartCurrent'
  | 'currentRisePerS'
  | 'arcSlopeOhm'
  | 'arcCorrelation';

/** Units in which features are kept; people read the number behind a logarithm. */
export type FeatureUnit = 'log10' | 'log2 Hz' | 'octaves' | '1' | (string & Nothing);

/** Signs of a mode: features in words, and what they were. */
export interface SignParams {
  'sound-feature': { feature: SoundFeature };
  'band-modulation': { lowHz: number; highHz: number };
  'band-coherence': { lowHz: number; highHz: number };
  'trace-feature': { feature: TraceFeature };
  /**
   * A measured sign against the range in which it is usual for a mode. `others` are, where it fits, modes for which it
   * is not usual; else modes for which it is.
   */
  'usual-sign': {
    sign: SoundSign;
    value: number;
    /** How evenly the cracks are spaced; null for other signs and in between. */
    spacing: 'even' | 'uneven' | null;
    mode: Mode;
    low: number;
    high: number;
    fits: boolean;
    others: Mode[];
  };
  /** A feature with its mean over the run; null where the recording does not show it. */
  sign: { feature: Message; value: number | null; unit: FeatureUnit };
}
