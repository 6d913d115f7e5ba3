import { type Made, message, messagesOf, said, textsOf } from '../../messages/index.js';
import {
  arcEnergyOf,
  BEFORE_YOU_CHANGE,
  BEFORE_YOU_CHANGE_MESSAGES,
  heatInput,
  processName,
  sayAdvice,
  sayModeUse,
  sayQualification,
  warnOfPosition,
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
  const advice = adviceFor(c, explanations[0]?.id);
  const plate = plateNote(c);
  const named = seen ?? wanted;
  const use = named === null ? [] : sayModeUse(named, c.setup);
  const warning = warnOfPosition(wanted === null ? c.modes : [...c.modes, wanted], c.setup);
  const energy = arcEnergyOf(c.setup, c.point);
  const lacks = heatLacks(c);
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
      expectedShares: c.shares,
      comparedCurrent: c.point.currentFrom,
      comparedCurrentMessage: c.point.currentFromMessage,
    },
    intended,
    explanations,
    advice: textsOf(advice),
    adviceMessages: messagesOf(advice),
    ...(energy === null
      ? {}
      : {
          heatInput: {
            arcEnergyKjPerMm: energy,
            heatInputKjPerMm: { min: heatInput(energy.min), max: heatInput(energy.max) },
          },
        }),
    ...(lacks === null ? {} : { heatNote: lacks.text, heatNoteMessage: said(lacks) }),
    ...(plate === null ? {} : { plateNote: plate.text, plateNoteMessage: said(plate) }),
    ...(use.length === 0 ? {} : { modeUse: textsOf(use), modeUseMessages: messagesOf(use) }),
    ...(warning === null
      ? {}
      : { positionWarning: warning.text, positionWarningMessage: said(warning) }),
    process: { seen: name(seen), intended: name(wanted) },
    qualification: textsOf(qualification),
    qualificationMessages: messagesOf(qualification),
    cautions: [...BEFORE_YOU_CHANGE],
    cautionMessages: [...BEFORE_YOU_CHANGE_MESSAGES],
  };
}

/** Causes that no setting mends: they are looked for before anything is moved. */
const FAULTS: ReadonlySet<string> = new Set([
  'recording-cannot-support',
  'pulsed-programme-running',
  'pulsed-programme-missing',
  'controlled-dip-running',
  'gas-mode-conflict',
  'gas-not-as-stated',
  'drooping-supply',
  'lead-loss',
  'shielding-lost',
  'wrong-polarity',
  'wrong-wire',
  'long-stick-out',
  'feed-trouble',
]);

function adviceFor({ expected, setup, seen }: Context, first: string | undefined): Made[] {
  const { advice } = expected;
  if (advice === null || seen.status !== 'ok') return [];
  const fault = first !== undefined && FAULTS.has(first);
  if (fault && advice.kind !== 'refused') return [];
  return sayAdvice(advice, setup);
}

function heatLacks({ setup, point }: Context): Made | null {
  const [volts, amps] = [point.voltageV === null, point.currentA === null];
  if (setup.travelSpeedMmPerMin === null || (!volts && !amps)) return null;
  return message('heat-input-lacks', { volts, amps });
}

/** Above this short-circuit is taught to risk lack of fusion, mm (common practice, no source). */
const THICK_PLATE_MM = 6.4;

function plateNote({ setup, modes }: Context): Made | null {
  const shorts = modes.includes('short-circuit') || setup.expectedMode === 'short-circuit';
  if (setup.plateMm === null) return null;
  if (setup.plateMm <= THICK_PLATE_MM || !shorts) return message('plate-changes-nothing');
  return message('plate-thick-for-short-circuit');
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
