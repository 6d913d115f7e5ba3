import { ENGLISH, retell } from '../../messages/index.js';
import type { LocalizedText, Words } from './words/words.js';

/** A sentence by its code; absent in documents of version 1.0. */
export type Coded =
  | { code?: string | undefined; params?: Record<string, unknown> | undefined }
  | null
  | undefined;

/** Sentences that repeat what somebody wrote, in whatever language that was. */
const AS_WRITTEN: readonly string[] = ['in-words'];

/**
 * A sentence of a document in a language: its English text as it stands there, or said anew by its code.
 * What holds no code, or one that this version does not know, keeps its text and is marked as English.
 */
export function tell(
  text: string,
  coded: Coded,
  { lang, sentences }: Pick<Words, 'lang' | 'sentences'>,
): LocalizedText {
  // Documents hold the sentences of plain English; other units or names of the modes ask for them anew.
  const asItStands = sentences === ENGLISH || !coded || AS_WRITTEN.includes(coded.code ?? '');
  if (asItStands) return { text, lang: 'en' };
  const said = retell(coded, sentences);
  return said === null ? { text, lang: 'en' } : { text: said, lang };
}

/** The same for a list of texts with the list of codes beside it. */
export function tellAll(
  texts: readonly string[],
  coded: readonly Coded[] | undefined,
  words: Pick<Words, 'lang' | 'sentences'>,
): LocalizedText[] {
  return texts.map((text, k) => tell(text, coded?.[k], words));
}
