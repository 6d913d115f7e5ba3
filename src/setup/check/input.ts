import type {
  Mode,
  QualityFlag,
  RecordingKind,
  RunMode,
  Segment,
  SourceProgramme,
  Status,
} from '../../core/index.js';
import type { Setup } from '../index.js';

/** What the recording showed, in the words of the result document. */
export interface Seen {
  status: Status;
  mode: RunMode | null;
  confidence: number | null;
  probabilities: Partial<Record<Mode, number>> | null;
  shareOfArcTime: Partial<Record<Mode | 'undetermined', number>> | null;
  segments: readonly Segment[];
  /** Run figures keyed with their unit; absent and null both mean "not shown here". */
  figures: Readonly<Record<string, number | null>>;
  sourceProgramme: SourceProgramme;
  quality: readonly QualityFlag[];
  kind: RecordingKind;
}

export interface CrossCheckInput {
  setup: Setup;
  seen: Seen;
}
