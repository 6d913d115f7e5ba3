import type { ComparedKey, SpreadBy } from '../../messages/index.js';

type Figures = Readonly<Record<string, number | null>>;

/** A figure of the result that two runs can be compared by. */
export interface ComparedFigure {
  key: ComparedKey;
  unit: string;
  /**
   * Standard error within the run from what the result document holds; NaN where it cannot be told.
   * `at` gives a figure of the run, NaN where absent.
   */
  error: (at: (key: string) => number) => number;
  how: SpreadBy;
}

/** Values this far apart in time count as independent where nothing better is known, s. */
const APART_S = 0.1;

const RENEWAL = 'independent-intervals';
const events = (at: (key: string) => number, rate: string): number => at(rate) * at('steadyTimeS');

/** Standard error of a rate from the spread of its intervals. */
const rateBy =
  (rate: string, cv: string) =>
  (at: (key: string) => number): number =>
    (at(rate) * at(cv)) / Math.sqrt(events(at, rate));

/** Standard error of a mean from the coefficient of variation of its parts. */
const meanBy =
  (key: string, cv: string, factor = 1) =>
  (at: (key: string) => number): number =>
    (factor * at(key) * at(cv)) / Math.sqrt(events(at, 'shortCircuitRateHz'));

/** Standard error of a coefficient of variation, delta method for a normal spread. */
const cvError =
  (cv: string) =>
  (at: (key: string) => number): number =>
    (at(cv) * Math.sqrt(0.5 + at(cv) ** 2)) / Math.sqrt(events(at, 'shortCircuitRateHz'));

/** Standard error of a mean level from its spread, one independent value a tenth of a second. */
const levelBy =
  (sd: string) =>
  (at: (key: string) => number): number =>
    at(sd) / Math.sqrt(at('steadyTimeS') / APART_S);

/** Median of a normal spread errs by this much more than its mean. */
const MEDIAN = Math.sqrt(Math.PI / 2);
const none = (): number => Number.NaN;

type Row = [ComparedKey, string, ComparedFigure['error'], SpreadBy];

const ROWS: readonly Row[] = [
  ['shortCircuitRateHz', 'Hz', rateBy('shortCircuitRateHz', 'shortIntervalCv'), RENEWAL],
  [
    'incipientRateHz',
    'Hz',
    (at) => Math.sqrt(at('incipientRateHz') / at('steadyTimeS')),
    'poisson-counts',
  ],
  ['shortDurationS', 's', meanBy('shortDurationS', 'shortDurationCv', MEDIAN), RENEWAL],
  ['arcTimeS', 's', meanBy('arcTimeS', 'arcTimeCv'), RENEWAL],
  ['shortDurationCv', '1', cvError('shortDurationCv'), RENEWAL],
  ['shortIntervalCv', '1', cvError('shortIntervalCv'), RENEWAL],
  ['arcTimeCv', '1', cvError('arcTimeCv'), RENEWAL],
  [
    'stabilityIndex',
    '1',
    (at) => Math.hypot(cvError('shortDurationCv')(at), cvError('arcTimeCv')(at)),
    RENEWAL,
  ],
  ['dropRateHz', 'Hz', rateBy('dropRateHz', 'stepIntervalCv'), RENEWAL],
  ['pulseRateHz', 'Hz', rateBy('pulseRateHz', 'pulseClockCv'), RENEWAL],
  ['eventRateHz', 'Hz', none, 'not-known'],
  ['meanVoltageV', 'V', levelBy('voltageSdV'), 'tenth-of-a-second'],
  ['meanCurrentA', 'A', levelBy('currentSdA'), 'tenth-of-a-second'],
  [
    'currentAtBreakA',
    'A',
    (at) => at('currentAtBreakSdA') / Math.sqrt(events(at, 'shortCircuitRateHz')),
    RENEWAL,
  ],
  ['slowSwingShare', '1', none, 'not-known'],
  ['powerW', 'W', none, 'not-known'],
  ['shortShare', '1', none, 'not-known'],
];

export const COMPARED_FIGURES: readonly ComparedFigure[] = ROWS.map(([key, unit, error, how]) => ({
  key,
  unit,
  error,
  how,
}));

/** A figure of a run, NaN where absent. */
export const reader =
  (figures: Figures) =>
  (key: string): number =>
    figures[key] ?? Number.NaN;
