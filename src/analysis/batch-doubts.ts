import type { Result } from './result/index.js';

/** An arc interval of a recording that a person should listen to, and why. */
export interface Doubt {
  startS: number;
  endS: number;
  reason: string;
}

/**
 * What a person should listen to in a result, in order of time: all arc of an `unsure` run or of one
 * that disagrees with its stated set-up, else the segments that name no mode or stay below the run's
 * answer threshold. Empty for `failed`, for `no-arc`, and where nothing is in doubt.
 */
export function doubtsOf(result: Result): Doubt[] {
  if (result.status === 'failed' || result.status === 'no-arc') return [];
  const check = result.crossCheck;
  if (result.status === 'unsure') return wholeArc(result, result.statusReason);
  if (check?.settings.answer === 'disagrees') return wholeArc(result, check.settings.text);
  if (check?.intended?.answer === 'disagrees') return wholeArc(result, check.intended.text);
  const threshold = Number(result.settings.values['answerThreshold'] ?? 0);
  return result.segments
    .filter((one) => one.mode === null || one.confidence < threshold)
    .map(({ startS, endS, mode, confidence }) => ({
      startS,
      endS,
      reason:
        mode === null
          ? 'No mode stands out in this stretch.'
          : `The mode of this stretch is in doubt: ${mode} at ${confidence.toFixed(2)}.`,
    }));
}

/** The arc intervals; the whole recording where none was found. */
function wholeArc(result: Result, reason: string): Doubt[] {
  const { arcStretches, source } = result;
  if (arcStretches.length > 0)
    return arcStretches.map(({ startS, endS }) => ({ startS, endS, reason }));
  return source.durationS ? [{ startS: 0, endS: source.durationS, reason }] : [];
}
