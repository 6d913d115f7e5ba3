import type { UsualSigns } from './sign-reasons.js';

export const USUAL_SIGNS: UsualSigns = {} as UsualSigns;
