/**
 * Words that may stand on a German page as they stand on an English one: the same in both languages, signs
 * and units, titles of books, and the names of figures in the result document.
 */
const SAME = new Set(
  `globular median moment phase gas aluminium argon helium hand was min iso
   welding principles and practices modern practical today api asme aws`.split(/\s+/),
);

/** Texts that a page shows or reads out: between its tags, and in labels. */
export function textsOf(markup: string): string[] {
  const labels = [...markup.matchAll(/ (?:aria-label|aria-roledescription|label)="([^"]*)"/g)];
  const shown = markup.split(/<[^>]*>/g);
  return [...shown, ...labels.map((one) => one[1]!)]
    .map((one) => one.trim())
    .filter((one) => /\p{L}/u.test(one));
}

/** Words of three letters or more, without names such as `shortRateHz` and ends of them such as `…Share`. */
function wordsOf(texts: readonly string[]): Set<string> {
  const found = texts.flatMap((one) => one.match(/…?[\p{L}\d]{3,}/gu) ?? []);
  return new Set(
    found.filter((one) => !/…|\d|[a-z][A-Z]/.test(one)).map((one) => one.toLowerCase()),
  );
}

/** Words of the English texts that stand in the German ones too. */
export function englishLeft(english: readonly string[], german: readonly string[]): string[] {
  const known = wordsOf(english);
  return [...wordsOf(german)].filter((one) => known.has(one) && !SAME.has(one)).sort();
}
