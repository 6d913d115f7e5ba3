import { again, type Made, type Message, message, said } from '../messages/index.js';
import type { Result } from './result/index.js';

/** An arc interval of a recording that a person should listen to, and why. */
export interface Doubt {
  startS: number;
  endS: number;
  reason: string;
  /** The same by its code. */
  reasonMessage: Message;
}

/**
 * What a person should listen to in a result, in order of time: all arc of an `unsure` run or of one
 * that disagrees with its stated set-up, else the segments that name no mode or stay below the run's
 * answer threshold. Empty for `failed`, for `no-arc`, and where nothing is in doubt.
 */
export function doubtsOf(result: Result): Doubt[] {
  if (result.status === 'failed' || result.status === 'no-arc') return [];
  const check = result.crossCheck;
  if (result.status === 'unsure') {
    const text = result.statusReason;
    return wholeArc(result, { text, ...again({ ...result.statusReasonMessage, message: text }) });
  }
  for (const part of [check?.settings, check?.intended]) {
    if (part?.answer !== 'disagrees') continue;
    return wholeArc(result, { text: part.text, ...again({ ...part, message: part.text }) });
  }
  const threshold = Number(result.settings.values['answerThreshold'] ?? 0);
  return result.segments
    .filter((one) => one.mode === null || one.confidence < threshold)
    .map(({ startS, endS, mode, confidence }) =>
      doubt(
        startS,
        endS,
        mode === null
          ? message('no-mode-stands-out')
          : message('mode-in-doubt', { mode, confidence }),
      ),
    );
}

/** The arc intervals; the whole recording where none was found. */
function wholeArc(result: Result, reason: Made): Doubt[] {
  const { arcStretches, source } = result;
  if (arcStretches.length > 0)
    return arcStretches.map(({ startS, endS }) => doubt(startS, endS, reason));
  return source.durationS ? [doubt(0, source.durationS, reason)] : [];
}

function doubt(startS: number, endS: number, reason: Made): Doubt {
  return { startS, endS, reason: reason.text, reasonMessage: said(reason) };
}
