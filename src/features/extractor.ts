import type { Note, QualityFlag, SourceProgramme } from '../core/index.js';
import type { DisturbanceReport } from './disturbances.js';
import type { FigureName } from './figure-names.js';
import type { ExtractorEvent, FeatureSet } from './vector.js';

/** Named figures of a whole run, keyed `…Hz`, `…V`, `…A`, `…S`, `…Share`; null where not shown by this recording. */
export type RunFigures = Partial<Record<FigureName, number | null>>;

/** What a feature extractor knows once everything went through it. */
export interface ExtractorSummary {
  figures: RunFigures;
  quality: QualityFlag[];
  notes: Note[];
  sourceProgramme: SourceProgramme;
  /** What disturbed the arc of a trace; sound shows none of it. */
  disturbances?: DisturbanceReport;
}

/**
 * Samples in, feature windows and arc intervals out: one for sound, one for electrical traces.
 * Any split of the samples into pushes gives the same events. Memory does not grow with length.
 */
export interface FeatureExtractor {
  readonly featureSet: FeatureSet;
  /** Length of a window and time from one to the next, s. Fixed with the feature set, since a model is fitted on them. */
  readonly windowS: number;
  readonly hopS: number;
  /** Time from one `newest` event to the next, s; null where the feature extractor gives none. */
  readonly shortWindowHopS: number | null;
  /** One array a channel, equal lengths; not kept after the call. */
  push(channels: readonly Float64Array[]): ExtractorEvent[];
  flush(): ExtractorEvent[];
  /** Valid after `flush`. */
  summary(): ExtractorSummary;
  /**
   * Figures of the oldest finished arc interval not yet taken, from feature extractors made to tell the arc intervals of an
   * endless stream apart; `summary` then covers only what follows the last stop.
   */
  takeSummary?(): ExtractorSummary | undefined;
}
