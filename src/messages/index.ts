/**
 * Every sentence the library can say: a code, typed params, one catalogue a language.
 *
 * A sentence of a result stands there as English text with its `{ code, params }` beside it. The code
 * never changes its meaning; a sentence that means something new gets a new code, or a new case of a
 * union among its params.
 *
 * To add a sentence:
 *  1. Name its code and the type of its params in the file of its room under `rooms/`. Params are JSON:
 *     numbers with the unit in their name (`shareOfTime`, `feedMPerMin`), modes by their ids, text of
 *     files and people as strings, `Message` where one sentence holds another. Numbers stay numbers:
 *     how many digits are shown is a matter of the language.
 *  2. Write it in every language: the same room under `english/` and its neighbours. What a language
 *     lacks does not compile, because its rooms are typed by `CatalogueOf<…>`.
 *  3. Say it with `message(code, params)`, `note(code, params)`, `flag(code, share, params)` or, for an
 *     error, `refuse(code, parts)`; where a document holds a string, `said` and `messagesOf` fill the field
 *     `…Message` or `…Messages` beside it.
 *  4. Give an example with its text in `tests/unit/messages/written.ts`.
 *
 * To add a language: a folder beside `english/` with the same rooms and `Words` (how the language writes
 * lists, modes and gases; `numbersWith` writes its numbers), put together by `language(words, catalogue)`.
 * Then `say({ code, params }, language)` says any sentence made here in it, and `retell` those of documents
 * that others may have written, null where the English text has to do.
 */
export { ENGLISH } from './english/index.js';
export { TERM_SETS } from './english/words.js';
export { GERMAN } from './german/index.js';
export { GERMAN_WORDS } from './german/words.js';
export {
  type Catalogue,
  type Language,
  language,
  retell,
  say,
  withTerms,
  withUnits,
} from './language.js';
export { again, flag, type Made, message, messagesOf, note, said, textsOf } from './message.js';
export type { MessageCode, MessageParams, ParamsOf } from './params.js';
export { refuse } from './refuse.js';
export type { CodeRule, Place } from './rooms/checks.js';
export type { CoachParams, ProcessOutcome } from './rooms/coach.js';
export type { ComparedKey, SpreadBy } from './rooms/compare.js';
export type {
  BandGas,
  BandRemark,
  Co2Saying,
  SourceCertainty,
  SourceName,
  Sourcing,
} from './rooms/knowledge.js';
export type { BrowserStep } from './rooms/live.js';
export type { ChoiceName, GasMeaning, QuantityName } from './rooms/refusals.js';
export type { FeatureUnit, SoundFeature, SoundSign, TraceFeature } from './rooms/signs.js';
export type {
  ColumnName,
  GasMix,
  GasName,
  Message,
  Quantity,
  Span,
  VoltsPlace,
} from './terms.js';
export { type CatalogueOf, type Numbers, numbersWith, type Words, type Writer } from './writer.js';
