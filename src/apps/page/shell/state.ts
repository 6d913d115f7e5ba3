import type { UnitSystem } from '../../../core/index.js';
import type { Evidence } from '../../view/evidence/index.js';
import type { Interruption } from '../capture/interruption.js';
import type { MicrophoneTrouble } from '../capture/microphone.js';
import type { Drawn, LiveState, RawSetup } from '../messages.js';
import type { DrillKind, DrillQuestion, DrillScore } from '../sounds/drill.js';
import type { Example } from '../sounds/examples.js';
import type { Run } from '../storage/database.js';
import type { Words } from '../words/index.js';
import type { SheetKey } from './sheet-keys.js';

export const TABS = ['record', 'verdict', 'runs', 'listen', 'files', 'about'] as const;
export type Tab = (typeof TABS)[number];

/** The run that is open, with what is drawn of it. */
export interface Shown {
  run: Run;
  file: Blob | null;
  evidence: Evidence | null;
  pictures: Drawn | null;
  /** `only-result`: the file was too large to be kept beside it. */
  kept: 'yes' | 'only-result' | 'no';
  interruption: Interruption | null;
}

/** One file under Files. */
export interface FileJob {
  id: string;
  file: File;
  status: 'waiting' | 'working' | 'done' | 'cancelled';
  share: number;
  run: Run | null;
}

/** A recording that a closed page left behind. */
export interface Leftover {
  id: string;
  name: string;
  rateHz: number;
  seconds: number;
  createdMs: number;
}

export interface Sheet {
  key: SheetKey;
  /** What was typed on the number pad so far. */
  digits: string;
}

export interface Drill {
  kind: DrillKind;
  questions: readonly DrillQuestion[];
  /** Place of the question that is open. */
  at: number;
}

/** Everything the page shows. Views draw it; actions change it. */
export interface State {
  words: Words;
  /** Units of feeds, lengths and energy. */
  units: UnitSystem;
  tab: Tab;
  phase: 'idle' | 'starting' | 'recording' | 'judging';
  live: LiveState | null;
  /** Level of the last second, dB of full scale, oldest first. */
  levels: readonly number[];
  keptOn: readonly string[];
  notKept: boolean;
  trouble: MicrophoneTrouble | null;
  leftovers: readonly Leftover[];
  setup: RawSetup;
  /** What each field is refused for, by its key. Such fields are left out of the comparison, and stop nothing. */
  wrong: Readonly<Record<string, unknown>>;
  /** The list or number pad that is open. */
  sheet: Sheet | null;
  student: string;
  booth: string;
  booths: readonly string[];
  tones: boolean;
  /** The answer is read out. */
  speaks: boolean;
  /** Recordings stop by themselves once the arc is out. */
  stopsItself: boolean;
  /** Seconds from pressing Record to "your turn". */
  countdownS: number;
  examples: readonly Example[];
  /** Name of the sound that is being played: `example 3`, `run <id>`. */
  playing: string | null;
  drill: Drill | null;
  scores: Readonly<Record<DrillKind, DrillScore>>;
  shown: Shown | null;
  drawing: boolean;
  runs: readonly Run[];
  picked: readonly string[];
  jobs: readonly FileJob[];
  asking: boolean;
  store: 'opening' | 'open' | 'none';
  room: { usedBytes: number; allBytes: number } | null;
  readers: 'unknown' | 'fetching' | 'ready' | 'failed';
  /** Said once to eyes and screen readers. */
  message: string;
}

export function initialState(words: Words, units: UnitSystem = 'metric'): State {
  return {
    words,
    units,
    tab: 'record',
    phase: 'idle',
    live: null,
    levels: [],
    keptOn: [],
    notKept: false,
    trouble: null,
    leftovers: [],
    setup: {},
    wrong: {},
    sheet: null,
    student: '',
    booth: '',
    booths: [],
    tones: true,
    speaks: false,
    stopsItself: true,
    countdownS: 5,
    examples: [],
    playing: null,
    drill: null,
    scores: { simulated: {}, own: {} },
    shown: null,
    drawing: false,
    runs: [],
    picked: [],
    jobs: [],
    asking: false,
    store: 'opening',
    room: null,
    readers: 'unknown',
    message: '',
  };
}
