import type { SignParams, SoundFeature, SoundSign, TraceFeature } from '../rooms/signs.js';
import type { CatalogueOf, Writer } from '../writer.js';

const SOUND: Readonly<Record<SoundFeature, string>> = {
  lineRate: 'rate of the strongest beat in the loudness',
  lineProminence: 'clearness of the strongest beat',
  lineSharpness: 'how clock-like the strongest beat is',
  lineShare: 'share of the fluctuation that the strongest beat carries',
  lineHarmonics: 'harmonics of the strongest beat',
  fastLineProminence: 'clearness of the strongest beat above 60 Hz',
  fastLineRate: 'rate of the strongest beat above 60 Hz',
  slowLineProminence: 'clearness of the strongest beat below 60 Hz',
  steadyLineRate: 'rate of the beat that stands over seconds',
  steadyLineProminence: 'clearness of the beat that stands over seconds',
  onsetRate: 'rate of sudden rises of loudness',
  onsetIntervalCv: 'irregularity of the time between sudden rises',
  onsetDispersion: 'unevenness of the number of sudden rises',
  onsetStrength: 'suddenness of the sharpest rises',
  strongOnsetRate: 'rate of cracks and pops far above the hiss',
  commonRise: 'suddenness of common rises',
  onsetRise: 'how far an event stands over the moment before it',
  onsetDecaySoon: 'share of an event that is gone after 1 to 2 ms',
  onsetDecayLate: 'share of an event that is gone after 3 to 5 ms',
  gapBeforeOnset: 'how much quieter it is just before an event than earlier',
  rateDisagreement: 'distance between two counts of the events',
  kurtosis: 'impulsiveness of the sound',
  envelopeCv: 'spread of the loudness over its mean',
  loudOverMiddle: 'loud moments (95th percentile) over the median',
  middleOverQuiet: 'median loudness over quiet moments (5th percentile)',
  riseSkew: 'how much faster loudness leaps up than it falls',
  flatness: 'evenness of the spectrum within the band',
  centroid: 'centre of the spectrum above 300 Hz',
  spread: 'width of the spectrum above 300 Hz',
  spectralCrest: 'how far a single tone stands out of the band',
  rumbleRatio: '0.3–1 kHz over 1.5–6 kHz',
  midRatio: '1–2 kHz over 1.5–6 kHz',
  brightRatio: '6–12 kHz over 1.5–6 kHz',
  airRatio: '12–18 kHz over 1.5–6 kHz',
};

const TRACE: Readonly<Record<TraceFeature, string>> = {
  shortRateHz: 'short circuits that carry metal over, per second',
  allShortsRateHz: 'all short circuits per second, touches included',
  incipientShare: 'share of the short circuits that are touches without transfer',
  shortShare: 'share of the time spent in short circuit',
  shortDurationS: 'median duration of a short circuit',
  shortDurationCv: 'unevenness of the durations',
  shortIntervalCv: 'unevenness of the time from short to short',
  arcTimeS: 'median arc time between short circuits',
  shortDepthV: 'how far the voltage falls in a short circuit',
  arcSdV: 'spread of the voltage outside short circuits',
  arcSpreadV: 'its 95th less its 5th percentile',
  arcSkewness: 'its lean towards high (+) or low (−) values',
  arcKurtosis: 'its excess kurtosis: 0 for a bell, high for rare leaps',
  slowFluctuationV: 'wander of the arc voltage below about 45 Hz',
  midFluctuationV: 'fluctuation from 60 to 1200 Hz without mains lines',
  highFluctuationV: 'fluctuation from 1200 to 2400 Hz',
  stepNoiseV: 'noise of millisecond steps of the arc voltage',
  stepTilt: 'sharp rises against slow falls; above 1 speaks of drops leaving',
  dropStepRateHz: 'steps up of the arc voltage per second',
  dropStepV: 'median height of these steps',
  dropStepCv: 'unevenness of the time between them',
  lineRateHz: 'strongest line of the arc voltage outside mains and pulses',
  lineProminence: 'that line over the floor around it',
  lineTonalShare: 'share of the line that is one exact frequency',
  mainsRippleV: 'ripple at multiples of the mains frequency',
  pulseRateHz: 'pulses of the source per second, 0 where there are none',
  pulseSwingV: 'upper less lower level of the arc voltage',
  pulseSeparation: 'how cleanly the arc voltage keeps to two levels',
  pulseDutyShare: 'share of the time in the upper level',
  pulseClockCv: 'unevenness of the time from rise to rise',
  currentCv: 'spread of the current over its mean',
  currentSkewness: 'lean of the current towards high values',
  currentHighRatio: '95th percentile of the current over its mean',
  currentLowRatio: '5th percentile of the current over its mean',
  currentSlowShare: 'wander of the current below about 45 Hz over its mean',
  currentLineHz: 'strongest line of the current',
  currentLineProminence: 'that line over the floor around it',
  currentLineTonalShare: 'share of that line that is one exact frequency',
  currentPulseRateHz: 'pulses of the current per second, 0 where there are none',
  currentSwingShare: 'upper less lower level of the current over its mean',
  currentSeparation: 'how cleanly the current keeps to two levels',
  currentDutyShare: 'share of the time in the upper level',
  currentClockCv: 'unevenness of the time from rise to rise of the current',
  arcCurrentCv: 'spread of the current outside short circuits over its mean',
  shortOverArcCurrent: 'current in shorts over current in the arc',
  breakOverArcCurrent: 'current at the break of a short over current in the arc',
  leastOverStartCurrent:
    'least current in a short over that at contact; below 1 where the source cuts it',
  currentRisePerS: 'rise of the current in a short over the arc current',
  arcSlopeOhm: 'slope of voltage over current in the arc phase',
  arcCorrelation: 'correlation of voltage and current in the arc phase',
};

/** A sign in words, with its value; and how its range is written. */
const USUAL: Readonly<
  Record<SoundSign, (value: string, spacing: 'even' | 'uneven' | null) => string>
> = {
  crackRateHz: (value, spacing) => {
    const how = spacing === null ? '' : `, ${spacing === 'even' ? 'evenly' : 'unevenly'} spaced`;
    return `${value} sharp cracks a second${how}`;
  },
  crackSpacingCv: (value) => `time from crack to crack varies by ${value}`,
  beatRateHz: (value) => `an even beat of ${value} a second`,
  beatClearness: (value) => `the clearest beat stands ${value} times above the rest`,
  quietMomentsDb: (value) => `quiet moments ${value} dB below the middle`,
  loudMomentsDb: (value) => `loud moments ${value} dB above the middle`,
  slowSwingShare: (value) => `loudness swings slowly, 4 to 25 times a second, by ${value}`,
  fastSwingShare: (value) => `loudness swings fast, 60 to 400 times a second, by ${value}`,
};

export const SIGNS: CatalogueOf<SignParams> = {
  'sound-feature': ({ feature }) => SOUND[feature],
  'band-modulation': ({ lowHz, highHz }, write) =>
    `how strongly the loudness fluctuates at ${write.plain(lowHz)} to ${write.plain(highHz)} Hz`,
  'band-coherence': ({ lowHz, highHz }, write) =>
    `how far the lower and upper half of the band fluctuate together at ${write.plain(lowHz)} to ${write.plain(highHz)} Hz`,
  'trace-feature': ({ feature }) => TRACE[feature],
  'usual-sign': ({ sign, value, spacing, mode, low, high, fits, others }, write) => {
    const said = USUAL[sign](usualValue(sign, value, write), spacing);
    const range = `${usualValue(sign, low, write)} to ${usualValue(sign, high, write)}`;
    const named = write.or(others.map((one) => write.mode(one)));
    return fits
      ? `${said}: usual for ${write.mode(mode)} (${range}), not for ${named}`
      : `${said}: not usual for ${write.mode(mode)} (${range}), rather for ${named}; the whole decides`;
  },
  sign: ({ feature, value, unit }, write) =>
    `${write.say(feature)}: ${valueText(value, unit, write)}`,
};

function usualValue(sign: SoundSign, value: number, write: Writer): string {
  return sign.endsWith('Share') || sign.endsWith('Cv')
    ? write.percent(value)
    : write.figures(value, 2);
}

function valueText(value: number | null, unit: string, write: Writer): string {
  if (value === null) return 'not shown here';
  if (unit === 'log10') return `${write.figures(10 ** value, 3)} (ratio)`;
  if (unit === 'log2 Hz') return `${write.figures(2 ** value, 3)} Hz`;
  return unit === '1' ? write.figures(value, 3) : `${write.figures(value, 3)} ${unit}`;
}
