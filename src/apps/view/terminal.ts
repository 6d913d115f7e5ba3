import type { Result } from '../../analysis/result/index.js';
import { viewAnswer } from './answer.js';
import { plainReasonLines, trustLines, wantedLines } from './answer-lines.js';
import { headline, sourceLine } from './headline.js';
import { type Look, wrap } from './layout.js';
import { viewResult } from './result-view.js';
import {
  cautionLines,
  conditionLines,
  crossCheckLines,
  explainLines,
  noteLines,
  qualityLines,
  reasonLines,
} from './sections.js';
import { type EventRates, timelineBar } from './timeline-bar.js';
import { visibleWithin } from './visible.js';
import { ENGLISH, type Words } from './words/index.js';

/** How much is said: `explain` adds every reason, the settings in force and the steps taken. */
export interface TerminalOptions extends Look {
  explain?: boolean;
  /** For one of several inputs: the answer, and counts where lists would stand. */
  brief?: boolean;
  /** False where the same cautions follow once for several inputs. */
  cautions?: boolean;
  /** Event rate over time, for the picture. */
  rates?: EventRates | undefined;
  /** English unless told. */
  words?: Words | undefined;
}

/**
 * A result as text for a terminal: the verdict first, then the evidence, the cross-check, what to
 * check next, the cautions. Ends with a line end.
 */
export function terminalText(given: Result, options: TerminalOptions): string {
  // Names of files and columns come from elsewhere, and a terminal obeys what is in them.
  const result = visibleWithin(given);
  const { brief = false, explain = false, words = ENGLISH } = options;
  const { terminal } = words;
  const view = viewResult(result, words);
  const answer = viewAnswer(result, words);
  const blocks = [
    [
      ...sourceLine(view, options),
      '',
      ...headline(view, result, words, options),
      ...wantedLines(answer, words, options),
    ],
    result.status === 'failed'
      ? []
      : [
          ...timelineBar(result, options, options.rates, words),
          ...wrap(answer.strip?.said ?? '', options.width, 2),
        ],
    brief ? [] : plainReasonLines(answer, options, explain ? null : words.answer.explain),
    explain ? reasonLines(view, terminal, options) : [],
    conditionLines(view, words.result, options, explain),
    ...(brief
      ? [briefLine(result, words, options)]
      : [
          trustLines(answer, words, options),
          explain ? qualityLines(view, terminal, options) : [],
          noteLines(view, terminal, options),
        ]),
    crossCheckLines(view, terminal, options, brief ? 1 : 3, answer),
    explain ? explainLines(view, result, words, options) : [],
    options.cautions === false ? [] : cautionLines(view.cautions, terminal, options),
  ];
  return `${blocks
    .filter((block) => block.length > 0)
    .map((block) => block.join('\n'))
    .join('\n\n')}\n`;
}

/** Stands for the lists of doubts and assumptions where several runs are shown. */
function briefLine({ quality, source }: Result, { terminal }: Words, look: Look): string[] {
  if (quality.length + source.notes.length === 0) return [];
  const text = terminal.brief(quality.length, source.notes.length);
  return wrap(text, look.width, 2).map((line) => look.paint.dim(line));
}
