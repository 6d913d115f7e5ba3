import { type Message, message, messagesOf, textsOf } from '../messages/index.js';

const SENTENCES = [
  message('caution-procedure-first'),
  message('caution-measuring'),
  message('caution-no-inspection'),
];

/** Said beside every piece of advice. General safety per ANSI Z49.1; local rules come first. */
export const BEFORE_YOU_CHANGE: readonly string[] = textsOf(SENTENCES);

/** The same by their codes. */
export const BEFORE_YOU_CHANGE_MESSAGES: readonly Message[] = messagesOf(SENTENCES);
