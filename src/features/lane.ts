import type { Note, QualityFlag, SourceProgramme } from '../core/index.js';
import type { FeatureSet, LaneEvent } from './vector.js';

/** Named figures of a whole run, keyed `…Hz`, `…V`, `…A`, `…S`, `…Share`; null where not shown by this recording. */
export type RunFigures = Record<string, number | null>;

/** What a lane knows once everything went through it. */
export interface LaneSummary {
  figures: RunFigures;
  quality: QualityFlag[];
  notes: Note[];
  sourceProgramme: SourceProgramme;
}

/**
 * Samples in, feature windows and arc-on stretches out: one for sound, one for electrical traces.
 * Any split of the samples into pushes gives the same events. Memory does not grow with length.
 */
export interface Lane {
  readonly featureSet: FeatureSet;
  /** Length of a window and time from one to the next, s. Fixed with the feature set, since a model is fitted on them. */
  readonly windowS: number;
  readonly hopS: number;
  /** Time from one `newest` event to the next, s; null where the lane gives none. */
  readonly newestHopS: number | null;
  /** One array a channel, equal lengths; not kept after the call. */
  push(channels: readonly Float64Array[]): LaneEvent[];
  flush(): LaneEvent[];
  /** Valid after `flush`. */
  summary(): LaneSummary;
  /**
   * Figures of the oldest finished stretch not yet taken, from lanes made to tell the stretches of an
   * endless stream apart; `summary` then covers only what follows the last stop.
   */
  takeSummary?(): LaneSummary | undefined;
}
