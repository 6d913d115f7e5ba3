import type { Result } from '../../../analysis/result/index.js';
import type { Mode } from '../../../core/index.js';
import { rankReasons, viewReason, type Words } from '../../view/index.js';
import { modeClass, modeFill } from './mode-marks.js';
import { el, hint, picture, text } from './svg.js';

const ROW = 44;
const MOST = 12;

/**
 * Reasons ranked by weight: to the right what spoke for the likeliest mode, to the left what spoke for
 * another or against it.
 */
export function reasonChart(
  reasons: Result['reasons'],
  likeliest: Mode | null,
  id: string,
  words: Words,
  width = 900,
): string {
  const ranked = rankReasons(reasons).slice(0, MOST);
  const largest = ranked.reduce((top, one) => Math.max(top, Math.abs(one.weight)), 1e-9);
  const lead = likeliest ? words.mode(likeliest) : words.reasons.any;
  const middle = width / 2;
  const reach = middle - 20;
  const rows = ranked.map((reason, k) => {
    const top = 30 + k * ROW;
    const length = Math.max(2, (Math.abs(reason.weight) / largest) * reach);
    const view = viewReason(reason, words);
    const { side } = view;
    const said = view.text.text;
    const against = (reason.speaksFor === likeliest) !== reason.weight >= 0;
    return [
      el(
        'rect',
        {
          class: `block ${modeClass(reason.speaksFor)}`,
          fill: modeFill(reason.speaksFor),
          x: against ? middle - length : middle,
          y: top,
          width: length,
          height: 14,
        },
        hint(`${side}: ${said}`),
      ),
      text(against ? middle + 8 : middle - 8, top + 12, side, {
        class: 'label',
        'text-anchor': against ? 'start' : 'end',
      }),
      text(width / 2, top + 29, clip(said, width), {
        class: 'value',
        'text-anchor': 'middle',
      }),
    ].join('');
  });
  const height = 30 + ranked.length * ROW;
  return picture(
    { width, height },
    {
      id,
      title: words.titles.reasons,
      description: words.reasons.description,
    },
    [
      text(middle - 10, 16, words.reasons.axis(true, lead), {
        class: 'label',
        'text-anchor': 'end',
      }),
      text(middle + 10, 16, words.reasons.axis(false, lead), { class: 'label' }),
      el('line', { class: 'axis', x1: middle, x2: middle, y1: 22, y2: height }),
      ...rows,
    ].join(''),
  );
}

function clip(words: string, width: number): string {
  const most = Math.floor(width / 6.6);
  return words.length > most ? `${words.slice(0, most - 1)}…` : words;
}
