import type { Change, Comparison } from '../../../analysis/compare/index.js';
import { BEFORE_YOU_CHANGE } from '../../../setup/index.js';
import { figure, type Look, plain, visibleWithin, wrap } from '../../view/index.js';

/** The answer of `arc-transfer compare` for a terminal. */
export function comparisonText(given: Comparison, look: Look): string {
  const comparison = visibleWithin(given);
  const { before, after, mode, changes, trends, notes } = comparison;
  const { bold, dim } = look.paint;
  const clear = changes.filter((one) => one.moreThanChance === true);
  return `${[
    `${bold('Before')}  ${plain(before.path)}`,
    `${bold('After')}   ${plain(after.path)}`,
    '',
    `${bold('Mode')}  ${{ same: '= same', changed: '→ changed', 'cannot-tell': '? cannot tell' }[mode.answer]}`,
    ...wrap(mode.text, look.width, 2),
    '',
    bold(headline(clear.length, changes)),
    ...changes.flatMap((change) => changeLines(change, look)),
    ...trendLines(trends, look),
    '',
    ...notes.flatMap((note) => wrap(plain(note), look.width, 2)),
    '',
    ...BEFORE_YOU_CHANGE.flatMap((caution) => wrap(caution, look.width, 2)).map(dim),
  ].join('\n')}\n`;
}

function headline(clear: number, changes: readonly Change[]): string {
  const judged = changes.filter((one) => one.moreThanChance !== null).length;
  if (judged === 0) return 'Figures (chance cannot be judged)';
  return `Figures: ${clear} of ${judged} changed by more than chance`;
}

const MARKS = { true: '→', false: '=', null: '?' } as const;

function changeLines(change: Change, look: Look): string[] {
  const { bold, dim } = look.paint;
  const unit = change.unit === '1' ? '' : ` ${change.unit}`;
  const mark = MARKS[`${change.moreThanChance}`];
  const part = change.relative === null ? '' : ` (${signed(change.relative * 100)} %)`;
  const head = `${mark} ${change.label}: ${figure(change.before)} to ${figure(change.after)}${unit}${part}`;
  return [
    ...wrap(change.moreThanChance === true ? bold(head) : head, look.width, 2, 2),
    ...wrap(intervalText(change, unit), look.width, 6).map(dim),
  ];
}

function intervalText({ interval, moreThanChance, p }: Change, unit: string): string {
  if (interval === null || p === null) {
    return 'The recordings do not show their own spread here: chance cannot be judged.';
  }
  const range = `${signed(interval.low)} to ${signed(interval.high)}${unit}`;
  const verdict = moreThanChance === true ? 'more than chance' : 'may be chance';
  return `change ${range} at ${interval.level * 100} %; ${verdict} (p ${p < 0.001 ? '< 0.001' : p.toFixed(3)}; ${interval.how})`;
}

function signed(value: number): string {
  return value > 0 ? `+${figure(value)}` : figure(value).replace('-', '−');
}

function trendLines(trends: Comparison['trends'], look: Look): string[] {
  const lines = (['before', 'after'] as const).flatMap((name) => {
    const trend = trends[name];
    if (trend === null) return [];
    const words = trend.clear ? 'a clear trend' : 'no clear trend';
    const range = `${signed(trend.lowPerMin)} to ${signed(trend.highPerMin)}`;
    return wrap(`${name}: ${words} of the event rate, ${range} Hz a minute`, look.width, 2, 2);
  });
  return lines.length === 0 ? [] : ['', look.paint.bold('Over each run'), ...lines];
}
