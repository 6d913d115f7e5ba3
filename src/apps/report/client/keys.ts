import { MARK_S } from '../../view/evidence/index.js';
import type { TimeRun } from '../run-view.js';
import { lastBefore } from './readout.js';
import type { TimeView } from './time-view.js';
import type { View } from './view.js';

/** Everything that a pointer can do over time, by keys while the picture has the focus. */
export function watchKeys(
  run: TimeRun,
  timeView: TimeView,
  view: View,
  togglePlay: () => void,
): void {
  const at = () => {
    const seen = timeView.cursorS;
    return seen !== null && seen >= view.fromS && seen <= view.toS
      ? seen
      : (view.fromS + view.toS) / 2;
  };
  const cursor = (timeS: number) => {
    const inside = Math.min(run.evidence.durationS, Math.max(0, timeS));
    if (inside < view.fromS || inside > view.toS)
      view.show(inside - view.spanS / 2, inside + view.spanS / 2);
    timeView.draw();
    timeView.setCursor(inside);
  };
  const move = (share: number) => {
    view.move(share);
    timeView.draw();
  };
  const zoom = (factor: number) => {
    view.zoom(factor, at());
    timeView.draw();
  };
  const mark = (step: 1 | -1) => {
    const next = nextMark(run, at(), step);
    if (next !== null) cursor(next);
  };
  const actions: Record<string, (shift: boolean) => void> = {
    ArrowLeft: (shift) => (shift ? move(-0.25) : cursor(at() - view.spanS / 100)),
    ArrowRight: (shift) => (shift ? move(0.25) : cursor(at() + view.spanS / 100)),
    '+': () => zoom(0.5),
    '=': () => zoom(0.5),
    '-': () => zoom(2),
    '−': () => zoom(2),
    Home: () => cursor(0),
    End: () => cursor(run.evidence.durationS),
    '0': () => {
      view.whole();
      timeView.draw();
    },
    n: () => mark(1),
    p: () => mark(-1),
    ' ': togglePlay,
  };
  timeView.element.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const action = actions[event.key] ?? actions[event.key.toLowerCase()];
    if (!action) return;
    event.preventDefault();
    action(event.shiftKey);
  });
}

/** The mark after or before a moment; null where there is none. */
function nextMark({ evidence }: TimeRun, timeS: number, step: 1 | -1): number | null {
  const unit = timeS / MARK_S;
  const found = evidence.marks.flatMap(({ starts }) => {
    const k = step > 0 ? lastBefore(starts, unit + 0.5) + 1 : lastBefore(starts, unit - 1);
    return starts[k] === undefined ? [] : [starts[k] * MARK_S];
  });
  if (found.length === 0) return null;
  return step > 0 ? Math.min(...found) : Math.max(...found);
}
