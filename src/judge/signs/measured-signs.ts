import type { SoundSign } from '../../messages/index.js';

/** A measured quantity of the sound of a run, in the unit in which a person reads it. */
export interface MeasuredSign {
  id: SoundSign;
  unit: string;
  /** From the means of the features over the run, by name; NaN where the recording does not show it. */
  value(mean: (feature: string) => number): number;
  /** Whether ratios of it count rather than differences. */
  byRatio: boolean;
}

/** Prominence from which a beat over seconds stands clear of chance (own choice, as for single windows). */
const CLEAR_BEAT = 20;

/** What is said of a sound beside the answer. All are independent of the level of the recording. */
export const MEASURED_SIGNS: readonly MeasuredSign[] = [
  {
    id: 'crackRateHz',
    unit: 'Hz',
    value: (mean) => 2 ** mean('strongOnsetRate'),
    byRatio: true,
  },
  {
    id: 'crackSpacingCv',
    unit: '1',
    value: (mean) => mean('onsetIntervalCv'),
    byRatio: false,
  },
  {
    id: 'beatRateHz',
    unit: 'Hz',
    value: (mean) =>
      10 ** mean('steadyLineProminence') - 1 >= CLEAR_BEAT ? 2 ** mean('steadyLineRate') : NaN,
    byRatio: true,
  },
  {
    id: 'beatClearness',
    unit: '1',
    value: (mean) => 10 ** mean('steadyLineProminence'),
    byRatio: true,
  },
  {
    id: 'quietMomentsDb',
    unit: 'dB',
    value: (mean) => 20 * mean('middleOverQuiet'),
    byRatio: false,
  },
  {
    id: 'loudMomentsDb',
    unit: 'dB',
    value: (mean) => 20 * mean('loudOverMiddle'),
    byRatio: false,
  },
  {
    id: 'slowSwingShare',
    unit: '1',
    value: (mean) => Math.sqrt(10 ** mean('modulation4to10') + 10 ** mean('modulation10to25')),
    byRatio: true,
  },
  {
    id: 'fastSwingShare',
    unit: '1',
    value: (mean) => Math.sqrt(10 ** mean('modulation60to150') + 10 ** mean('modulation150to400')),
    byRatio: true,
  },
];
