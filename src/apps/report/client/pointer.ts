import type { TimeView } from './time-view.js';
import type { View } from './view.js';

/** Fewest pixels that count as a drag and not as a click. */
const DRAG = 5;

/** Mouse, pen and fingers: point to read, drag to choose a part, two fingers or Ctrl and wheel to zoom. */
export function watchPointer(
  timeView: TimeView,
  view: View,
  onClick: (timeS: number) => void,
): void {
  const fingers = new Map<number, number>();
  let startX: number | null = null;
  let startS = 0;
  const { element } = timeView;

  element.addEventListener('pointerdown', (event) => {
    if (event.button !== 0) return;
    fingers.set(event.pointerId, event.clientX);
    startX = event.clientX;
    startS = timeView.timeAt(event.clientX);
    if (event.pointerType === 'mouse') element.setPointerCapture(event.pointerId);
  });

  element.addEventListener('pointermove', (event) => {
    if (fingers.size === 2 && fingers.has(event.pointerId)) {
      pinch(event);
      return;
    }
    timeView.setCursor(timeView.timeAt(event.clientX));
    if (startX === null) return;
    if (event.pointerType === 'mouse' && !event.shiftKey) {
      const far = Math.abs(event.clientX - startX) >= DRAG;
      timeView.setRange(far ? [startS, timeView.timeAt(event.clientX)] : null);
      return;
    }
    const byS = startS - timeView.timeAt(event.clientX);
    view.show(view.fromS + byS, view.toS + byS);
    timeView.draw();
  });

  element.addEventListener('pointerup', (event) => {
    const dragged = startX !== null && Math.abs(event.clientX - startX) >= DRAG;
    const endS = timeView.timeAt(event.clientX);
    if (startX !== null && !dragged) {
      timeView.setCursor(endS);
      onClick(endS);
    }
    if (dragged && event.pointerType === 'mouse' && !event.shiftKey) {
      view.show(Math.min(startS, endS), Math.max(startS, endS));
      timeView.draw();
    }
    release(event);
  });
  element.addEventListener('pointercancel', release);
  element.addEventListener('pointerleave', () => {
    if (startX === null && document.activeElement !== element) timeView.setCursor(null);
  });

  element.addEventListener(
    'wheel',
    (event) => {
      // Without Ctrl the wheel scrolls the page, as everywhere.
      if (!event.ctrlKey && !event.metaKey) return;
      event.preventDefault();
      view.zoom(event.deltaY > 0 ? 1.25 : 0.8, timeView.timeAt(event.clientX));
      timeView.draw();
    },
    { passive: false },
  );

  function pinch(event: PointerEvent): void {
    const [a, b] = [...fingers.values()];
    const before = Math.abs(a! - b!);
    fingers.set(event.pointerId, event.clientX);
    const [c, d] = [...fingers.values()];
    const after = Math.abs(c! - d!);
    if (before > 10 && after > 10) view.zoom(before / after, timeView.timeAt((c! + d!) / 2));
    timeView.draw();
  }

  function release(event: PointerEvent): void {
    fingers.delete(event.pointerId);
    startX = null;
    timeView.setRange(null);
  }
}
