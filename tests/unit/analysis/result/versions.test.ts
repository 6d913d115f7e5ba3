import { describe, expect, it } from 'vitest';
import { type Result, resultSchema } from '../../../../src/analysis/result/index.js';
import { sampleResult } from '../../../support/sample-result.js';

/** As version 1.0 had it: no sentence has its code. The sample has none either. */
const early = { ...sampleResult(), schemaVersion: '1.0' };

describe('the schema of the result', () => {
  // Rejects a schema that refuses the documents people kept.
  it('reads documents of version 1.0', () => {
    expect(resultSchema.safeParse(early).success).toBe(true);
    expect(resultSchema.safeParse({ ...early, schemaVersion: '2.0' }).success).toBe(false);
  });

  // Rejects one that drops the codes on the way through it, or takes any shape for them.
  it('keeps codes and params', () => {
    const result: Result = sampleResult({
      statusReasonMessage: { code: 'mode-held', params: { mode: 'spray', shareOfTime: 0.9 } },
      cautionMessages: [{ code: 'caution-estimate', params: {} }],
    });
    expect(resultSchema.parse(result)).toEqual(result);
    for (const wrong of [{ code: 'mode-held' }, { code: 1, params: {} }, 'mode-held'])
      expect(resultSchema.safeParse({ ...result, statusReasonMessage: wrong }).success).toBe(false);
  });
});
