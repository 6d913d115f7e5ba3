import { ENGLISH_MAP, figure, MODE_WORDS, percent, sayTime } from '../view/index.js';
import { PLACE, REASONS, SHAPE, TIME, to } from './english-parts.js';
import type { PictureWords } from './words.js';

/** The words of the command line: the pictures of a report are in English. */
export const ENGLISH_PICTURES: PictureWords = {
  lang: 'en',
  numbers: { figure, percent, time: sayTime, decimal: (digits) => digits, range: to },
  mode: (mode) => MODE_WORDS[mode].name,
  notClear: 'not clear',
  name: (english) => english,
  said: (text) => ({ text, lang: 'en' }),
  reason: ({ text }) => ({ text, lang: 'en' }),
  titles: {
    time: 'The run over time',
    map: ENGLISH_MAP.title,
    place: 'Where this run sits',
    reasons: 'What spoke for and against',
    levels: 'How long the voltage stood where',
    plane: 'Voltage over current by phase',
    'short-voltage': 'The typical short circuit: voltage',
    'short-current': 'The typical short circuit: current',
    rhythm: 'Rhythm',
    intervals: 'Intervals between events',
  },
  time: TIME,
  shape: SHAPE,
  place: PLACE,
  map: ENGLISH_MAP,
  reasons: REASONS,
};
