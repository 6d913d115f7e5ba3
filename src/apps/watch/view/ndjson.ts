import type { Observer } from '../events.js';

/** Every event as one line of JSON, results of welds included. */
export function ndjsonView(write: (text: string) => Promise<void>): Observer {
  return { tell: (event) => write(`${JSON.stringify(event)}\n`) };
}
