export { MEASURED_SIGNS, type MeasuredSign } from './measured-signs.js';
export { type PlainRefusal, plainRefusal } from './plain-refusal.js';
export { signReasons, type UsualRange, type UsualSigns } from './sign-reasons.js';
