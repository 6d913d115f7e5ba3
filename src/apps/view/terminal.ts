import type { Result } from '../../analysis/result/index.js';
import { headline, sourceLine } from './headline.js';
import { type Look, wrap } from './layout.js';
import {
  crossCheckLines,
  explainLines,
  noteLines,
  qualityLines,
  reasonLines,
  type SaidLook,
} from './sections.js';
import { type EventRates, timelineBar } from './timeline-bar.js';

/** How much is said: `explain` adds every reason, the settings in force and the steps taken. */
export interface TerminalOptions extends SaidLook {
  explain?: boolean;
  /** For one of several inputs: the two strongest reasons, and counts where lists would stand. */
  brief?: boolean;
  /** False where the same cautions follow once for several inputs. */
  cautions?: boolean;
  /** Event rate over time, for the picture. */
  rates?: EventRates | undefined;
}

/**
 * A result as text for a terminal: the verdict first, then the evidence, the cross-check, what to
 * check next, the cautions. Ends with a line end.
 */
export function terminalText(result: Result, options: TerminalOptions): string {
  const brief = options.brief ?? false;
  const blocks = [
    [...sourceLine(result, options), '', ...headline(result, options)],
    result.status === 'failed' ? [] : timelineBar(result, options, options.rates),
    reasonLines(result, options, options.explain ? result.reasons.length : brief ? 2 : 5),
    ...(brief
      ? [briefLine(result, options)]
      : [qualityLines(result, options), noteLines(result, options)]),
    crossCheckLines(result, options, brief ? 1 : 3),
    options.explain ? explainLines(result, options) : [],
    options.cautions === false ? [] : cautionLines(cautionsOf(result), options),
  ];
  return `${blocks
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n')}\n`;
}

/** What must be said with this result: the cautions of the advice where advice is given, else its own. */
export function cautionsOf(result: Result): readonly string[] {
  const advice = result.crossCheck;
  const given = advice && (advice.explanations.length > 0 || (advice.advice ?? []).length > 0);
  if (given && advice.cautions) return advice.cautions;
  return result.cautions;
}

/** The cautions as a block of their own; empty for none. */
export function cautionLines(cautions: readonly string[], look: Look): string[] {
  if (cautions.length === 0) return [];
  return [
    look.paint.bold('Caution'),
    ...cautions.flatMap((text) =>
      wrap(`- ${text}`, look.width, 2, 2).map((line) => look.paint.dim(line)),
    ),
  ];
}

/** Stands for the lists of doubts and assumptions where several runs are shown. */
function briefLine(result: Result, look: Look): string[] {
  const doubts = result.quality.length;
  const notes = result.source.notes.length;
  if (doubts + notes === 0) return [];
  const text = `Doubts about the recording: ${doubts}; assumed while reading: ${notes} (judge it alone, or add --explain, to see them)`;
  return wrap(text, look.width, 2).map((line) => look.paint.dim(line));
}
