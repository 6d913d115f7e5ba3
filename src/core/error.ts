interface Coded {
  code: string;
  params: Record<string, unknown>;
}

/** What happened, what was expected (the end of "Expected …"), and what to do, in one sentence or more. */
export interface ErrorSentences {
  what: Coded;
  expected: Coded;
  todo: readonly Coded[];
}

/**
 * The one error type that users meet. It says what happened (with the value), what was expected,
 * and what to do, so that every front (terminal, table row, page) can show all three.
 */
export class ArcError extends Error {
  /** Stable kebab-case identifier, e.g. `bad-sample-rate`. Programs may match on it. */
  readonly code: string;
  /** What happened, with the value. */
  readonly what: string;
  /** What would have been right, with units and range. */
  readonly expected: string;
  /** The next thing to try. */
  readonly todo: string;

  /** The three sentences by their codes, so that they can be said in another language; null where they have none. */
  readonly sentences: ErrorSentences | null;

  constructor(parts: {
    code: string;
    what: string;
    expected: string;
    todo: string;
    sentences?: ErrorSentences;
    cause?: unknown;
  }) {
    super(`${parts.what} Expected ${parts.expected}. ${parts.todo}`, { cause: parts.cause });
    this.name = 'ArcError';
    this.code = parts.code;
    this.what = parts.what;
    this.expected = parts.expected;
    this.todo = parts.todo;
    this.sentences = parts.sentences ?? null;
  }
}

/** True for errors made by this library, also across realms and worker boundaries. */
export function isArcError(error: unknown): error is ArcError {
  return error instanceof Error && error.name === 'ArcError' && 'code' in error;
}
