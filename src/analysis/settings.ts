/**
 * Every option of the analysis once. Flags, help, the table in README and the fingerprint in each
 * result are made from this list, so they cannot drift apart. Defaults are own choice for the reason given with each.
 */
export interface Setting {
  /** Name in code and in the result document; carries the unit where there is one. */
  key: string;
  /** Command-line flag without dashes. */
  flag: string;
  /** `s`, `Hz`; `1` for a pure number or a share. */
  unit: string;
  /** Smallest and largest value taken; outside is an error, never clamped. */
  min: number;
  max: number;
  default: number;
  /** What it does, in words for the help. */
  what: string;
  /** Why the default is what it is. */
  why: string;
}

/** In the order of help and README. All of them change results, so all enter the fingerprint. */
export const SETTINGS = [
  {
    key: 'meanDwellS',
    flag: 'mean-dwell',
    unit: 's',
    min: 0.2,
    max: 600,
    default: 4,
    what: 'time a mode is expected to last: how reluctantly the timeline changes',
    why: 'a mode that lasts only a moment is more often a doubtful window than a real change',
  },
  {
    key: 'lookAheadS',
    flag: 'look-ahead',
    unit: 's',
    min: 0,
    max: 10,
    default: 1,
    what: 'how much later evidence may still correct a moment of the timeline',
    why: 'the windows after a change settle where it was; what is told live does not wait for it',
  },
  {
    key: 'ignitionMaskS',
    flag: 'ignition-mask',
    unit: 's',
    min: 0,
    max: 10,
    default: 0.3,
    what: 'time after the arc starts that is left out of the verdict',
    why: 'an arc start short-circuits in every mode until the wire and the pool have settled',
  },
  {
    key: 'craterMaskS',
    flag: 'crater-mask',
    unit: 's',
    min: 0,
    max: 10,
    default: 0.3,
    what: 'time before the arc stops that is left out of the verdict',
    why: 'crater fill and burn-back run at other settings than the weld',
  },
  {
    key: 'minStretchS',
    flag: 'min-stretch',
    unit: 's',
    min: 0.1,
    max: 60,
    default: 0.4,
    what: 'shortest arc-on stretch that is judged, after the masks',
    why: 'below that too few events are left to tell slow short circuits from slow drops',
  },
  {
    key: 'answerThreshold',
    flag: 'answer-threshold',
    unit: '1',
    min: 0.3,
    max: 0.999,
    default: 0.6,
    what: 'confidence below which the answer is `unsure`',
    why: 'a named mode should be clearly likelier than all the others together',
  },
  {
    key: 'mixedShare',
    flag: 'mixed-share',
    unit: '1',
    min: 0.5,
    max: 1,
    default: 0.75,
    what: 'share of the judged arc time that one mode must hold, else the run is `mixed`',
    why: 'a quarter of a run in another mode is more than a passing disturbance',
  },
  {
    key: 'arcPrior',
    flag: 'arc-prior',
    unit: '1',
    min: 0.05,
    max: 0.99,
    default: 0.8,
    what: 'for sound: how likely it is, before listening, that what was recorded is an arc',
    why: 'who asks for the mode of a recording mostly welded; `label` and `watch` hear whatever comes and take 0.5',
  },
] as const satisfies readonly Setting[];

export type SettingKey = (typeof SETTINGS)[number]['key'];

/** A value for every setting. */
export type Settings = Readonly<Record<SettingKey, number>>;

/**
 * The prior of an arc where nobody has said by asking that somebody welded: many recordings in a row, or a signal
 * without an end. Even odds take no side.
 */
export const UNTOLD_ARC_PRIOR = 0.5;

/** The defaults, as one object; a fresh copy at every call. */
export function defaultSettings(): Settings {
  return Object.fromEntries(SETTINGS.map((one) => [one.key, one.default])) as Settings;
}
