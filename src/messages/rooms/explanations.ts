import type { Mode } from '../../core/index.js';
import type { GasName, Nothing } from '../terms.js';

/** Explanations of a disagreement, by their ids. */
export interface ExplanationParams {
  'recording-cannot-support': Nothing;
  'pulsed-programme-running': Nothing;
  'pulsed-programme-missing': Nothing;
  'controlled-dip-running': Nothing;
  'wrong-gas-for-mode': { wanted: Mode; carries: 'not' | 'perhaps' };
  'gas-mode-conflict': { seen: Mode[]; gas: GasName };
  'drooping-supply': Nothing;
  'lead-loss': Nothing;
  'shielding-lost': { from: Mode; to: Mode; atS: number };
  'even-dip-like-pulses': Nothing;
  'cold-spray': { shorts: boolean };
  'hot-dip': Nothing;
  'wrong-wire': { thicker: boolean };
  stubbing: Nothing;
  'long-arc': Nothing;
  'normal-drop': { wanted: Mode };
  'wrong-polarity': Nothing;
  'long-stick-out': { shown: 'by-current' | 'as-stated' | 'not' };
  'feed-trouble': Nothing;
  'wrong-setting': { how: 'suits-another'; seen: Mode; wanted: Mode } | { how: 'not-as-stated' };
  'set-voltage-uncertain': { open: Mode[] };
  'transition-zone': { open: Mode[] };
  'gas-not-as-stated': { gasStated: boolean };
}
