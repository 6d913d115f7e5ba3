import type { FeatureDefinition, FeatureSet } from '../vector.js';

const define = (id: string, unit: string, meaning: string): FeatureDefinition => ({
  id,
  unit,
  meaning,
});

/** From the voltage alone. None of them is an absolute voltage: a constant offset moves none. */
const VOLTAGE: readonly FeatureDefinition[] = [
  define('shortRateHz', 'Hz', 'short circuits that carry metal over, per second'),
  define('allShortsRateHz', 'Hz', 'all short circuits per second, touches included'),
  define('incipientShare', '1', 'share of the short circuits that are touches without transfer'),
  define('shortShare', '1', 'share of the time spent in short circuit'),
  define('shortDurationS', 's', 'median duration of a short circuit'),
  define('shortDurationCv', '1', 'unevenness of the durations'),
  define('shortIntervalCv', '1', 'unevenness of the time from short to short'),
  define('arcTimeS', 's', 'median arc time between short circuits'),
  define('shortDepthV', 'V', 'how far the voltage falls in a short circuit'),
  define('arcSdV', 'V', 'spread of the voltage outside short circuits'),
  define('arcSpreadV', 'V', 'its 95th less its 5th percentile'),
  define('arcSkewness', '1', 'its lean towards high (+) or low (−) values'),
  define('arcKurtosis', '1', 'its excess kurtosis: 0 for a bell, high for rare leaps'),
  define('slowFluctuationV', 'V', 'wander of the arc voltage below about 45 Hz'),
  define('midFluctuationV', 'V', 'fluctuation from 60 to 1200 Hz without mains lines'),
  define('highFluctuationV', 'V', 'fluctuation from 1200 to 2400 Hz'),
  define('stepNoiseV', 'V', 'noise of millisecond steps of the arc voltage'),
  define('stepTilt', '1', 'sharp rises against slow falls; above 1 speaks of drops leaving'),
  define('dropStepRateHz', 'Hz', 'steps up of the arc voltage per second'),
  define('dropStepV', 'V', 'median height of these steps'),
  define('dropStepCv', '1', 'unevenness of the time between them'),
  define('lineRateHz', 'Hz', 'strongest line of the arc voltage outside mains and pulses'),
  define('lineProminence', '1', 'that line over the floor around it'),
  define('lineTonalShare', '1', 'share of the line that is one exact frequency'),
  define('mainsRippleV', 'V', 'ripple at multiples of the mains frequency'),
  define('pulseRateHz', 'Hz', 'pulses of the source per second, 0 where there are none'),
  define('pulseSwingV', 'V', 'upper less lower level of the arc voltage'),
  define('pulseSeparation', '1', 'how cleanly the arc voltage keeps to two levels'),
  define('pulseDutyShare', '1', 'share of the time in the upper level'),
  define('pulseClockCv', '1', 'unevenness of the time from rise to rise'),
];

/**
 * From the current alone; ratios, so that the size of wire matters less. The mean itself is left out: it
 * helped on simulated families and misled on an independent picture of arcs.
 */
const CURRENT: readonly FeatureDefinition[] = [
  define('currentCv', '1', 'spread of the current over its mean'),
  define('currentSkewness', '1', 'lean of the current towards high values'),
  define('currentHighRatio', '1', '95th percentile of the current over its mean'),
  define('currentLowRatio', '1', '5th percentile of the current over its mean'),
  define('currentSlowShare', '1', 'wander of the current below about 45 Hz over its mean'),
  define('currentLineHz', 'Hz', 'strongest line of the current'),
  define('currentLineProminence', '1', 'that line over the floor around it'),
  define('currentLineTonalShare', '1', 'share of that line that is one exact frequency'),
  define('currentPulseRateHz', 'Hz', 'pulses of the current per second, 0 where there are none'),
  define('currentSwingShare', '1', 'upper less lower level of the current over its mean'),
  define('currentSeparation', '1', 'how cleanly the current keeps to two levels'),
  define('currentDutyShare', '1', 'share of the time in the upper level'),
  define('currentClockCv', '1', 'unevenness of the time from rise to rise of the current'),
];

/** What only both together show. */
const BOTH: readonly FeatureDefinition[] = [
  define('arcCurrentCv', '1', 'spread of the current outside short circuits over its mean'),
  define('shortOverArcCurrent', '1', 'current in shorts over current in the arc'),
  define('breakOverArcCurrent', '1', 'current at the break of a short over current in the arc'),
  define(
    'leastOverStartCurrent',
    '1',
    'least current in a short over that at contact; below 1 where the source cuts it',
  ),
  define('currentRisePerS', '1/s', 'rise of the current in a short over the arc current'),
  define('arcSlopeOhm', 'Ω', 'slope of voltage over current in the arc phase'),
  define('arcCorrelation', '1', 'correlation of voltage and current in the arc phase'),
];

export const VOLTAGE_FEATURES: FeatureSet = { id: 'voltage', version: 1, features: VOLTAGE };
export const CURRENT_FEATURES: FeatureSet = { id: 'current', version: 2, features: CURRENT };
export const VOLTAGE_CURRENT_FEATURES: FeatureSet = {
  id: 'voltage-current',
  version: 2,
  features: [...VOLTAGE, ...CURRENT, ...BOTH],
};

/** The set that goes with the channels at hand. */
export function electricalFeatureSet(hasVoltage: boolean, hasCurrent: boolean): FeatureSet {
  if (hasVoltage) return hasCurrent ? VOLTAGE_CURRENT_FEATURES : VOLTAGE_FEATURES;
  return CURRENT_FEATURES;
}
