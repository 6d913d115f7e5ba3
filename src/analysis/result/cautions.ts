import { type Message, message, messagesOf, textsOf } from '../../messages/index.js';

const SENTENCES = [
  message('caution-arc-welding'),
  message('caution-rules-first'),
  message('caution-estimate'),
];

/**
 * What goes with every verdict that names or judges an arc, because a person may act on it. Hazards as
 * listed by ANSI Z49.1:2021 (eyes, burns, fume, shock, noise).
 */
export const CAUTIONS: readonly string[] = textsOf(SENTENCES);

/** The same by their codes. */
export const CAUTION_MESSAGES: readonly Message[] = messagesOf(SENTENCES);
