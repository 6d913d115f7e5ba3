/** English words that no German word is written like (from memory of both languages). */
const ENGLISH =
  /\b(the|of|and|or|is|are|with|from|to|not|for|by|at|on|were|be|been|which|that|this|than|it|its|no|only|more|less|above|below|between|under|over|arc|weld|welding|wire|feed|current|voltage|short|shorts|circuit|spray|pulsed|mode|run|recording|sound|trace|share|time|rate|source|setting|settings|setup|read|as|if|but|one|two|confidence|likely|doubt|none|unknown|any|gas mix|table|value|values|volts|amperes|drops|pulses|events)\b/gi;

/**
 * What is cited or repeated as it stands: titles of works, what a file or a person wrote, the names of
 * figures in the result document, and options of the command line.
 */
const CITED =
  /„[^“]*“|“[^”]*”|--[a-z-]+(?: <[a-z]+>)?|…\w+|\b(?:Practical Welding Today|Welding: Principles and Practices|Modern Welding|MIG Welding Handbook|AWS Welding Handbook)\b|Welding J\.|Weld\. World|0,045 in\b/g;

/** English words in a text that should be German. */
export function englishIn(german: string): string[] {
  return german.replaceAll(CITED, '').match(ENGLISH) ?? [];
}

/** Texts that a page shows or reads out: between its tags, and in labels. */
export function textsOf(markup: string): string[] {
  const labels = [...markup.matchAll(/ (?:aria-label|aria-roledescription|label)="([^"]*)"/g)];
  const shown = markup.split(/<[^>]*>/g);
  return [...shown, ...labels.map((one) => one[1]!)]
    .map((one) => one.trim())
    .filter((one) => /\p{L}/u.test(one));
}
