import { Piscina } from 'piscina';
import { packageFile } from '../../../files/package-file.js';

/** Threads that read recordings, draw arcs or fit models. */
export function openPool(threads: number): Piscina {
  return new Piscina({
    filename: packageFile('dist/apps/cli/fit/worker.js').href,
    minThreads: threads,
    maxThreads: threads,
  });
}
