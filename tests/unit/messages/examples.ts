import type { MessageCode, ParamsOf } from '../../../src/messages/index.js';
import { COACHED } from './coached.js';
import { SPOKEN } from './spoken.js';
import { WRITTEN } from './written.js';

/** For each code params and the text that must come of them; a code without an example does not compile. */
export type Examples = { [C in MessageCode]: readonly (readonly [ParamsOf<C>, string])[] };

export const EXAMPLES: Examples = { ...SPOKEN, ...WRITTEN, ...COACHED };
