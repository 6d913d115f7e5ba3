import type { Change, Comparison } from '../../../analysis/compare/index.js';
import { BEFORE_YOU_CHANGE, BEFORE_YOU_CHANGE_MESSAGES } from '../../../setup/index.js';
import { type Look, plain, tell, tellAll, type Words, wrap } from '../../view/index.js';

/** The answer of `arc-transfer compare` for a terminal. */
export function comparisonText(comparison: Comparison, look: Look, words: Words): string {
  const { before, after, mode, changes, trends, notes, noteMessages } = comparison;
  const { bold, dim } = look.paint;
  const { compare } = words;
  const heads = [compare.before, compare.after];
  const width = Math.max(...heads.map((one) => one.length)) + 2;
  const head = (name: string): string => bold(name) + ' '.repeat(width - name.length);
  const clear = changes.filter((one) => one.moreThanChance === true);
  const cautions = tellAll(BEFORE_YOU_CHANGE, BEFORE_YOU_CHANGE_MESSAGES, words);
  return `${[
    `${head(compare.before)}${plain(before.path)}`,
    `${head(compare.after)}${plain(after.path)}`,
    '',
    `${bold(compare.mode)}  ${compare.answers[mode.answer]}`,
    ...wrap(tell(mode.text, mode, words).text, look.width, 2),
    '',
    bold(headline(clear.length, changes, words)),
    ...changes.flatMap((change) => changeLines(change, look, words)),
    ...trendLines(trends, look, words),
    '',
    ...tellAll(notes, noteMessages, words).flatMap(({ text }) => wrap(plain(text), look.width, 2)),
    '',
    ...cautions.flatMap(({ text }) => wrap(text, look.width, 2)).map(dim),
  ].join('\n')}\n`;
}

function headline(clear: number, changes: readonly Change[], { compare }: Words): string {
  const judged = changes.filter((one) => one.moreThanChance !== null).length;
  return judged === 0 ? compare.noChance : compare.figures(clear, judged);
}

const MARKS = { true: '→', false: '=', null: '?' } as const;

function changeLines(change: Change, look: Look, words: Words): string[] {
  const { bold, dim } = look.paint;
  const { figure } = words.numbers;
  const unit = change.unit === '1' ? '' : ` ${change.unit}`;
  const mark = MARKS[`${change.moreThanChance}`];
  const part = change.relative === null ? '' : ` (${signed(change.relative * 100, words)} %)`;
  const label = tell(change.label, change.labelMessage, words).text;
  const line = words.compare.change(label, figure(change.before), figure(change.after), unit);
  const head = `${mark} ${line}${part}`;
  return [
    ...wrap(change.moreThanChance === true ? bold(head) : head, look.width, 2, 2),
    ...wrap(intervalText(change, unit, words), look.width, 6).map(dim),
  ];
}

function intervalText({ interval, moreThanChance, p }: Change, unit: string, words: Words): string {
  const { compare, numbers } = words;
  if (interval === null || p === null) return compare.noSpread;
  const range = compare.range(signed(interval.low, words), signed(interval.high, words), unit);
  const level = numbers.decimal(String(interval.level * 100));
  const chance = numbers.decimal(p < 0.001 ? '< 0.001' : p.toFixed(3));
  const how = tell(interval.how, interval.howMessage, words).text;
  return compare.interval(range, level, moreThanChance === true, chance, how);
}

function signed(value: number, { numbers }: Words): string {
  return value > 0 ? `+${numbers.figure(value)}` : numbers.figure(value).replace('-', '−');
}

function trendLines(trends: Comparison['trends'], look: Look, words: Words): string[] {
  const { compare } = words;
  const lines = (['before', 'after'] as const).flatMap((name) => {
    const trend = trends[name];
    if (trend === null) return [];
    const range = compare.range(
      signed(trend.lowPerMin, words),
      signed(trend.highPerMin, words),
      '',
    );
    return wrap(compare.trend(name, trend.clear, range), look.width, 2, 2);
  });
  return lines.length === 0 ? [] : ['', look.paint.bold(compare.overEachRun), ...lines];
}
