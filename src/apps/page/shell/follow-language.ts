import type { Drawn, FromFiles, ToFiles } from '../messages.js';
import { tagOf } from '../words/index.js';
import type { Store } from './store.js';

/**
 * Draws the open pictures again where they are not in the language or units of the page. Until they are there, and
 * where no worker can be had, the old ones stay, marked as being in theirs.
 */
export async function followLanguage(store: Store): Promise<void> {
  const { shown, words, units } = store.state;
  const lang = tagOf(words.lang, units);
  if (!shown?.evidence || !shown.pictures || shown.pictures.lang === lang) return;
  const { run, evidence } = shown;
  const pictures = await drawAgain({
    type: 'draw',
    result: run.result,
    evidence,
    setup: run.setup,
    lang,
  });
  const now = store.state.shown;
  if (!pictures || now?.run.id !== run.id) return;
  store.set({ shown: { ...now, pictures } });
  // The language may have been changed once more meanwhile.
  await followLanguage(store);
}

function drawAgain(message: Extract<ToFiles, { type: 'draw' }>): Promise<Drawn | null> {
  const worker = new Worker('files.js', { type: 'module' });
  return new Promise<Drawn | null>((resolve) => {
    worker.addEventListener('error', () => resolve(null));
    worker.addEventListener('message', ({ data }: MessageEvent<FromFiles>) => {
      if (data.type === 'drawn') resolve(data.pictures);
    });
    worker.postMessage(message);
  }).finally(() => worker.terminate());
}
