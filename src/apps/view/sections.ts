import type { Result } from '../../analysis/result/index.js';
import type { AnswerView } from './answer.js';
import { type Look, wrap } from './layout.js';
import { plain } from './plain.js';
import type { CheckView, ResultView } from './result-view.js';
import type { LocalizedText, ResultWords, TerminalWords, Words } from './words/words.js';

/** What spoke for which mode, strongest first. */
export function reasonLines({ reasons }: ResultView, words: TerminalWords, look: Look): string[] {
  if (reasons.length === 0) return [];
  const lines = reasons.flatMap(({ mode, side, text }) =>
    wrap(`${mode === null ? '' : `${side}: `}${plain(text.text)}`, look.width, 2, 2),
  );
  return [look.paint.bold(words.why), ...lines];
}

/** What is off in the arc beside its mode, and how much is as usual; all of it and what is usual where `all`. */
export function conditionLines(
  { condition }: ResultView,
  { condition: words }: ResultWords,
  look: Look,
  all: boolean,
): string[] {
  if (!condition) return [];
  const { paint } = look;
  const marks = {
    good: paint.good,
    watch: paint.warn,
    // Capitals, so that it is seen without colour.
    bad: (said: string) => paint.bad(said.toUpperCase()),
  };
  const shown = condition.items.filter((one) => all || one.rating !== 'good');
  // That the one thing a sound shows is as usual says little.
  if (shown.length === 0 && condition.items.length === 1) return [];
  return [
    paint.bold(words.heading),
    ...shown.flatMap(({ name, rating, words: said, text, usual }) => [
      ...wrap(`${name}, ${marks[rating](said)}: ${plain(text.text)}`, look.width, 2, 2),
      ...(all ? wrap(plain(usual.text), look.width, 4).map((line) => paint.dim(line)) : []),
    ]),
    ...wrap(condition.good, look.width, 2).map((line) => paint.dim(line)),
    ...(all ? condition.notJudged : []).flatMap(({ text }) =>
      wrap(plain(text), look.width, 2, 2).map((line) => paint.dim(line)),
    ),
  ];
}

/** What makes the evidence weaker. */
export function qualityLines({ doubts }: ResultView, words: TerminalWords, look: Look): string[] {
  if (doubts.length === 0) return [];
  return [
    look.paint.bold(words.doubts),
    ...doubts.flatMap(({ text, share }) =>
      wrap(`${plain(text.text)} (${share})`, look.width, 2, 2),
    ),
  ];
}

/** What was assumed while reading. */
export function noteLines({ notes }: ResultView, words: TerminalWords, look: Look): string[] {
  if (notes.length === 0) return [];
  return [
    look.paint.bold(words.assumed),
    ...notes.flatMap(({ text }) => wrap(plain(text), look.width, 2, 2)),
  ];
}

/**
 * The stated set-up against the verdict, and what to check next, the `most` likely first.
 * What stands below the answer already is not said again.
 */
export function crossCheckLines(
  view: ResultView,
  words: TerminalWords,
  look: Look,
  most: number,
  { todo, rest }: Pick<AnswerView, 'todo' | 'rest'>,
): string[] {
  const { settings, qualification, remarks, next } = view;
  if (!settings) return [];
  const lines = [
    look.paint.bold(words.against),
    ...judged(words.settings, settings, look),
    ...[...qualification, ...remarks].flatMap(({ text }) => wrap(plain(text), look.width, 4)),
  ];
  if (rest.length > 0) lines.push('', look.paint.bold(words.whatToChange));
  for (const { text } of rest) lines.push(...wrap(plain(text), look.width, 2, 2));
  if (next.length === 0) return lines;
  lines.push('', look.paint.bold(words.checkNext));
  for (const [index, { check, because }] of next.slice(0, most).entries()) {
    const why = plain(because.text);
    if (check.text === todo?.text.text) {
      lines.push(...wrap(`${index + 1}. ${why}`, look.width, 2, 3));
      continue;
    }
    lines.push(...wrap(`${index + 1}. ${plain(check.text)}`, look.width, 2, 3));
    lines.push(...wrap(why, look.width, 5).map((line) => look.paint.dim(line)));
  }
  return lines;
}

/** A disagreement stands in capitals, so that it is seen without colour. */
function judged(title: string, { answer, words, text }: CheckView, look: Look): string[] {
  const { paint } = look;
  const marks = {
    agrees: () => paint.good(words.toLowerCase()),
    disagrees: () => paint.bad(words.toUpperCase()),
    'cannot-tell': () => paint.warn(words.toLowerCase()),
  };
  return [`  ${title}: ${marks[answer]()}`, ...wrap(plain(text.text), look.width, 4)];
}

/** Settings in force, model and steps. */
export function explainLines(
  view: ResultView,
  { settings, model, tool }: Result,
  { terminal: words }: Words,
  look: Look,
): string[] {
  const values = Object.entries(settings.values).map(([key, value]) => `${key} ${String(value)}`);
  const used = words.settingsUsed(settings.fingerprint, values.join(', '));
  return [
    look.paint.bold(words.how),
    ...wrap(`${tool.name} ${tool.version}`, look.width, 2, 2),
    ...(model
      ? wrap(words.model(`${model.id} ${model.version} (${model.fingerprint})`), look.width, 2)
      : []),
    ...wrap(used, look.width, 2, 2),
    ...view.steps.flatMap(({ step, detail }) =>
      wrap(`${step}: ${plain(detail.text)}`, look.width, 2, 2),
    ),
  ];
}

/** The cautions as a block of their own; empty for none. */
export function cautionLines(
  cautions: readonly LocalizedText[],
  words: TerminalWords,
  look: Look,
): string[] {
  if (cautions.length === 0) return [];
  return [
    look.paint.bold(words.caution),
    ...cautions.flatMap(({ text }) =>
      wrap(`- ${text}`, look.width, 2, 2).map((line) => look.paint.dim(line)),
    ),
  ];
}
