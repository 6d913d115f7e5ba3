/** What became of one item of a batch. `index` counts the items from 0 in the order they were given. */
export interface BatchResult<T, R> {
  index: number;
  item: T;
  value: R;
}

export interface BatchOptions {
  /** Most items that are begun and not yet handed on; this bounds the memory. At least 1. */
  limit: number;
  /** True hands results on in the order of the items, false as soon as they are there. */
  ordered: boolean;
  /** Asked before each new item; true begins no more, while what was begun is still handed on. */
  stopped?: () => boolean;
}

/**
 * Works through items with at most `limit` under way, taking no item before there is room for it, so
 * that neither a long list nor a slow reader piles anything up. `work` should turn what goes wrong with
 * one item into a value: an error that leaves it ends the batch.
 */
export async function* runBatch<T, R>(
  items: Iterable<T> | AsyncIterable<T>,
  work: (item: T, index: number) => Promise<R>,
  options: BatchOptions,
): AsyncGenerator<BatchResult<T, R>> {
  const source = Symbol.asyncIterator in items ? items[Symbol.asyncIterator]() : slow(items);
  const finished = new Finished<BatchResult<T, R>>();
  const state = { begun: 0, given: 0, taking: false, drained: false };
  const begin = async (item: T, index: number): Promise<void> => {
    try {
      finished.add(index, { index, item, value: await work(item, index) });
    } catch (error) {
      finished.fail(error);
    }
  };
  const hasRoom = (): boolean => state.begun - state.given < options.limit && !options.stopped?.();
  // Runs beside the handing on: a source that waits for the answer to its last item gets it.
  const fill = async (): Promise<void> => {
    if (state.taking) return;
    state.taking = true;
    try {
      while (!state.drained && hasRoom()) {
        const taken = await source.next();
        if (taken.done) state.drained = true;
        else void begin(taken.value, state.begun++);
      }
    } catch (error) {
      finished.fail(error);
    }
    state.taking = false;
    finished.wake();
  };
  try {
    for (;;) {
      if (!state.drained && hasRoom()) void fill();
      const result = finished.take(options.ordered ? state.given : undefined);
      if (result) {
        yield result;
        state.given += 1;
      } else if (!state.taking && state.begun === state.given) return;
      else await finished.change();
    }
  } finally {
    const left = source.return?.();
    // A source that is being asked for its next item may never answer.
    if (!state.taking) await left;
  }
}

/** Results that wait to be handed on, and the one who waits for them. */
class Finished<R> {
  readonly #ready = new Map<number, R>();
  #error: { error: unknown } | undefined;
  #wake: (() => void) | undefined;

  add(index: number, result: R): void {
    this.#ready.set(index, result);
    this.wake();
  }

  fail(error: unknown): void {
    this.#error ??= { error };
    this.wake();
  }

  wake(): void {
    this.#wake?.();
  }

  /** The result of an index, or without one the first that is there; undefined when not there yet. */
  take(wanted: number | undefined): R | undefined {
    if (this.#error) throw this.#error.error;
    const index = wanted ?? this.#ready.keys().next().value;
    if (index === undefined) return undefined;
    const result = this.#ready.get(index);
    this.#ready.delete(index);
    return result;
  }

  /** Until something was added, failed or woken. */
  change(): Promise<void> {
    return new Promise((resolve) => {
      this.#wake = resolve;
    });
  }
}

async function* slow<T>(items: Iterable<T>): AsyncGenerator<T> {
  yield* items;
}
