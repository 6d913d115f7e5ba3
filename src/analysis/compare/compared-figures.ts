type Figures = Readonly<Record<string, number | null>>;

/** A figure of the result that two runs can be compared by. */
export interface ComparedFigure {
  key: string;
  unit: string;
  /** How it is called in a sentence. */
  label: string;
  /**
   * Standard error within the run from what the result document holds; NaN where it cannot be told.
   * `at` gives a figure of the run, NaN where absent.
   */
  error: (at: (key: string) => number) => number;
  how: string;
}

/** Values this far apart in time count as independent where nothing better is known, s. */
const APART_S = 0.1;

const RENEWAL = 'each interval taken as independent of the others';
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

type Row = [string, string, string, ComparedFigure['error'], string];

const ROWS: readonly Row[] = [
  [
    'shortCircuitRateHz',
    'Hz',
    'short circuits a second',
    rateBy('shortCircuitRateHz', 'shortIntervalCv'),
    RENEWAL,
  ],
  [
    'incipientRateHz',
    'Hz',
    'incipient shorts a second',
    (at) => Math.sqrt(at('incipientRateHz') / at('steadyTimeS')),
    'counts taken as Poisson',
  ],
  [
    'shortDurationS',
    's',
    'median duration of a short',
    meanBy('shortDurationS', 'shortDurationCv', MEDIAN),
    RENEWAL,
  ],
  ['arcTimeS', 's', 'mean arc time between shorts', meanBy('arcTimeS', 'arcTimeCv'), RENEWAL],
  ['shortDurationCv', '1', 'unevenness of the shorts', cvError('shortDurationCv'), RENEWAL],
  ['shortIntervalCv', '1', 'unevenness from short to short', cvError('shortIntervalCv'), RENEWAL],
  ['arcTimeCv', '1', 'unevenness of the arc times', cvError('arcTimeCv'), RENEWAL],
  [
    'stabilityIndex',
    '1',
    'irregularity index',
    (at) => Math.hypot(cvError('shortDurationCv')(at), cvError('arcTimeCv')(at)),
    RENEWAL,
  ],
  ['dropRateHz', 'Hz', 'drops a second', rateBy('dropRateHz', 'stepIntervalCv'), RENEWAL],
  ['pulseRateHz', 'Hz', 'pulses a second', rateBy('pulseRateHz', 'pulseClockCv'), RENEWAL],
  ['eventRateHz', 'Hz', 'acoustic events a second', none, ''],
  [
    'meanVoltageV',
    'V',
    'mean voltage',
    levelBy('voltageSdV'),
    'one independent value a tenth of a second',
  ],
  [
    'meanCurrentA',
    'A',
    'mean current',
    levelBy('currentSdA'),
    'one independent value a tenth of a second',
  ],
  ['powerW', 'W', 'mean power', none, ''],
  ['shortShare', '1', 'share of the time in short circuit', none, ''],
];

export const COMPARED_FIGURES: readonly ComparedFigure[] = ROWS.map(
  ([key, unit, label, error, how]) => ({ key, unit, label, error, how }),
);

/** A figure of a run, NaN where absent. */
export const reader =
  (figures: Figures) =>
  (key: string): number =>
    figures[key] ?? Number.NaN;
