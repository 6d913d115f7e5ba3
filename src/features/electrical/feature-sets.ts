import { type FeatureUnit, message, type TraceFeature } from '../../messages/index.js';
import { define, type FeatureDefinition, type FeatureSet } from '../vector.js';

const trace = (id: TraceFeature, unit: FeatureUnit): FeatureDefinition =>
  define(id, unit, message('trace-feature', { feature: id }));

/** From the voltage alone. None of them is an absolute voltage: a constant offset moves none. */
const VOLTAGE: readonly FeatureDefinition[] = [
  trace('shortRateHz', 'Hz'),
  trace('allShortsRateHz', 'Hz'),
  trace('incipientShare', '1'),
  trace('shortShare', '1'),
  trace('shortDurationS', 's'),
  trace('shortDurationCv', '1'),
  trace('shortIntervalCv', '1'),
  trace('arcTimeS', 's'),
  trace('shortDepthV', 'V'),
  trace('arcSdV', 'V'),
  trace('arcSpreadV', 'V'),
  trace('arcSkewness', '1'),
  trace('arcKurtosis', '1'),
  trace('slowFluctuationV', 'V'),
  trace('midFluctuationV', 'V'),
  trace('highFluctuationV', 'V'),
  trace('stepNoiseV', 'V'),
  trace('stepTilt', '1'),
  trace('dropStepRateHz', 'Hz'),
  trace('dropStepV', 'V'),
  trace('dropStepCv', '1'),
  trace('lineRateHz', 'Hz'),
  trace('lineProminence', '1'),
  trace('lineTonalShare', '1'),
  trace('mainsRippleV', 'V'),
  trace('pulseRateHz', 'Hz'),
  trace('pulseSwingV', 'V'),
  trace('pulseSeparation', '1'),
  trace('pulseDutyShare', '1'),
  trace('pulseClockCv', '1'),
];

/**
 * From the current alone; ratios, so that the size of wire matters less. The mean itself is left out: it
 * helped on simulated families and misled on an independent picture of arcs.
 */
const CURRENT: readonly FeatureDefinition[] = [
  trace('currentCv', '1'),
  trace('currentSkewness', '1'),
  trace('currentHighRatio', '1'),
  trace('currentLowRatio', '1'),
  trace('currentSlowShare', '1'),
  trace('currentLineHz', 'Hz'),
  trace('currentLineProminence', '1'),
  trace('currentLineTonalShare', '1'),
  trace('currentPulseRateHz', 'Hz'),
  trace('currentSwingShare', '1'),
  trace('currentSeparation', '1'),
  trace('currentDutyShare', '1'),
  trace('currentClockCv', '1'),
];

/** What only both together show. */
const BOTH: readonly FeatureDefinition[] = [
  trace('arcCurrentCv', '1'),
  trace('shortOverArcCurrent', '1'),
  trace('breakOverArcCurrent', '1'),
  trace('leastOverStartCurrent', '1'),
  trace('currentRisePerS', '1/s'),
  trace('arcSlopeOhm', 'Ω'),
  trace('arcCorrelation', '1'),
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
