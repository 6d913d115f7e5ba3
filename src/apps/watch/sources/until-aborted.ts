/** The items of an iterable up to the moment of an abort, however long the next one would take. */
export async function* untilAborted<T>(
  items: AsyncIterable<T>,
  signal: AbortSignal,
): AsyncGenerator<T> {
  const iterator = items[Symbol.asyncIterator]();
  let stop: () => void = () => {};
  const aborted = new Promise<undefined>((resolve) => {
    stop = () => resolve(undefined);
    signal.addEventListener('abort', stop, { once: true });
  });
  let pending = false;
  try {
    while (!signal.aborted) {
      pending = true;
      const next = await Promise.race([iterator.next(), aborted]);
      if (next === undefined) return;
      pending = false;
      if (next.done) return;
      yield next.value;
    }
  } finally {
    signal.removeEventListener('abort', stop);
    const left = iterator.return?.();
    // An iterator that waits for its next item may never answer.
    if (pending) left?.catch(() => {});
    else await left;
  }
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
