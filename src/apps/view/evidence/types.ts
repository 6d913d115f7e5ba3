import type { DisturbanceKind, Mode, RecordingKind } from '../../../core/index.js';

/** A trace thinned to the smallest and largest value of each bin, so that no extreme is lost. */
export interface ThinnedTrace {
  quantity: 'sound' | 'voltage' | 'current';
  unit: string;
  binS: number;
  /** One sample a bin: `min` and `max` are the same trace. */
  everySample: boolean;
  min: Float64Array;
  max: Float64Array;
}

/** Every sample of a short piece of a long run, traces in the order of `Evidence.traces`. */
export interface CloseUp {
  startS: number;
  binS: number;
  traces: Float64Array[];
}

/** Power over time and frequency. `cells[column * rows + row]`, 0 quietest to 255 loudest. */
export interface Spectrogram {
  columnS: number;
  rows: number;
  rowHz: number;
  floorDb: number;
  topDb: number;
  cells: Uint8Array;
}

/** A line over time; NaN where nothing was found. */
export interface Series {
  stepS: number;
  startS: number;
  values: Float64Array;
}

/** What happened and when; sorted, in units of 10 µs. */
export interface Marks {
  what: 'short circuit' | 'drop' | DisturbanceKind;
  /** How many there were; more than `starts` holds when a run has very many. */
  total: number;
  starts: Uint32Array;
  /** Lengths in units of 10 µs; zeros for what has no length. */
  lengths: Uint32Array;
}

/** Counts per bin of equal width, split by phase of the arc. */
export interface LevelCounts {
  unit: string;
  fromValue: number;
  width: number;
  arc: Float64Array;
  short: Float64Array;
}

/** Counts over voltage and current for each phase: `counts[phase][row * columns + column]`. */
export interface Plane {
  columns: number;
  rows: number;
  widthA: number;
  heightV: number;
  phases: { name: PlanePhase; counts: Float64Array }[];
}
export type PlanePhase = 'arc' | 'short circuit' | 'just after';

/** Short circuits laid over each other at their first sample. */
export interface AverageShort {
  count: number;
  stepS: number;
  startS: number;
  quantities: { name: 'voltage' | 'current'; unit: string; curves: SpreadCurve }[];
}
export interface SpreadCurve {
  middle: Float64Array;
  /** 10th and 90th percentile. */
  low: Float64Array;
  high: Float64Array;
}

/** Power over frequency of the fluctuation. */
export interface FluctuationSpectrum {
  of: 'sound' | 'voltage' | 'current';
  unit: string;
  binHz: number;
  power: Float64Array;
}

/** Intervals between events, in bins of equal ratio. */
export interface IntervalCounts {
  of: string;
  total: number;
  fromS: number;
  ratio: number;
  counts: Float64Array;
}

/** What each analysis window alone spoke for; provisional, unlike the segments of the result. */
export interface Beliefs {
  stepS: number;
  startS: number;
  byMode: Record<Mode, Float64Array>;
}

/** Sound to listen to, at a low rate. */
export interface Playback {
  rateHz: number;
  startS: number;
  /** False when only the beginning of the run was kept. */
  whole: boolean;
  samples: Int16Array;
}

/** Everything a person may look at beside the result. Null or empty is "this recording does not show it". */
export interface Evidence {
  kind: RecordingKind;
  durationS: number;
  traces: ThinnedTrace[];
  closeUps: CloseUp[];
  spectrogram: Spectrogram | null;
  levelDb: Series | null;
  eventRate: (Series & { of: string }) | null;
  marks: Marks[];
  levels: LevelCounts | null;
  plane: Plane | null;
  averageShort: AverageShort | null;
  spectrum: FluctuationSpectrum | null;
  intervals: IntervalCounts | null;
  beliefs: Beliefs | null;
  playback: Playback | null;
}
