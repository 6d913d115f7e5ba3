import { longArc, stubbing } from './arc-length.js';
import { coldSpray, hotDip } from './cold-or-hot.js';
import { feedTrouble } from './feed-trouble.js';
import type { ExplanationRule } from './finding.js';
import { gasModeConflict, gasNotAsStated, wrongGasForMode } from './gas-reasons.js';
import { longStickOut, wrongPolarity } from './low-current.js';
import { recordingCannotSupport } from './recording-cannot-support.js';
import { setVoltageUncertain } from './set-voltage-uncertain.js';
import { shieldingLost } from './shielding-lost.js';
import {
  controlledDipRunning,
  pulsedProgrammeMissing,
  pulsedProgrammeRunning,
} from './source-programme.js';
import { transitionZone } from './transition-zone.js';
import { droopingSupply, leadLoss, normalDrop } from './voltage-losses.js';
import { wrongSetting } from './wrong-setting.js';
import { wrongWire } from './wrong-wire.js';

export type { Diagnosis, ExplanationRule, Finding } from './finding.js';

/** Every explanation, in the order that decides between equals. Ids are stable. */
export const EXPLANATION_RULES: readonly ExplanationRule[] = [
  recordingCannotSupport,
  pulsedProgrammeRunning,
  pulsedProgrammeMissing,
  controlledDipRunning,
  wrongGasForMode,
  gasModeConflict,
  droopingSupply,
  leadLoss,
  shieldingLost,
  coldSpray,
  hotDip,
  stubbing,
  longArc,
  normalDrop,
  wrongPolarity,
  wrongWire,
  longStickOut,
  feedTrouble,
  wrongSetting,
  setVoltageUncertain,
  transitionZone,
  gasNotAsStated,
];
