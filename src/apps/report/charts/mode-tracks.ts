import { MODES, type Mode } from '../../../core/index.js';
import { MODE_LETTERS } from '../../../setup/index.js';
import type { TimePictureWords } from '../../view/index.js';
import type { TimeRun, TimeWindow } from '../run-view.js';
import { modeClass, modeFill } from './mode-marks.js';
import { el, hint, short, text } from './svg.js';

export const LANE_HEIGHT = 22;
/** Hottest at the top, as the voltage rises; where the answer names no mode a track of its own. */
const LANES: readonly (Mode | null)[] = [
  'pulsed-spray',
  'spray',
  'globular',
  'short-circuit',
  null,
];
export const LANES_HEIGHT = LANES.length * LANE_HEIGHT;

export interface TrackArea {
  window: TimeWindow;
  left: number;
  right: number;
  top: number;
}

/**
 * The run as a score: a track a mode, so that place says the mode, and the height of a block its
 * confidence. The line in each track is what single windows spoke for.
 */
export function modeTracks(run: TimeRun, area: TrackArea, words: TimePictureWords): string {
  const x = timeScale(area);
  const tracks = LANES.map((mode, k) => {
    const bottom = area.top + (k + 1) * LANE_HEIGHT;
    const name = mode ? MODE_LETTERS[mode] : '?';
    return (
      el('line', { class: 'grid', x1: area.left, x2: area.right, y1: bottom, y2: bottom }) +
      text(area.left - 8, bottom - 6, name, { class: 'lane-letter', 'text-anchor': 'end' })
    );
  });
  const names = LANES.map((mode, k) => {
    const full = mode ? words.mode(mode) : words.notClear;
    return text(area.left + 4, area.top + (k + 1) * LANE_HEIGHT - 7, full, { class: 'lane-name' });
  });
  const arcs = run.arcStretches
    .filter((one) => visible(one, area.window))
    .map((one) => {
      const from = Math.max(area.left, x(one.startS));
      const to = Math.min(area.right, x(one.endS));
      return el('rect', {
        class: 'arc-on',
        x: from,
        y: area.top,
        width: to - from,
        height: LANES_HEIGHT,
      });
    });
  const drawn = [...blocks(run, area, words), ...beliefLines(run, area, x)];
  return [...arcs, ...tracks, ...drawn, ...names].join('');
}

function blocks(run: TimeRun, area: TrackArea, words: TimePictureWords): string[] {
  const x = timeScale(area);
  const { time, percent } = words.numbers;
  return run.segments
    .filter((one) => visible(one, area.window))
    .map((segment) => {
      const track = LANES.indexOf(segment.mode);
      const from = Math.max(area.left, x(segment.startS));
      const to = Math.min(area.right, x(segment.endS));
      const height = Math.max(3, segment.confidence * (LANE_HEIGHT - 3));
      const bottom = area.top + (track + 1) * LANE_HEIGHT;
      const name = segment.mode ? words.mode(segment.mode) : words.notClear;
      const said = [time(segment.startS), time(segment.endS), percent(segment.confidence)] as const;
      const place = { x: from, y: bottom - height, width: Math.max(1, to - from), height };
      return el(
        'rect',
        { class: `block ${modeClass(segment.mode)}`, fill: modeFill(segment.mode), ...place },
        hint(words.time.block(name, ...said)),
      );
    });
}

function beliefLines(run: TimeRun, area: TrackArea, x: (s: number) => number): string[] {
  const { beliefs } = run.evidence;
  if (!beliefs) return [];
  const step = beliefs.stepS;
  const from = Math.max(0, Math.floor((area.window.fromS - beliefs.startS) / step));
  const every = Math.max(
    1,
    Math.floor((area.window.toS - area.window.fromS) / step / (area.right - area.left)),
  );
  return MODES.map((mode) => {
    const values = beliefs.byMode[mode];
    const bottom = area.top + (LANES.indexOf(mode) + 1) * LANE_HEIGHT;
    let path = '';
    let pen = false;
    for (let k = from; k < values.length; k += every) {
      const timeS = beliefs.startS + (k + 0.5) * step;
      if (timeS > area.window.toS) break;
      const value = values[k]!;
      const shown = timeS >= area.window.fromS && inArc(run, timeS) && !Number.isNaN(value);
      if (shown)
        path += `${pen ? 'L' : 'M'}${short(x(timeS))} ${short(bottom - value * (LANE_HEIGHT - 3))}`;
      pen = shown;
    }
    if (path === '') return '';
    return (
      el('path', { class: 'belief-ground', d: path }) + el('path', { class: 'belief', d: path })
    );
  });
}

export function inArc(run: TimeRun, timeS: number): boolean {
  return run.arcStretches.some((one) => timeS >= one.startS && timeS < one.endS);
}

export function visible(part: { startS: number; endS: number }, window: TimeWindow): boolean {
  return part.endS > window.fromS && part.startS < window.toS;
}

export function timeScale(
  area: Pick<TrackArea, 'window' | 'left' | 'right'>,
): (s: number) => number {
  const { fromS, toS } = area.window;
  return (s) => area.left + ((s - fromS) / (toS - fromS)) * (area.right - area.left);
}
