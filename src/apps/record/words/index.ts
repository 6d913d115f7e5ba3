import { ENGLISH_RECORD } from './english.js';
import { GERMAN_RECORD } from './german.js';
import type { RecordWords } from './words.js';

/** What a record says in a language; English where it has no words of its own. */
export function recordWords(lang: string): RecordWords {
  return lang === 'de' ? GERMAN_RECORD : ENGLISH_RECORD;
}
export type { RecordWords } from './words.js';
