import type { Mode, RunMode, Status } from '../../core/index.js';
import type { Message, Nothing } from '../terms.js';

/** Figures by which two runs are compared, as the result names them. */
export type ComparedKey =
  | 'shortCircuitRateHz'
  | 'incipientRateHz'
  | 'shortDurationS'
  | 'arcTimeS'
  | 'shortDurationCv'
  | 'shortIntervalCv'
  | 'arcTimeCv'
  | 'stabilityIndex'
  | 'dropRateHz'
  | 'pulseRateHz'
  | 'eventRateHz'
  | 'meanVoltageV'
  | 'meanCurrentA'
  | 'powerW'
  | 'currentAtBreakA'
  | 'slowSwingShare'
  | 'shortShare';

/** How the spread within a run was found. */
export type SpreadBy =
  | 'independent-intervals'
  | 'poisson-counts'
  | 'tenth-of-a-second'
  | 'not-known'
  | 'block-bootstrap'
  | 'newcombe';

type Run = 'before' | 'after';

/** Two results held against each other. */
export interface CompareParams {
  'compare-mode-unknown': { before: Status; after: Status };
  'compare-mode-same': { mode: RunMode };
  'compare-mode-changed': { before: RunMode; after: RunMode };
  'compare-mode-not-sure': { before: RunMode; after: RunMode };
  'compared-figure': { figure: ComparedKey };
  'compared-share': { mode: Mode };
  'spread-by': { how: SpreadBy };
  'compare-within-runs': Nothing;
  'compare-kinds-differ': Nothing;
  'compare-settings-differ': Nothing;
  'compare-models-differ': Nothing;
  /** Null where a run states no rate. */
  'compare-rates-differ': { beforeHz: number | null; afterHz: number | null };
  'compare-same-file': Nothing;
  'compare-not-ok': { run: Run; status: Status; reason: Message };
  'compare-doubts': { run: Run; doubts: Message[] };
}
