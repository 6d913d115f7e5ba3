import type { UnitSystem } from '../../../core/index.js';
import type { Evidence } from '../../view/evidence/index.js';
import type { Interruption } from '../capture/interruption.js';
import type { MicrophoneTrouble } from '../capture/microphone.js';
import type { Drawn, LiveState, RawSetup } from '../messages.js';
import type { Run } from '../storage/database.js';
import type { Words } from '../words/index.js';

export const TABS = ['record', 'verdict', 'runs', 'files', 'about'] as const;
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

/** Everything the page shows. Views draw it; actions change it. */
export interface State {
  words: Words;
  /** Units of feeds, lengths and energy. */
  units: UnitSystem;
  tab: Tab;
  phase: 'idle' | 'starting' | 'recording' | 'judging';
  live: LiveState | null;
  /** Level of the last seconds, dB of full scale, oldest first. */
  levels: readonly number[];
  /** Whether an arc was heard at each of them. */
  arcs: readonly boolean[];
  keptOn: readonly string[];
  notKept: boolean;
  trouble: MicrophoneTrouble | null;
  leftovers: readonly Leftover[];
  setup: RawSetup;
  /** What refuses the set-up as typed; null where nothing does. */
  setupError: { error: unknown } | null;
  student: string;
  booth: string;
  booths: readonly string[];
  tones: boolean;
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
    arcs: [],
    keptOn: [],
    notKept: false,
    trouble: null,
    leftovers: [],
    setup: {},
    setupError: null,
    student: '',
    booth: '',
    booths: [],
    tones: true,
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
