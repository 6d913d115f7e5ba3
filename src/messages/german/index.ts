import { type Language, language } from '../language.js';
import { CAUTIONS } from './cautions.js';
import { CHECKS } from './checks.js';
import { COACH } from './coach.js';
import { COMPARE } from './compare.js';
import { CONDITION } from './condition.js';
import { EVIDENCE } from './evidence.js';
import { EXPECT } from './expect.js';
import { EXPLANATIONS } from './explanations.js';
import { KNOWLEDGE } from './knowledge.js';
import { DOUBTS, LIVE } from './live.js';
import { LOGS } from './logs.js';
import { MODE_USE } from './mode-use.js';
import { NEXT } from './next.js';
import { OTHER } from './other.js';
import { PAIR } from './pair.js';
import { QUALITY } from './quality.js';
import { RECORD } from './record.js';
import { RECORDING } from './recording.js';
import { EXPECTED, REFUSALS, REMEDIES } from './refusals.js';
import { SETUP } from './setup.js';
import { SIGNS } from './signs.js';
import { STEPS } from './steps.js';
import { SUSPICIONS } from './suspicions.js';
import { VERDICT } from './verdict.js';
import { WATCH } from './watch.js';
import { GERMAN_WORDS } from './words.js';

/** German, as a welding instructor writes it. */
export const GERMAN: Language = language(GERMAN_WORDS, {
  ...VERDICT,
  ...PAIR,
  ...CAUTIONS,
  ...QUALITY,
  ...RECORDING,
  ...LOGS,
  ...SUSPICIONS,
  ...SIGNS,
  ...OTHER,
  ...SETUP,
  ...REFUSALS,
  ...EXPECTED,
  ...REMEDIES,
  ...KNOWLEDGE,
  ...EXPECT,
  ...CHECKS,
  ...RECORD,
  ...MODE_USE,
  ...EXPLANATIONS,
  ...EVIDENCE,
  ...NEXT,
  ...STEPS,
  ...LIVE,
  ...DOUBTS,
  ...COMPARE,
  ...WATCH,
  ...COACH,
  ...CONDITION,
});
