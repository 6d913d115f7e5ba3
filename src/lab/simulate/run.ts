import type { Mode, RunMode, SourceProgramme } from '../../core/index.js';
import type { ArcScenario, SetWrong } from './scenario.js';

/** One short circuit: from contact to parting. */
export interface ShortTruth {
  startS: number;
  endS: number;
  /** Liquid metal that crossed through it, mm³. */
  transferredMm3: number;
  /** Parted again without handing over metal. */
  incipient: boolean;
}

/**
 * How a drop let go: hanging on the wire end below the transition; pushed aside by the arc, as in CO2; or from the
 * column that the arc has drawn the wire end to, in line with the wire.
 */
export type Release = 'hanging' | 'repelled' | 'column';

/** One drop that crossed the gap freely. */
export interface DropTruth {
  timeS: number;
  diameterMm: number;
  release: Release;
}

/** Forms of free flight, as IIW doc. XII-636-76 parts them (from memory of Lancaster 1984). */
export type FreeFlight = 'drop' | 'repelled' | 'projected' | 'streaming';

export interface SegmentTruth {
  startS: number;
  endS: number;
  mode: Mode;
  shares: Record<Mode, number>;
}

export interface RunTruth {
  shorts: ShortTruth[];
  drops: DropTruth[];
  /** Where the arc process ran (shorts included). */
  arcOn: { startS: number; endS: number }[];
  /** Arc intervals of constant settings, each named by what crossed the gap in it. */
  segments: SegmentTruth[];
  /** The one mode of all segments, or `mixed`; null when no metal crossed. */
  mode: RunMode | null;
  /** Share of the metal volume by mechanism, whole run. */
  shares: Record<Mode, number>;
  /** Volume-weighted mean diameter of free drops over wire diameter; NaN without drops. */
  meanDropRatio: number;
  /** NaN where the source does not pulse. */
  dropsPerPulse: number;
  sourceProgramme: SourceProgramme;
  /** How the free drops crossed; null without them and on a pulsing source. */
  freeFlight: FreeFlight | null;
  /** What was set wrong on purpose; null where nothing was. It does not touch the name of the mode. */
  setWrong: SetWrong | null;
  /** One mechanism carries at least 85 % of the metal and its drops are clear of the size that parts the modes. */
  unambiguous: boolean;
}

/** Where the wire went, mm³ of solid wire unless named liquid; for checks of the books. */
export interface Balance {
  fedMm3: number;
  meltedMm3: number;
  /** Growth of the solid extension. */
  extensionMm3: number;
  transferredLiquidMm3: number;
  /** Liquid hanging at the end, less that at the start. */
  hangingLiquidMm3: number;
  /** J drawn from the ideal source, lost in its slope, stored in its choke at the end, given to the load. */
  sourceJ: number;
  slopeJ: number;
  chokeJ: number;
  loadJ: number;
}

/** A simulated run: measured traces, the clean power for sound, and the truth. */
export interface ArcRun {
  scenario: ArcScenario;
  electricalRateHz: number;
  voltageV: Float64Array;
  currentA: Float64Array;
  /** Clean arc power in W and current in A at `powerRateHz`, over the same time as the traces. */
  powerRateHz: number;
  powerW: Float32Array;
  /** The part of `powerW` that comes of the wandering of the arc's root, not of any event; absent is none. */
  unrestW?: Float32Array;
  arcCurrentA: Float32Array;
  durationS: number;
  truth: RunTruth;
  /** Starts of the source's pulses, s; none where it does not pulse. */
  pulsesS: number[];
  balance: Balance;
}
