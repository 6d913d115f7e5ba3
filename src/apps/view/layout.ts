/** How a terminal text is laid out and painted. */
export interface Look {
  /** Columns at hand; text is wrapped to them. */
  width: number;
  paint: Paint;
}

/** Colour is always beside a word, letter or shape, never alone; {@link NO_PAINT} leaves it out. */
export interface Paint {
  bold(text: string): string;
  dim(text: string): string;
  good(text: string): string;
  warn(text: string): string;
  bad(text: string): string;
  mode(mode: string, text: string): string;
}

const same = (text: string): string => text;

/** No colour at all: for files, pipes and `NO_COLOR`. */
export const NO_PAINT: Paint = {
  bold: same,
  dim: same,
  good: same,
  warn: same,
  bad: same,
  mode: (_mode, text) => text,
};

/** Words; a number and its unit count as one, so that no line begins with a lonely `s`. */
function wordsOf(text: string): string[] {
  const words: string[] = [];
  for (const part of text.split(/\s+/).filter((one) => one !== '')) {
    const last = words.at(-1);
    const unit = /^(s|min|h|V|A|Hz|kHz|mm|%)[,.;:)]*$/.test(part);
    if (unit && last !== undefined && /\d$/.test(last)) words[words.length - 1] = `${last} ${part}`;
    else words.push(part);
  }
  return words;
}

/** Words wrapped to the width, later lines indented by `hang` spaces more than `indent`. A longer word stands alone. */
export function wrap(text: string, width: number, indent = 0, hang = 0): string[] {
  const lines: string[] = [];
  let line = ' '.repeat(indent);
  let empty = true;
  for (const word of wordsOf(text)) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = ' '.repeat(indent + hang);
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  if (!empty) lines.push(line);
  return lines;
}
