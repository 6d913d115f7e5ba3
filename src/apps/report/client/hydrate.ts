import type { TimePictureWords } from '../../view/index.js';
import type { TimeRun } from '../run-view.js';
import { watchKeys } from './keys.js';
import { Player } from './player.js';
import { watchPointer } from './pointer.js';
import { byId, TimeView } from './time-view.js';
import { View } from './view.js';

/**
 * Brings the picture over time in this document to life: zoom, values, playback, all in the words that it
 * was drawn with. Answers with what ends
 * it, for a page that shows another run afterwards.
 */
export function hydrate(run: TimeRun, words: TimePictureWords): () => void {
  const view = new View(run.evidence.durationS);
  const timeView = new TimeView(run, view, words);
  const sound = run.evidence.playback;
  const player = sound && new Player(sound, timeView);

  watchPointer(timeView, view, (timeS) => player?.seek(timeS));
  watchKeys(run, timeView, view, () => player?.toggle());
  watchControls(timeView, view);
  const size = new ResizeObserver(() => {
    timeView.draw();
    player?.place();
  });
  size.observe(timeView.element);
  const ending = new AbortController();
  const { signal } = ending;
  addEventListener('beforeprint', () => timeView.print(true), { signal });
  addEventListener('afterprint', () => timeView.print(false), { signal });
  return () => {
    ending.abort();
    size.disconnect();
    player?.stop();
  };
}

function watchControls(timeView: TimeView, view: View): void {
  const actions: Record<string, () => void> = {
    in: () => view.zoom(0.5, timeView.cursorS ?? undefined),
    out: () => view.zoom(2),
    earlier: () => view.move(-0.5),
    later: () => view.move(0.5),
    whole: () => view.whole(),
  };
  for (const button of document.querySelectorAll<HTMLButtonElement>('[data-do]'))
    button.addEventListener('click', () => {
      actions[button.dataset['do'] ?? '']?.();
      timeView.draw();
    });
  const goTo = byId('go-to') as HTMLSelectElement;
  goTo.addEventListener('change', () => {
    const [fromS, toS] = goTo.value.split(' ').map(Number);
    if (fromS === undefined || toS === undefined) return;
    const air = 0.03 * (toS - fromS);
    view.show(fromS - air, toS + air);
    timeView.draw();
  });
}
