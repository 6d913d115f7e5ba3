import type { IntervalCounts } from '../../view/evidence/index.js';
import type { PictureWords } from '../../view/index.js';
import { frame } from './frame.js';
import { SHAPE, SHAPE_BOX } from './shape-charts.js';
import { el, hint, picture } from './svg.js';

/** How regular the events come: intervals on a logarithmic axis. */
export function intervalsChart(
  intervals: IntervalCounts,
  id: string,
  words: PictureWords,
  shared?: { most: number },
): string {
  const { fromS, ratio, counts, total } = intervals;
  const toS = fromS * ratio ** counts.length;
  const most = shared?.most ?? intervalsMost(intervals);
  const { svg, x, y } = frame(
    SHAPE_BOX,
    { from: 1000 * fromS, to: 1000 * toS, log: true, label: words.shape.intervalsAxis },
    { from: 0, to: most, label: words.shape.intervalsShare },
    words.numbers,
  );
  const { figure } = words.numbers;
  const bars = [...counts].map((count, k) => {
    if (count === 0) return '';
    const low = 1000 * fromS * ratio ** k;
    const height = y(0) - y((100 * count) / total);
    const place = {
      x: x(low) + 0.4,
      width: x(low * ratio) - x(low) - 0.8,
      y: y(0) - height,
      height,
    };
    return el(
      'rect',
      { class: 'bar bar-arc', ...place },
      hint(
        words.shape.intervalsHint(
          figure(low),
          figure(low * ratio),
          words.numbers.percent(count / total),
          total,
        ),
      ),
    );
  });
  return picture(
    SHAPE,
    {
      id,
      title: words.shape.intervalsTitle(intervals.of),
      description: words.shape.intervalsDescription(total),
    },
    svg + bars.join(''),
  );
}

export function intervalsMost({ counts, total }: IntervalCounts): number {
  return (105 * counts.reduce((a, b) => Math.max(a, b), 0)) / total;
}
