import { describe, expect, it } from 'vitest';
import { failedResult, resultSchema } from '../../../../src/analysis/result/index.js';
import { ArcError } from '../../../../src/core/index.js';

const known = {
  path: 'a.wav',
  sha256: null,
  host: 'test',
  settings: { fingerprint: 'f', values: {} },
};

describe('failedResult', () => {
  it('keeps the parts of our own error and obeys the schema', () => {
    const error = new ArcError({ code: 'bad-x', what: 'X is 3.', expected: '2', todo: 'Use 2.' });
    const result = failedResult({ ...known, error });
    expect(resultSchema.parse(result)).toEqual(result);
    expect(result.status).toBe('failed');
    expect(result.error).toEqual({
      code: 'bad-x',
      message: 'X is 3. Expected 2. Use 2.',
      expected: '2',
      todo: 'Use 2.',
    });
    // A failed input never carries a mode or a confidence.
    expect([result.mode, result.confidence, result.probabilities]).toEqual([null, null, null]);
  });

  it('calls any other error a fault of the tool', () => {
    const result = failedResult({ ...known, error: new TypeError('x is undefined') });
    expect(result.error?.code).toBe('internal-error');
    expect(result.error?.message).toContain('x is undefined');
    expect(resultSchema.safeParse(result).success).toBe(true);
  });
});
