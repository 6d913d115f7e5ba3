import type { ProgressRow } from '../../../analysis/compare/index.js';
import type { Words } from '../../view/index.js';
import { el, hint, picture, short, text } from './svg.js';

const SIZE = { width: 900, height: 330 };
const BOX = { left: 56, right: 720, top: 24, bottom: 280 };
/** Signs that tell the lines apart without colour. */
const SIGNS = ['●', '■', '▲', '◆', '○', '□', '△', '◇'];
/** More names make a tangle; the table holds them all. */
const MOST = 8;

/** Share of what is as usual over days, a line a name; `null` with fewer than two days. */
export function progressChart(
  rows: readonly ProgressRow[],
  id: string,
  words: Words,
): string | null {
  const days = [...new Set(rows.map((one) => one.day))].sort();
  const names = [...new Set(rows.map((one) => one.name))].slice(0, MOST);
  const known = rows.filter((one) => one.goodShare !== null);
  if (days.length < 2 || known.length === 0) return null;
  const x = (day: string): number =>
    BOX.left + 24 + ((BOX.right - BOX.left - 48) * days.indexOf(day)) / (days.length - 1);
  const y = (share: number): number => BOX.bottom - share * (BOX.bottom - BOX.top);
  const every = Math.ceil(days.length / 8);
  const axes = [
    ...[0, 0.25, 0.5, 0.75, 1].map(
      (share) =>
        el('line', { class: 'grid', x1: BOX.left, x2: BOX.right, y1: y(share), y2: y(share) }) +
        text(BOX.left - 6, y(share) + 4, `${100 * share} %`, {
          class: 'tick',
          'text-anchor': 'end',
        }),
    ),
    ...days.map((day, k) =>
      k % every === 0
        ? text(x(day), BOX.bottom + 18, day, { class: 'tick', 'text-anchor': 'middle' })
        : '',
    ),
    text(BOX.left, BOX.top - 10, words.progress.heads[4], { class: 'label' }),
  ];
  const lines = names.map((name, k) => {
    const own = known.filter((one) => one.name === name);
    const d = own
      .map((one, i) => `${i === 0 ? 'M' : 'L'}${short(x(one.day))} ${short(y(one.goodShare!))}`)
      .join('');
    const sign = SIGNS[k]!;
    const spots = own.map((one) =>
      el(
        'g',
        {},
        text(x(one.day), y(one.goodShare!) + 5, sign, {
          class: 'progress-sign',
          'text-anchor': 'middle',
        }) + hint(`${name}, ${one.day}: ${words.numbers.percent(one.goodShare!)}`),
      ),
    );
    const key = text(BOX.right + 16, BOX.top + 14 + 20 * k, `${sign} ${name}`, {
      class: 'run-name',
    });
    return el('path', { class: 'progress-line', d }) + spots.join('') + key;
  });
  return picture(
    SIZE,
    { id, title: words.progress.heading, description: words.progress.description(names.length) },
    axes.join('') + lines.join(''),
  );
}
