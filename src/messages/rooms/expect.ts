import type { GasName, Nothing, Span } from '../terms.js';

/** Notes on what a set-up permits, without any recording. */
export interface ExpectParams {
  'spray-disputed-below': { gas: GasName };
  'material-taken': Nothing;
  'only-set-voltage': { feederV: Span };
  'thin-wire-drops': Nothing;
  'plate-thick-for-short-circuit': Nothing;
  'heat-input-method': Nothing;
}
