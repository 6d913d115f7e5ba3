import type { Comparison } from '../../../analysis/compare/index.js';
import {
  type ChangeView,
  type Look,
  plain,
  viewComparison,
  visibleWithin,
  type Words,
  wrap,
} from '../../view/index.js';

/** The answer of `arc-transfer compare` for a terminal. */
export function comparisonText(
  given: Comparison,
  look: Look,
  words: Words,
  against: 'before' | 'reference' = 'before',
): string {
  const view = viewComparison(visibleWithin(given), words, against);
  const { bold, dim } = look.paint;
  const { compare } = words;
  const width = Math.max(...view.heads.map((one) => one.length)) + 2;
  const head = (name: string): string => bold(name) + ' '.repeat(width - name.length);
  return `${[
    ...view.heads.map((name, k) => `${head(name)}${plain(view.paths[k]!)}`),
    '',
    `${bold(compare.mode)}  ${view.mode.answer}`,
    ...wrap(view.mode.text.text, look.width, 2),
    '',
    bold(view.headline),
    ...view.changes.flatMap((change) => changeLines(change, look, words)),
    ...conditionLines(view.condition, look, words),
    ...(view.trends.length === 0 ? [] : ['', bold(compare.overEachRun)]),
    ...view.trends.flatMap((line) => wrap(line, look.width, 2, 2)),
    '',
    ...view.notes.flatMap(({ text }) => wrap(plain(text), look.width, 2)),
    '',
    ...view.cautions.flatMap(({ text }) => wrap(text, look.width, 2)).map(dim),
  ].join('\n')}\n`;
}

function changeLines(change: ChangeView, look: Look, words: Words): string[] {
  const { bold, dim } = look.paint;
  const { mark, label, before, after, unit, relative, spread, moreThanChance } = change;
  const line = words.compare.change(label.text, before, after, unit);
  const head = `${mark} ${line}${relative === '' ? '' : ` (${relative})`}`;
  return [
    ...wrap(moreThanChance === true ? bold(head) : head, look.width, 2, 2),
    ...wrap(spread, look.width, 6).map(dim),
  ];
}

/** What is rated the same in both is counted only. */
function conditionLines(
  rows: ReturnType<typeof viewComparison>['condition'],
  look: Look,
  words: Words,
): string[] {
  if (rows.length === 0) return [];
  const differing = rows.filter((one) => one.differs);
  return [
    '',
    look.paint.bold(words.result.condition.heading),
    ...differing.map(
      ({ name, before, after }) => `  → ${words.compare.change(name, before, after, '')}`,
    ),
    `  ${words.compare.sameRatings(rows.length - differing.length, rows.length)}`,
  ];
}
