import { scaleLinear } from 'd3-scale';
import type { Evidence } from '../../view/evidence/index.js';
import type { TimePictureWords } from '../../view/index.js';
import { say } from './frame.js';
import { type TrackArea, timeScale } from './mode-tracks.js';
import { el, text } from './svg.js';

/** Power over time and frequency; `href` is the picture of the whole run, ink where it is loud. */
export function spectrogramRow(
  evidence: Evidence,
  href: string,
  area: TrackArea & { height: number },
  clipId: string,
  words: TimePictureWords,
): string {
  const { spectrogram } = evidence;
  if (!spectrogram) return '';
  const x = timeScale(area);
  const { top, height } = area;
  const columns = spectrogram.cells.length / spectrogram.rows;
  const from = x(0);
  const to = x(columns * spectrogram.columnS);
  const topKHz = (spectrogram.rows * spectrogram.rowHz) / 1000;
  const y = scaleLinear([0, topKHz], [top + height - 2, top + 14]);
  const place = { x: from, y: y(topKHz), width: to - from, height: y(0) - y(topKHz) };
  return [
    el(
      'clipPath',
      { id: clipId },
      el('rect', { x: area.left, y: top, width: area.right - area.left, height }),
    ),
    el('rect', {
      class: 'plate',
      x: area.left,
      y: y(topKHz),
      width: area.right - area.left,
      height: place.height,
    }),
    el('image', {
      class: 'spectrogram',
      href,
      preserveAspectRatio: 'none',
      'clip-path': `url(#${clipId})`,
      ...place,
    }),
    ...y.ticks(4).map((value) =>
      text(area.left - 8, y(value) + 4, say(value, words.numbers), {
        class: 'tick',
        'text-anchor': 'end',
      }),
    ),
    text(area.left + 4, top + 11, words.time.frequency, { class: 'row-name' }),
  ].join('');
}
