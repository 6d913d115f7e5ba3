import type { Change, Comparison } from '../../analysis/compare/index.js';
import { BEFORE_YOU_CHANGE, BEFORE_YOU_CHANGE_MESSAGES } from '../../setup/index.js';
import { tell, tellAll } from './tell.js';
import type { LocalizedText, Words } from './words/words.js';

/** One figure of two runs in words. */
export interface ChangeView {
  /** `→` more than chance, `=` may be chance, `?` cannot be told. */
  mark: '→' | '=' | '?';
  moreThanChance: boolean | null;
  label: LocalizedText;
  /** The figure in either run and the change as a share, with its unit; the share is empty where there is none. */
  before: string;
  after: string;
  unit: string;
  relative: string;
  /** Interval and chance, or why there are none. */
  spread: string;
}

/** What two runs have in common and what not, in the words of one language. */
export interface ComparisonView {
  lang: string;
  heads: readonly [before: string, after: string];
  paths: readonly [before: string, after: string];
  mode: { answer: string; text: LocalizedText };
  headline: string;
  changes: ChangeView[];
  /** How the arc behaved in either: names and ratings. */
  condition: { name: string; before: string; after: string; differs: boolean }[];
  trends: string[];
  notes: LocalizedText[];
  cautions: LocalizedText[];
}

/** @param against `reference` where the first run is the one that the second is to come near to */
export function viewComparison(
  comparison: Comparison,
  words: Words,
  against: 'before' | 'reference' = 'before',
): ComparisonView {
  const { before, after, mode, changes, notes, noteMessages } = comparison;
  const { compare } = words;
  const clear = changes.filter((one) => one.moreThanChance === true).length;
  const judged = changes.filter((one) => one.moreThanChance !== null).length;
  return {
    lang: words.lang,
    heads: compare.heads[against],
    paths: [before.path, after.path],
    mode: { answer: compare.answers[mode.answer], text: tell(mode.text, mode, words) },
    headline: judged === 0 ? compare.noChance : compare.figures(clear, judged),
    changes: changes.map((one) => viewChange(one, words)),
    condition: conditionRows(comparison, words),
    trends: trendLines(comparison, words, against),
    notes: tellAll(notes, noteMessages, words),
    cautions: tellAll(BEFORE_YOU_CHANGE, BEFORE_YOU_CHANGE_MESSAGES, words),
  };
}

const MARKS = { true: '→', false: '=', null: '?' } as const;

function viewChange(change: Change, words: Words): ChangeView {
  const { figure } = words.numbers;
  const unit = change.unit === '1' ? '' : ` ${change.unit}`;
  return {
    mark: MARKS[`${change.moreThanChance}`],
    moreThanChance: change.moreThanChance,
    label: tell(change.label, change.labelMessage, words),
    before: figure(change.before),
    after: figure(change.after),
    unit,
    relative: change.relative === null ? '' : `${signed(change.relative * 100, words)} %`,
    spread: spreadOf(change, unit, words),
  };
}

function spreadOf({ interval, moreThanChance, p }: Change, unit: string, words: Words): string {
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

function conditionRows({ condition = [] }: Comparison, words: Words) {
  const { names, ratings } = words.result.condition;
  const known: Readonly<Record<string, string>> = names;
  const say = (rating: keyof typeof ratings | null): string =>
    rating === null ? words.compare.notRated : ratings[rating];
  return condition.map(({ name, before, after }) => ({
    name: known[name] ?? name,
    before: say(before),
    after: say(after),
    differs: before !== after,
  }));
}

function trendLines({ trends }: Comparison, words: Words, against: 'before' | 'reference') {
  const { compare } = words;
  const [first, second] = compare.heads[against];
  return (['before', 'after'] as const).flatMap((name) => {
    const trend = trends[name];
    if (trend === null) return [];
    const [low, high] = [signed(trend.lowPerMin, words), signed(trend.highPerMin, words)];
    const range = compare.range(low, high, '');
    return [compare.trend(name === 'before' ? first : second, trend.clear, range)];
  });
}
