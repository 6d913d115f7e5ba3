import { Piscina } from 'piscina';
import { packageFile } from '../package-file.js';

/** Threads that read recordings, draw arcs or fit models. */
export function openPool(threads: number): Piscina {
  return new Piscina({
    filename: packageFile('dist/node/fit/worker.js').href,
    minThreads: threads,
    maxThreads: threads,
  });
}
