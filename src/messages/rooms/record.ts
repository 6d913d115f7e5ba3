import type { Mode } from '../../core/index.js';
import type { Nothing, VoltsPlace } from '../terms.js';

/** A figure that a procedure limits. */
export type LimitedQuantity =
  | 'volts'
  | 'amperes'
  | 'wireFeed'
  | 'travelSpeed'
  | 'stickOut'
  | 'heatInput';

/** What a procedure fixes by a word. */
export type FixedQuantity =
  | 'wire'
  | 'material'
  | 'gas'
  | 'polarity'
  | 'source'
  | 'position'
  | 'plate';

type Place = Exclude<VoltsPlace, 'set' | 'trace'>;

/** A run held against its procedure: why something is not judged, and what figures rest on. */
export interface RecordParams {
  'record-no-weld': Nothing;
  'record-mode-not-named': Nothing;
  /** The shares leave open whether the least share was reached. */
  'record-share-open': { wantedShare: number; unclearShare: number };
  'record-departure': { mode: Mode; startS: number; lengthS: number };
  'record-sound-shows-no': { quantity: 'volts' | 'amperes' };
  'record-trace-lacks': { quantity: 'volts' | 'amperes' };
  'record-place-not-stated': { at: Place };
  'record-other-place': { place: Place; at: Place };
  'record-not-stated': { what: LimitedQuantity | FixedQuantity };
  'record-programme-not-seen': Nothing;
  /** A dip that the source controls, where the procedure knows steady and pulsed. */
  'record-programme-neither': Nothing;
  'record-needs-travel': Nothing;
  'record-needs-power': Nothing;
  'record-needs-feed': Nothing;
  /** `differenceShare`: mean power over the product of the means, less 1. */
  'record-power-difference': { differenceShare: number };
  'record-power-same': Nothing;
  'record-by-means': Nothing;
  'record-steady-part': Nothing;
  'record-no-qualification': Nothing;
  /** Said of a result: what was stated lies outside the procedure. */
  'outside-procedure': { what: FixedQuantity; stated: string; allowed: string };
}
