/** The items of an iterable up to the moment of an abort, however long the next one would take. */
export async function* untilAborted<T>(
  items: AsyncIterable<T>,
  signal: AbortSignal,
): AsyncGenerator<T> {
  const iterator = items[Symbol.asyncIterator]();
  let pending = false;
  try {
    while (!signal.aborted) {
      pending = true;
      const next = await orAborted(iterator.next(), signal);
      if (next === undefined) return;
      pending = false;
      if (next.done) return;
      yield next.value;
    }
  } finally {
    const left = iterator.return?.();
    // An iterator that waits for its next item may never answer.
    if (pending) left?.catch(() => {});
    else await left;
  }
}

/**
 * What is promised, or undefined when aborted before. Each wait has a promise of its own and lets go of the
 * signal: a race against one promise that lives as long as the source would hold on to every item of it.
 */
function orAborted<T>(promised: Promise<T>, signal: AbortSignal): Promise<T | undefined> {
  return new Promise((resolve, reject) => {
    const release = onAbort(signal, () => resolve(undefined));
    promised.then(resolve, reject).finally(release);
  });
}

/** Waits, or less long when aborted. */
export function pause(ms: number, signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    const done = (): void => {
      clearTimeout(timer);
      signal.removeEventListener('abort', done);
      resolve();
    };
    const timer = setTimeout(done, ms);
    signal.addEventListener('abort', done, { once: true });
    if (signal.aborted) done();
  });
}

/** Calls `close` when aborted; the answer takes that back. What waits in a read would else never end. */
export function onAbort(signal: AbortSignal, close: () => void): () => void {
  signal.addEventListener('abort', close, { once: true });
  if (signal.aborted) close();
  return () => signal.removeEventListener('abort', close);
}
