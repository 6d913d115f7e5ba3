import { messagesOf, said, textsOf } from '../../messages/index.js';
import {
  BEFORE_YOU_CHANGE,
  BEFORE_YOU_CHANGE_MESSAGES,
  processName,
  sayQualification,
} from '../index.js';
import { answerIntended, answerSettings } from './answers.js';
import { buildCase, type Context } from './context.js';
import { type Diagnosis, EXPLANATION_RULES } from './explanations/index.js';
import type { CrossCheckInput } from './input.js';
import { marginsOf } from './margins.js';
import type { CrossCheck } from './schema.js';

/**
 * Holds the stated set-up against what was seen. Two answers: do the settings permit it, and is it
 * what was wanted; then explanations for a disagreement, the likeliest first. An empty set-up gives
 * "cannot-tell" and no guesses. The set-up never changes what was seen.
 */
export function crossCheck(input: CrossCheckInput): CrossCheck {
  const c = buildCase(input);
  const settings = answerSettings(c);
  const intended = answerIntended(c);
  const seen = c.modes[0] ?? null;
  const wanted = c.setup.expectedMode;
  const margins =
    seen === null ? { marginV: null, marginA: null } : marginsOf(seen, c.point, c.bounds);
  const explanations = explain(c, {
    c,
    settings,
    intended,
    trouble: isTrouble(c, settings.answer, intended?.answer ?? null),
    seen,
    wanted,
  });
  const name = (mode: typeof seen): string | null =>
    mode === null ? null : processName(mode, c.setup.gas);
  const qualification =
    intended?.answer === 'disagrees' && seen !== null && wanted !== null
      ? sayQualification(seen, wanted)
      : [];
  return {
    settings: {
      ...settings,
      comparedVoltage: c.point.voltageFrom,
      comparedVoltageMessage: c.point.voltageFromMessage,
      ...margins,
      permits: c.permitted,
      comparedCurrent: c.point.currentFrom,
      comparedCurrentMessage: c.point.currentFromMessage,
    },
    intended,
    explanations,
    process: { seen: name(seen), intended: name(wanted) },
    qualification: textsOf(qualification),
    qualificationMessages: messagesOf(qualification),
    cautions: [...BEFORE_YOU_CHANGE],
    cautionMessages: [...BEFORE_YOU_CHANGE_MESSAGES],
  };
}

function isTrouble({ judged, setup }: Context, settings: string, intended: string | null): boolean {
  if (settings === 'disagrees' || intended === 'disagrees') return true;
  const stated = judged.voltageV !== null || judged.currentA !== null || setup.gas !== null;
  return stated && (settings === 'cannot-tell' || intended === 'cannot-tell');
}

function explain(c: Context, diagnosis: Diagnosis): CrossCheck['explanations'] {
  return EXPLANATION_RULES.filter(({ id }) => mayJudge(id, c.seen.status))
    .map((rule) => ({ id: rule.id, finding: rule.judge(diagnosis) }))
    .filter((one) => one.finding !== null)
    .sort((a, b) => b.finding!.weight - a.finding!.weight)
    .map(({ id, finding }, i) => {
      const { what, evidenceFor, evidenceAgainst, check } = finding!;
      return {
        id,
        rank: i + 1,
        ...what,
        evidenceFor: textsOf(evidenceFor),
        evidenceForMessages: messagesOf(evidenceFor),
        evidenceAgainst: textsOf(evidenceAgainst),
        evidenceAgainstMessages: messagesOf(evidenceAgainst),
        check: check.text,
        checkMessage: said(check),
      };
    });
}

/** Without a mode the recording explains itself, and a voltage loss that was measured stays one. */
function mayJudge(id: string, status: Context['seen']['status']): boolean {
  if (status === 'ok' || id === 'recording-cannot-support') return true;
  return status === 'unsure' && (id === 'lead-loss' || id === 'drooping-supply');
}
