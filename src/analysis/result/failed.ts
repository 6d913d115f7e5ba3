import { isArcError, TOOL_NAME, TOOL_VERSION } from '../../core/index.js';
import { message, said } from '../../messages/index.js';
import type { Result } from './schema.js';
import { SCHEMA_VERSION } from './version.js';

/** What is known of an input that could not be judged. */
export interface FailedInput {
  path: string;
  sha256: string | null;
  host: string;
  settings: Result['settings'];
  error: unknown;
}

/** The result of an input that could not be read or judged: status `failed`, the cause, nothing else. */
export function failedResult(input: FailedInput): Result {
  const error = describe(input.error);
  return {
    schemaVersion: SCHEMA_VERSION,
    tool: { name: TOOL_NAME, version: TOOL_VERSION, host: input.host },
    source: {
      path: input.path,
      sha256: input.sha256,
      kind: null,
      format: null,
      sampleRateHz: null,
      durationS: null,
      channels: [],
      notes: [],
    },
    status: 'failed',
    statusReason: error.message,
    statusReasonMessage: said(
      message('input-failed', { errorCode: error.code, text: error.message }),
    ),
    error,
    mode: null,
    confidence: null,
    sourceProgramme: 'unknown',
    probabilities: null,
    shareOfArcTime: null,
    arcStretches: [],
    segments: [],
    features: {},
    quality: [],
    reasons: [],
    crossCheck: null,
    settings: input.settings,
    model: null,
    steps: [],
    cautions: [],
    cautionMessages: [],
  };
}

/** Our own errors keep their parts; any other is a fault of the tool and is called so. */
function describe(error: unknown): NonNullable<Result['error']> {
  if (isArcError(error)) {
    const { code, message, expected, todo } = error;
    return { code, message, expected, todo };
  }
  const text = error instanceof Error ? error.message : String(error);
  return {
    code: 'internal-error',
    message: `The tool itself failed: ${text}`,
    expected: 'a result or a clear error',
    todo: 'Please report this with the recording.',
  };
}
