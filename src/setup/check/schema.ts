import * as z from 'zod';
import { MODES } from '../../core/index.js';

const answer = z.enum(['agrees', 'disagrees', 'cannot-tell']);
const permit = z.enum(['yes', 'possible', 'no']);

/** The set-up the user stated held against the verdict. */
export const crossCheckSchema = z.object({
  /** Do the stated settings permit what was seen? */
  settings: z.object({
    answer,
    text: z.string(),
    /** Which voltage was compared, and from where it was taken or estimated. */
    comparedVoltage: z.string().nullable(),
    /** Distance to the nearest boundary of the seen mode; negative outside it. */
    marginV: z.number().nullable(),
    marginA: z.number().nullable(),
    /** What the settings permit, by mode. */
    permits: z.record(z.enum(MODES), permit).optional(),
    /** Which current was compared, and from where it was taken or estimated. */
    comparedCurrent: z.string().nullable().optional(),
  }),
  /** Is it the mode that was wanted? Null where no mode was stated as wanted. */
  intended: z.object({ answer, text: z.string() }).nullable(),
  explanations: z.array(
    z.object({
      id: z.string(),
      rank: z.number().int().positive(),
      text: z.string(),
      evidenceFor: z.array(z.string()),
      evidenceAgainst: z.array(z.string()),
      check: z.string(),
    }),
  ),
  /** ISO 4063 short names of what was seen and of what was wanted. */
  process: z.object({ seen: z.string().nullable(), intended: z.string().nullable() }).optional(),
  /** What a step between the two may mean for a qualified procedure; to be checked in the code. */
  qualification: z.array(z.string()).optional(),
  /** Said beside every check: procedure, safety, not an inspection. */
  cautions: z.array(z.string()).optional(),
});

export type CrossCheck = z.infer<typeof crossCheckSchema>;
export type Answer = z.infer<typeof answer>;
