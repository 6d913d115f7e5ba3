export { MEASURED_SIGNS, type MeasuredSign } from './measured-signs.js';
export { type PlainRefusal, plainRefusal } from './plain-refusal.js';
export { signReasons } from './sign-reasons.js';
export type { UsualRange, UsualSigns } from './usual-range.js';
