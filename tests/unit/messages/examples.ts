import type { MessageCode, ParamsOf } from '../../../src/messages/index.js';
import type { RefusalParams } from '../../../src/messages/rooms/refusals.js';
import { COACHED } from './coached.js';
import { SPOKEN } from './spoken.js';
import { WRITTEN } from './written.js';

/**
 * For each code params and the text that must come of them; a code without an example does not compile. What is
 * wrong with a set-up is said in full by the tests of the set-up.
 */
export type Examples = {
  [C in Exclude<MessageCode, keyof RefusalParams>]: readonly (readonly [ParamsOf<C>, string])[];
};

export const EXAMPLES: Examples = { ...SPOKEN, ...WRITTEN, ...COACHED };
