/** Control characters but for tab and line feed, and marks that turn the direction of writing. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const HIDDEN = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g;

/** A text in which control characters show as `\x1b`: a file may have any name, and a terminal obeys them. */
export function visible(text: string): string {
  return text.replace(HIDDEN, (letter) => {
    const code = letter.codePointAt(0)!.toString(16);
    return code.length > 2 ? `\\u${code.padStart(4, '0')}` : `\\x${code.padStart(2, '0')}`;
  });
}

/** The same for every text within a plain document, names of fields left as they are. */
export function visibleWithin<T>(value: T): T {
  if (typeof value === 'string') return visible(value) as T;
  if (Array.isArray(value)) return value.map(visibleWithin) as T;
  if (value === null || typeof value !== 'object') return value;
  const entries = Object.entries(value).map(([key, one]) => [key, visibleWithin(one)]);
  return Object.fromEntries(entries) as T;
}
