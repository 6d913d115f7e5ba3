import type { Nothing } from '../terms.js';

/** Hazards as listed by ANSI Z49.1:2021 (eyes, burns, fume, shock, noise); local rules come first. */
export interface CautionParams {
  /** Beside every verdict that names or judges an arc. */
  'caution-arc-welding': Nothing;
  'caution-rules-first': Nothing;
  'caution-estimate': Nothing;
  /** Beside every piece of advice. */
  'caution-procedure-first': Nothing;
  'caution-measuring': Nothing;
  'caution-no-inspection': Nothing;
}
