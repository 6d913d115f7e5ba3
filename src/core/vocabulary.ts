/** The words that every stage shares. Times are seconds from the first sample, half-open `[startS, endS)`. */

/** Transfer modes in the fixed order used by every score and probability vector. */
export const MODES = ['short-circuit', 'globular', 'spray', 'pulsed-spray'] as const;
export type Mode = (typeof MODES)[number];

/** Mode of a whole run: one of {@link MODES}, or `mixed` when no single one held. */
export type RunMode = Mode | 'mixed';

/** What the power source does, which is another question than how the metal crosses. */
export const SOURCE_PROGRAMMES = ['steady', 'pulsed', 'controlled-dip', 'unknown'] as const;
export type SourceProgramme = (typeof SOURCE_PROGRAMMES)[number];

export type Status = 'ok' | 'no-arc' | 'unsure' | 'failed';
export type RecordingKind = 'sound' | 'electrical';

/** Something assumed, repaired or noticed; kept in the result, never silent. */
export interface Note {
  code: string;
  message: string;
  /** What the sentence is made of, so that it can be said in another language; see `messages`. */
  params?: Record<string, unknown> | undefined;
}

/** A doubt about the evidence. `share` is the part of the recording (0 to 1) that it touches. */
export interface QualityFlag {
  code: string;
  share: number;
  message: string;
  params?: Record<string, unknown> | undefined;
}

/** What can disturb an arc for a while. */
export const DISTURBANCE_KINDS = [
  'long-short',
  'arc-out',
  'burn-back',
  'long-arc',
  'current-dip',
] as const;
export type DisturbanceKind = (typeof DISTURBANCE_KINDS)[number];

/** One disturbance of the arc. */
export interface Disturbance {
  kind: DisturbanceKind;
  startS: number;
  endS: number;
}

/** An arc interval. An open end means that the arc was already, or still, burning at that edge. */
export interface ArcInterval {
  startS: number;
  endS: number;
  openStart: boolean;
  openEnd: boolean;
}

/** A part of an arc interval in one mode; `mode` is null where the evidence names none. */
export interface Segment {
  startS: number;
  endS: number;
  mode: Mode | null;
  confidence: number;
}
