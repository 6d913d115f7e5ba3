import type { Note } from '../../../core/index.js';
import type { FromFiles, Judged, RawSetup, ToFiles } from '../messages.js';

/** A file being judged in a worker of its own. */
export interface Judging {
  /** The result; null where it was cancelled. A worker that could not be started rejects. */
  done: Promise<Judged | null>;
  cancel(): void;
}

/** Hands a file to a worker. Ending the worker cancels at once, whatever a decoder is doing. */
export function judgeFile(
  file: Blob,
  name: string,
  setup: RawSetup,
  options: {
    lang: string;
    onProgress: (share: number) => void;
    notes?: Note[];
    arcPrior?: number | undefined;
  },
): Judging {
  const worker = new Worker('files.js', { type: 'module' });
  let cancel: () => void = () => {};
  const done = new Promise<Judged | null>((resolve, reject) => {
    cancel = () => resolve(null);
    worker.addEventListener('error', (event) =>
      reject(new Error(event.message || 'the worker did not load')),
    );
    worker.addEventListener('message', ({ data }: MessageEvent<FromFiles>) => {
      if (data.type === 'progress') options.onProgress(data.share);
      if (data.type === 'done')
        resolve({ result: data.result, evidence: data.evidence, pictures: data.pictures });
    });
  }).finally(() => worker.terminate());
  const { lang, notes = [], arcPrior } = options;
  const message: ToFiles = { type: 'judge', file, name, setup, notes, lang, arcPrior };
  worker.postMessage(message);
  return { done, cancel: () => cancel() };
}
