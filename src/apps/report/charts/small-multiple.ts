import { scaleLinear } from 'd3-scale';
import type { Words } from '../../view/index.js';
import type { TimeRun } from '../run-view.js';
import { LANES_HEIGHT, modeTracks } from './mode-tracks.js';
import { el, picture, text } from './svg.js';
import { hasRate, rateRow } from './time-rows.js';

const WIDTH = 420;
const LEFT = 40;
const RIGHT = 8;

/** A run at a glance for an index: mode tracks and event rate, on axes shared by all runs of the page. */
export function smallMultiple(
  run: TimeRun,
  shared: { durationS: number; rateHz: number },
  { id, run: number }: { id: string; run: number },
  words: Words,
): string {
  const window = { fromS: 0, toS: shared.durationS };
  const area = { window, left: LEFT, right: WIDTH - RIGHT };
  const rateTop = LANES_HEIGHT + 8;
  const bottom = hasRate(run) ? rateTop + 60 : LANES_HEIGHT + 6;
  const x = scaleLinear([0, shared.durationS], [LEFT, WIDTH - RIGHT]);
  const end = x(run.evidence.durationS);
  return picture(
    { width: WIDTH, height: bottom + 22 },
    {
      id,
      title: words.report.index.glanceOf(number),
      description: words.report.index.glanceDescription,
    },
    [
      el('rect', { class: 'no-arc', x: end, y: 2, width: WIDTH - RIGHT - end, height: bottom - 2 }),
      modeTracks(run, { ...area, top: 4 }, words),
      rateRow(run, { ...area, top: rateTop, height: 60 }, words, shared.rateHz),
      ...x
        .ticks(4)
        .map((value) =>
          text(x(value), bottom + 15, `${value} s`, { class: 'tick', 'text-anchor': 'middle' }),
        ),
    ].join(''),
  );
}
