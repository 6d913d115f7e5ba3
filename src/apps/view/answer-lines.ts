import type { AnswerView } from './answer.js';
import { type Look, wrap } from './layout.js';
import { plain } from './plain.js';
import type { LocalizedText, Words } from './words/words.js';

/** Wanted against what came, then the one thing to do: right below the answer. */
export function wantedLines({ wanted, todo }: AnswerView, words: Words, look: Look): string[] {
  const { paint } = look;
  const lines: string[] = [];
  if (wanted) {
    const paints = { right: paint.good, wrong: paint.bad, open: paint.warn };
    const { sign, name, answer, words: said } = wanted;
    const head = `${words.answer.wanted} ${name.toUpperCase()} ${sign}`;
    lines.push(`  ${paints[answer](paint.bold(head))}   ${said}`);
  }
  if (todo) {
    lines.push('', ...wrap(plain(todo.text.text), look.width, 2, 2).map(paint.bold));
    lines.push(...wrap(todo.procedure, look.width, 2));
  }
  return lines;
}

/** What fits and what does not, in a welder's words; `more` says where the figures are. */
export function plainReasonLines(
  { reasons }: AnswerView,
  look: Look,
  more: string | null,
): string[] {
  const { fits, against } = reasons;
  const list = (items: readonly LocalizedText[]): string[] =>
    items.flatMap(({ text }) => wrap(`- ${plain(text)}`, look.width, 2, 2));
  return [
    ...(fits ? [look.paint.bold(fits.title), ...list(fits.list)] : []),
    ...(against
      ? [
          look.paint.bold(against.title),
          ...list(against.list),
          ...wrap(against.weighed, look.width, 2),
        ]
      : []),
    ...(more !== null && (fits || against) ? wrap(more, look.width, 2).map(look.paint.dim) : []),
  ];
}

/** How far the answer can be trusted. */
export function trustLines({ trust }: AnswerView, words: Words, look: Look): string[] {
  if (trust.length === 0) return [];
  return [
    look.paint.bold(words.answer.trust.heading),
    ...trust.flatMap(({ text }) => wrap(plain(text), look.width, 2, 2)),
  ];
}
