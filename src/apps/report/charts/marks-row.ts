import { MARK_S, type Marks } from '../../view/evidence/index.js';
import type { TimePictureWords } from '../../view/index.js';
import { type TrackArea, timeScale } from './mode-tracks.js';
import { el, hint, short, text } from './svg.js';

/** Most marks drawn one by one; above it only how dense they stand. */
const MOST_SINGLE = 400;
/** About the width of a letter of a row's name. */
const LETTER = 6;
export const MARK_HEIGHT = 24;

/** Shorts and disturbances as bars as long as they last, drops as diamonds. */
export function marksRow(marks: Marks, area: TrackArea, words: TimePictureWords): string {
  const { fromS, toS } = area.window;
  const inside: number[] = [];
  marks.starts.forEach((start, k) => {
    if ((start + marks.lengths[k]!) * MARK_S >= fromS && start * MARK_S < toS) inside.push(k);
  });
  const inView = words.time.marksInView(marks.what, inside.length);
  const whole = inView + cutOff(marks, toS, words);
  // On a phone only the count has room.
  const said = whole.length * LETTER > area.right - area.left ? inView : whole;
  const name = text(area.left + 4, area.top + 9, said, { class: 'row-name' });
  if (inside.length > MOST_SINGLE) return name + density(marks, inside, area);
  const x = timeScale(area);
  const top = area.top + 12;
  return (
    name +
    inside
      .map((k) => {
        const startS = marks.starts[k]! * MARK_S;
        const lengthS = marks.lengths[k]! * MARK_S;
        const at = Math.max(area.left, x(startS));
        const { decimal } = words.numbers;
        const lasts = lengthS > 0 ? decimal((1000 * lengthS).toFixed(2)) : '';
        const title = hint(words.time.markAt(marks.what, decimal(startS.toFixed(4)), lasts));
        const place = { 'data-start-s': startS.toFixed(5) };
        if (marks.what === 'drop')
          return el(
            'path',
            { class: 'mark mark-drop', d: `M${short(at)} ${top}l3 5l-3 5l-3 -5Z`, ...place },
            title,
          );
        const width = Math.max(1.2, Math.min(area.right, x(startS + lengthS)) - at);
        return el(
          'rect',
          {
            class: `mark ${marks.what === 'short circuit' ? 'mark-short' : 'mark-fault'}`,
            x: at,
            y: top,
            width,
            height: 10,
            ...place,
          },
          title,
        );
      })
      .join('')
  );
}

/** Said where the view goes on after the last mark that was kept. */
function cutOff(
  { starts, total }: Marks,
  toS: number,
  { time, numbers }: TimePictureWords,
): string {
  const lastS = starts[starts.length - 1]! * MARK_S;
  if (total <= starts.length || toS <= lastS) return '';
  return time.keptUpTo(numbers.time(lastS), total);
}

function density(marks: Marks, inside: readonly number[], area: TrackArea): string {
  const x = timeScale(area);
  const pixels = new Float64Array(Math.ceil((area.right - area.left) / 2));
  for (const k of inside) {
    const at = Math.floor((x(marks.starts[k]! * MARK_S) - area.left) / 2);
    if (at >= 0 && at < pixels.length) pixels[at]!++;
  }
  const most = pixels.reduce((a, b) => Math.max(a, b), 1);
  const bottom = area.top + 22;
  const path = [...pixels]
    .map((count, k) => {
      const height = count === 0 ? 0 : 2 + (8 * count) / most;
      return height ? `M${area.left + 2 * k + 1} ${bottom}v${short(-height)}` : '';
    })
    .join('');
  return el('path', { class: 'mark-density', d: path });
}
