/** A sentence of an error without its text. */
export interface SentenceOfError {
  code: string;
  params: Record<string, unknown>;
}

type ErrorPart = 'what' | 'expected' | 'todo' | 'whole';

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
  /** The three, and the whole message, by code and params for other languages; see `messages`. */
  readonly said: Readonly<Record<ErrorPart, SentenceOfError>> | undefined;

  constructor(parts: {
    code: string;
    what: string;
    expected: string;
    todo: string;
    said?: Record<ErrorPart, SentenceOfError>;
    cause?: unknown;
  }) {
    super(`${parts.what} Expected ${parts.expected}. ${parts.todo}`, { cause: parts.cause });
    this.name = 'ArcError';
    this.code = parts.code;
    this.what = parts.what;
    this.expected = parts.expected;
    this.todo = parts.todo;
    this.said = parts.said;
  }
}

/** True for errors made by this library, also across realms and worker boundaries. */
export function isArcError(error: unknown): error is ArcError {
  return error instanceof Error && error.name === 'ArcError' && 'code' in error;
}
