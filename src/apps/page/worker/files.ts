import { blobSource, openRecording, type Recording } from '../../../recording/index.js';
import type { FromFiles, ToFiles } from '../messages.js';
import { judge } from './analysis.js';
import { draw } from './drawing.js';
import { fileHash } from './fingerprint.js';
import { webCodecsDecoder } from './web-codecs.js';

/** Least change of the share done that is told. */
const STEP = 0.01;

/** Worker: a file in, progress and at the end a result out; or a result in, its pictures out. To cancel, the page ends the worker. */
addEventListener('message', ({ data }: MessageEvent<ToFiles>) => {
  // A promise that fails in a worker tells the page nothing; an error thrown outside of one does.
  work(data).catch((error: unknown) =>
    setTimeout(() => {
      throw error;
    }),
  );
});

async function work(task: ToFiles): Promise<void> {
  if (task.type === 'draw') {
    tell({ type: 'drawn', pictures: draw(task) });
    return;
  }
  const { file, name, setup, notes, lang, arcPrior } = task;
  const source = watchedSource(file, name);
  const open = (): Promise<Recording> =>
    openRecording(source, {}, { decoders: [webCodecsDecoder()] });
  const sha256 = (): Promise<string> => fileHash(file);
  const judged = await judge(open, { name, setup, notes, lang, arcPrior, sha256 });
  tell({ type: 'done', ...judged });
}

/** Progress by how far into the file has been read. */
function watchedSource(file: Blob, name: string): ReturnType<typeof blobSource> {
  const source = blobSource(file, name);
  let told = 0;
  return {
    ...source,
    read: (offset, length) => {
      const share = Math.min(1, (offset + length) / source.size);
      if (share >= told + STEP) {
        told = share;
        tell({ type: 'progress', share });
      }
      return source.read(offset, length);
    },
  };
}

function tell(message: FromFiles): void {
  postMessage(message);
}
