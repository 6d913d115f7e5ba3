import { describe, expect, it } from 'vitest';
import { isArcError } from '../../src/core/index.js';
import { largestError, readAll } from './read-all.js';
import { wavCases } from './wav-cases.js';

/**
 * Expected samples are the sine itself (plain maths) and tolerances half a quantisation step, so no
 * reader's output is compared with itself. Each case names the wrong reader that it turns down.
 */
describe('the 22 WAV cases', () => {
  it('are 22', () => {
    expect(wavCases()).toHaveLength(22);
  });

  for (const wav of wavCases()) {
    it(`${wav.name} (turns down a reader that ${wav.rejects})`, async () => {
      const result = await readAll(wav.bytes).catch((error: unknown) => error);
      if (wav.errorCode) {
        expect(isArcError(result) && result.code).toBe(wav.errorCode);
        return;
      }
      if (result instanceof Error) throw result;
      const { recording, channels, noteCodes } = result as Awaited<ReturnType<typeof readAll>>;
      expect(recording.format).toBe('wav');
      expect(recording.kind).toBe('sound');
      expect(recording.sampleRateHz).toBe(wav.rateHz ?? 48_000);
      // 1e-12: rounding of the sine and the scaling in binary arithmetic.
      expect(largestError(channels[0]!, wav.expected!.samples)).toBeLessThanOrEqual(
        wav.expected!.within + 1e-12,
      );
      expect(noteCodes).toEqual(wav.notes ?? []);
    });
  }
});
