import type { Note, RecordingKind } from '../../core/index.js';
import type { SeriesFigures } from './figures.js';

/** One column, dataset or channel of a file. */
export interface InspectedSeries {
  /** Counted from 1, as options count. */
  number: number;
  name: string;
  /** Unit as the file writes it. */
  unit?: string;
  /** What it is read as with the options given; null when it is left out. */
  readAs: 'time' | 'voltage' | 'current' | 'sound' | null;
  /** Figures in the file's own units, before any scaling; absent for text. */
  figures?: SeriesFigures;
}

/** What a file holds and how it would be read. */
export interface Inspection {
  name: string;
  /** Short name of the format, or null where the content is not recognised. */
  format: string | null;
  /** The format in words. */
  title: string;
  bytes: number;
  kind: RecordingKind | null;
  sampleRateHz: number | null;
  /** Samples a channel, as they would be classified. */
  samples: number | null;
  durationS: number | null;
  series: InspectedSeries[];
  /** Assumptions and doubts of the reading. */
  notes: Note[];
  /** Why it cannot be read with the options given. */
  problem: { code: string; message: string } | null;
  /** The command line to go on with; words in angle brackets are left to the user. */
  command: string;
}
