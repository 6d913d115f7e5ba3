import type { Result } from '../../analysis/result/index.js';
import { MODE_LETTERS } from '../../setup/index.js';
import { type Look, wrap } from './layout.js';
import { plain } from './plain.js';
import type { ResultView } from './result-view.js';
import type { Words } from './words/words.js';

/** What was judged: name, kind, format, rate and length, on one line where it fits. */
export function sourceLine({ file, facts }: ResultView, look: Look): string[] {
  const name = plain(file);
  const line = facts.join(', ');
  return beside(look.paint.bold(name), name.length, look.paint.dim(line), line, look);
}

/** Two painted texts on one line, or below each other where they don't fit. */
function beside(
  left: string,
  leftWidth: number,
  right: string,
  rightPlain: string,
  look: Look,
): string[] {
  if (rightPlain === '') return [left];
  if (leftWidth + 3 + rightPlain.length <= look.width) return [`${left}   ${right}`];
  return [left, `  ${right}`];
}

/** The verdict itself, to be read in five seconds. */
export function headline(
  { verdict }: ResultView,
  result: Result,
  words: Words,
  look: Look,
): string[] {
  const { status } = verdict;
  const why = wrap(plain(verdict.why.text), look.width, 2);
  const lines = [
    ...wrap(verdict.where, look.width, 2),
    ...(verdict.rates === '' ? [] : [`  ${verdict.rates}`]),
  ];
  if (status === 'ok') return [...named(verdict, look), ...lines];
  if (status !== 'unsure') return [...unnamed(status, words, look), ...why];
  return [
    ...unnamed(status, words, look, verdict.remaining),
    ...why,
    ...wrap(verdict.leaning ?? '', look.width, 2),
    ...wrap(plain(verdict.settle?.text ?? ''), look.width, 2),
    ...(mayBeAnArc(result) ? wrap(words.terminal.knownArc, look.width, 2) : []),
    ...lines,
  ];
}

function unnamed(
  status: Exclude<Result['status'], 'ok'>,
  words: Words,
  look: Look,
  remaining: string | null = null,
): string[] {
  const { bold, warn, bad } = look.paint;
  const { short, rest } = words.result.headlines[status];
  const paint = status === 'failed' ? bad : warn;
  const title = (remaining ?? short).toUpperCase();
  return [`  ${paint(bold(title))}   ${remaining === null ? rest : words.result.noSingle}`];
}

/** Leans to a mode, but no arc interval was taken as an arc. */
function mayBeAnArc({ source, segments, probabilities }: Result): boolean {
  return source.kind === 'sound' && segments.length === 0 && probabilities !== null;
}

function named({ mode, headline: words, sure }: ResultView['verdict'], look: Look): string[] {
  const { paint } = look;
  const letter = mode === null ? '' : ` (${MODE_LETTERS[mode]})`;
  const title = `${words.toUpperCase()}${letter}`;
  const painted = `  ${paint.bold(mode === null ? title : paint.mode(mode, title))}`;
  return beside(painted, title.length + 2, sure ?? '', sure ?? '', look);
}
