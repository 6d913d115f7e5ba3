import type { NumberWords, PictureWords } from '../../report/index.js';
import { GERMAN_MAP } from './german-map.js';
import { bis, comma, germanFigure } from './german-numbers.js';
import { PLACE, REASONS, SHAPE } from './german-picture-parts.js';
import { TIME } from './german-picture-time.js';
import { GERMAN_RESULT } from './german-result.js';

/** What the evidence names, by its English name. */
const NAMES: Readonly<Record<string, string>> = {
  sound: 'Ton',
  voltage: 'Spannung',
  current: 'Strom',
  'of full scale': 'vom Vollausschlag',
  'share of the mean': 'Anteil des Mittels',
  'short circuits': 'Kurzschlüsse',
  'steps of the voltage as drops leave': 'Spannungsstufen der Tropfen',
  pulses: 'Impulse',
  'acoustic events': 'Ereignisse im Ton',
  arc: 'Lichtbogen',
  'short circuit': 'Kurzschluss',
  'just after': 'gleich danach',
};

const NUMBERS: NumberWords = {
  figure: (value) => (value === null || !Number.isFinite(value) ? '–' : germanFigure(value)),
  percent: GERMAN_RESULT.percent,
  time: GERMAN_RESULT.time,
  decimal: comma,
  range: bis,
};

/** The pictures of a run in German. */
export const GERMAN_PICTURES: PictureWords = {
  lang: 'de',
  numbers: NUMBERS,
  mode: GERMAN_RESULT.mode,
  notClear: 'nicht klar',
  name: (english) => NAMES[english] ?? english,
  said: GERMAN_RESULT.said,
  reason: GERMAN_RESULT.reason,
  titles: {
    time: 'Der Versuch im Verlauf',
    map: GERMAN_MAP.title,
    place: 'Wo dieser Versuch liegt',
    reasons: 'Was dafür und was dagegen sprach',
    levels: 'Wie lange die Spannung wo stand',
    plane: 'Spannung über Strom nach Phasen',
    'short-voltage': 'Der typische Kurzschluss: Spannung',
    'short-current': 'Der typische Kurzschluss: Strom',
    rhythm: 'Takt',
    intervals: 'Abstände zwischen Ereignissen',
  },
  time: TIME,
  shape: SHAPE,
  place: PLACE,
  map: GERMAN_MAP,
  reasons: REASONS,
};
