import { type Language, retell } from '../../messages/index.js';
import type { CrossCheck } from './schema.js';

type Told = Parameters<typeof retell>[0];

/** A comparison whose texts are told again in a language, in its units and with its names of the modes. */
export function crossCheckIn(check: CrossCheck, language: Language): CrossCheck {
  const tell = (text: string, message: Told | null | undefined): string =>
    (message == null ? null : retell(message, language)) ?? text;
  const list = (
    texts: readonly string[],
    messages: readonly (Told | undefined)[] | undefined,
  ): string[] => texts.map((text, i) => tell(text, messages?.[i]));
  const { settings, intended } = check;
  return {
    ...check,
    settings: { ...settings, text: tell(settings.text, settings) },
    intended: intended && { ...intended, text: tell(intended.text, intended) },
    explanations: check.explanations.map((one) => ({
      ...one,
      text: tell(one.text, one),
      evidenceFor: list(one.evidenceFor, one.evidenceForMessages),
      evidenceAgainst: list(one.evidenceAgainst, one.evidenceAgainstMessages),
      check: tell(one.check, one.checkMessage),
    })),
    ...(check.advice === undefined ? {} : { advice: list(check.advice, check.adviceMessages) }),
    ...(check.heatNote === undefined
      ? {}
      : { heatNote: tell(check.heatNote, check.heatNoteMessage) }),
    ...(check.plateNote === undefined
      ? {}
      : { plateNote: tell(check.plateNote, check.plateNoteMessage) }),
    ...(check.qualification === undefined
      ? {}
      : { qualification: list(check.qualification, check.qualificationMessages) }),
  };
}
