import { scaleLinear } from 'd3-scale';
import type { Marks } from '../../view/evidence/index.js';
import type { TimePictureWords } from '../../view/index.js';
import type { TimeRun, TimeWindow } from '../run-view.js';
import { MARK_HEIGHT, marksRow } from './marks-row.js';
import { LANES_HEIGHT, modeTracks, visible } from './mode-tracks.js';
import { spectrogramRow } from './spectrogram-row.js';
import { el, picture, text } from './svg.js';
import { hasRate, rateRow, type SharedLimits, traceRow } from './time-rows.js';

export const TIME_LEFT = 52;
export const TIME_RIGHT = 10;

export interface TimeFigureOptions {
  /** Width in pixels. */
  width: number;
  window: TimeWindow;
  /** Picture of the spectrogram of the whole run, where there is one. */
  spectrogramHref?: string;
  limits?: SharedLimits;
  /** Begins the ids within the picture; differs between pictures of one page. */
  id?: string;
  words: TimePictureWords;
}

interface Row {
  height: number;
  draw(top: number): string;
}

/** The run over time on one axis: mode, sound or voltage and current, marks, event rate. */
export function timeFigure(run: TimeRun, options: TimeFigureOptions): string {
  const { width, window, id = 'time', words } = options;
  const span = { window, left: TIME_LEFT, right: width - TIME_RIGHT };
  const rows = rowsOf(run, options, span);
  let top = 4;
  const drawn = rows.map((row) => {
    const svg = row.draw(top);
    top += row.height + 6;
    return svg;
  });
  const content = [
    gaps(run, { ...span, bottom: top }, words),
    ...drawn,
    timeAxis(span, top, words),
  ].join('');
  return picture(
    { width, height: top + 36 },
    { id, title: words.titles.time, description: describe(run, window, words) },
    content,
  );
}

function rowsOf(
  run: TimeRun,
  { limits, spectrogramHref, id = 'time', words }: TimeFigureOptions,
  span: { window: TimeWindow; left: number; right: number },
): Row[] {
  const { evidence } = run;
  const rows: Row[] = [
    { height: LANES_HEIGHT, draw: (top) => modeTracks(run, { ...span, top }, words) },
  ];
  if (evidence.spectrogram && spectrogramHref)
    rows.push({
      height: 120,
      draw: (top) =>
        spectrogramRow(
          evidence,
          spectrogramHref,
          { ...span, top, height: 120 },
          `${id}-clip`,
          words,
        ),
    });
  evidence.traces.forEach((trace, index) => {
    const height = trace.quantity === 'sound' ? 80 : 116;
    const range = limits?.traces?.[trace.quantity];
    rows.push({
      height,
      draw: (top) => traceRow(run, index, { ...span, top, height }, words, range),
    });
    if (trace.quantity === 'voltage')
      for (const marks of evidence.marks.filter(isEvent)) rows.push(markRow(marks, span, words));
  });
  for (const marks of evidence.marks) if (!isEvent(marks)) rows.push(markRow(marks, span, words));
  if (hasRate(run))
    rows.push({
      height: 84,
      draw: (top) => rateRow(run, { ...span, top, height: 84 }, words, limits?.rateHz),
    });
  return rows;
}

/** Shorts and drops stand under the voltage that shows them; disturbances under all traces. */
function isEvent({ what }: Marks): boolean {
  return what === 'short circuit' || what === 'drop';
}

function markRow(
  marks: Marks,
  span: { window: TimeWindow; left: number; right: number },
  words: TimePictureWords,
): Row {
  return { height: MARK_HEIGHT, draw: (top) => marksRow(marks, { ...span, top }, words) };
}

/** Where no arc burns the ground is tinted through all rows. */
function gaps(
  run: TimeRun,
  span: { window: TimeWindow; left: number; right: number; bottom: number },
  words: TimePictureWords,
): string {
  const x = scaleLinear([span.window.fromS, span.window.toS], [span.left, span.right]);
  const edges = [
    0,
    ...run.arcStretches.flatMap((one) => [one.startS, one.endS]),
    run.evidence.durationS,
  ];
  const parts: string[] = [];
  for (let k = 0; k + 1 < edges.length; k += 2) {
    const part = { startS: edges[k]!, endS: edges[k + 1]! };
    if (!(part.endS > part.startS) || !visible(part, span.window)) continue;
    const from = Math.max(span.left, x(part.startS));
    const to = Math.min(span.right, x(part.endS));
    parts.push(
      el('rect', { class: 'no-arc', x: from, y: 2, width: to - from, height: span.bottom - 4 }),
    );
    // About as wide as its letters; the names of the tracks stand at the left edge.
    const needed = 8 + 6 * words.time.noArc.length;
    if (to - from > (from > span.left + 60 ? needed : needed + 86))
      parts.push(text(to - 5, 14, words.time.noArc, { class: 'tick', 'text-anchor': 'end' }));
  }
  return parts.join('');
}

function timeAxis(
  span: { window: TimeWindow; left: number; right: number },
  top: number,
  { time, numbers }: TimePictureWords,
): string {
  const { fromS, toS } = span.window;
  const x = scaleLinear([fromS, toS], [span.left, span.right]);
  const inMs = toS - fromS < 0.2;
  const tickCount = Math.max(2, Math.floor((span.right - span.left) / 90));
  const ticks = x.ticks(tickCount).map((value) => {
    const at = x(value);
    const digits = inMs ? (1000 * value).toFixed(1) : String(Number(value.toPrecision(6)));
    return (
      el('line', { class: 'axis', x1: at, x2: at, y1: top, y2: top + 5 }) +
      text(at, top + 18, numbers.decimal(digits), { class: 'tick', 'text-anchor': 'middle' })
    );
  });
  return [
    el('line', { class: 'axis', x1: span.left, x2: span.right, y1: top, y2: top }),
    ...ticks,
    text(span.right, top + 32, inMs ? time.axisMs : time.axisS, {
      class: 'label',
      'text-anchor': 'end',
    }),
  ].join('');
}

function describe(
  run: TimeRun,
  window: TimeWindow,
  { time, numbers: { figure } }: TimePictureWords,
): string {
  const shown = run.segments.filter((one) => visible(one, window));
  const parts = shown
    .slice(0, 12)
    .map((one) => time.part(one.mode, figure(one.startS), figure(one.endS)));
  const more = Math.max(0, shown.length - 12);
  return time.description(figure(window.fromS), figure(window.toS), parts, more);
}
