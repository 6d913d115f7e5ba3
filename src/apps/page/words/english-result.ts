import { verdictWords } from '../../report/index.js';
import {
  MODE_WORDS,
  percent,
  sayConfidence,
  sayLeaning,
  sayRates,
  sayTime,
  sayWhere,
} from '../../view/index.js';
import type { ResultWords } from './words.js';

/** The words of the command line and of its report: one place for both. */
export const ENGLISH_RESULT: ResultWords = {
  mode: (mode) => MODE_WORDS[mode].name,
  verdict: verdictWords,
  confidence: sayConfidence,
  where: sayWhere,
  rates: sayRates,
  leaning: sayLeaning,
  time: sayTime,
  percent,
  said: (text) => ({ text, lang: 'en' }),
  reason: ({ text }) => ({ text, lang: 'en' }),
  answers: { agrees: '✓ Agrees', disagrees: '✗ Disagrees', 'cannot-tell': '? Cannot tell' },
};
