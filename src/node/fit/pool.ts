import { availableParallelism } from 'node:os';
import { Piscina } from 'piscina';
import { packageFile } from '../package-file.js';

/** Threads that draw arcs or fit models; as many as there are processors where nothing is said. */
export function openPool(workers: number | undefined): Piscina {
  const threads = workers ?? availableParallelism();
  return new Piscina({
    filename: packageFile('dist/node/fit/worker.js').href,
    minThreads: threads,
    maxThreads: threads,
  });
}
