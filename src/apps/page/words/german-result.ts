import type { Result } from '../../../analysis/result/index.js';
import { MODES, type Mode } from '../../../core/index.js';
import { CONFIDENCE_WORDS } from '../../view/index.js';
import { germanReason } from './german-features.js';
import { germanFigure, germanPercent, germanTime } from './german-numbers.js';
import { germanSentence } from './german-sentences.js';
import type { ResultWords } from './words.js';

/** Names of the arc by what it does (common practice in German, no source). */
export const GERMAN_MODES: Record<Mode, string> = {
  'short-circuit': 'Kurzlichtbogen',
  globular: 'Übergangslichtbogen',
  spray: 'Sprühlichtbogen',
  'pulsed-spray': 'Impulslichtbogen',
};

const CONFIDENCE = [
  'fast sicher',
  'sehr wahrscheinlich',
  'wahrscheinlich',
  'eher ja',
  'zweifelhaft',
];

const RATES = [
  ['shortCircuitRateHz', 'Kurzschlüsse'],
  ['dropRateHz', 'Tropfen'],
  ['pulseRateHz', 'Impulse'],
  ['eventRateHz', 'Ereignisse'],
] as const;

function verdict({ status, mode }: Result): string {
  if (status === 'unsure') return 'Unsicher: keine Art wird genannt';
  if (status === 'no-arc') return 'Kein Lichtbogen in dieser Aufnahme';
  if (status === 'failed') return 'Diese Datei ließ sich nicht beurteilen';
  return mode === null || mode === 'mixed' ? 'Gemischter Übergang' : GERMAN_MODES[mode];
}

function where({ arcStretches, shareOfArcTime }: Result): string {
  const first = arcStretches[0];
  const last = arcStretches.at(-1);
  if (!first || !last) return '';
  const arcS = arcStretches.reduce((total, one) => total + one.endS - one.startS, 0);
  const from = first.openStart ? 'vor Beginn der Aufnahme' : germanTime(first.startS);
  const to = last.openEnd ? 'zu ihrem Ende' : germanTime(last.endS);
  const count = arcStretches.length;
  const parts = count > 1 ? ` in ${count} Stücken` : '';
  const shares = Object.entries(shareOfArcTime ?? {})
    .filter(([, share]) => share > 0)
    .sort(([, a], [, b]) => b - a)
    .map(([name, share]) => `${GERMAN_MODES[name as Mode] ?? 'unklar'} ${germanPercent(share)}`);
  const of = shares.length > 0 ? `${shares.join(', ')} von ` : '';
  return `${of}${germanTime(arcS)} Lichtbogen${parts}, von ${from} bis ${to}`;
}

function rates({ features }: Result): string {
  const known = RATES.flatMap(([key, name]) => {
    const value = features[key];
    return typeof value === 'number' ? [{ value, name }] : [];
  });
  return known
    .filter(({ value }, k) => known.findIndex((one) => one.value === value) === k)
    .map(({ value, name }) => `${germanFigure(value)} ${name} je Sekunde`)
    .join(', ');
}

function leaning({ probabilities }: Result): string {
  if (!probabilities) return '';
  const parts = MODES.map((mode) => ({ mode, p: probabilities[mode] ?? 0 }))
    .sort((a, b) => b.p - a.p)
    .map(({ mode, p }) => `${GERMAN_MODES[mode]} ${germanPercent(p)}`);
  return `Neigung: ${parts.join(', ')}.`;
}

/** German words about a result. The bounds of the confidence words are those of the command line. */
export const GERMAN_RESULT: ResultWords = {
  mode: (mode) => GERMAN_MODES[mode],
  verdict,
  confidence: (share) => {
    const row = CONFIDENCE_WORDS.findIndex((one) => share >= one.from);
    return `${CONFIDENCE[row]}, ${germanPercent(share)}`;
  },
  where,
  rates,
  leaning,
  time: germanTime,
  percent: germanPercent,
  said: (text) => {
    const german = germanSentence(text, (id) => GERMAN_MODES[id as Mode] ?? id);
    return german === null ? { text, lang: 'en' } : { text: german, lang: 'de' };
  },
  reason: (reason) => {
    const german = germanReason(reason.feature, reason.text);
    return german === null ? { text: reason.text, lang: 'en' } : { text: german, lang: 'de' };
  },
  answers: { agrees: '✓ Passt', disagrees: '✗ Passt nicht', 'cannot-tell': '? Nicht zu sagen' },
};
