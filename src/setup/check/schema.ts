import * as z from 'zod';
import { MODES } from '../../core/index.js';
import { messageSchema, paramsSchema } from '../../messages/schema.js';

const answer = z.enum(['agrees', 'disagrees', 'cannot-tell']);
const messages = z.array(messageSchema).optional();
const permit = z.enum(['yes', 'possible', 'no']);

/** The sentence of `text` by its code. Since 1.1, like all fields whose names end in `Message` or `Messages`. */
const sentence = { code: z.string().optional(), params: paramsSchema };

/** The set-up the user stated held against the verdict. */
export const crossCheckSchema = z.object({
  /** Do the stated settings permit what was seen? */
  settings: z.object({
    answer,
    text: z.string(),
    ...sentence,
    /** Which voltage was compared, and from where it was taken or estimated. */
    comparedVoltage: z.string().nullable(),
    comparedVoltageMessage: messageSchema.nullable().optional(),
    /** Distance to the nearest boundary of the seen mode; negative outside it. */
    marginV: z.number().nullable(),
    marginA: z.number().nullable(),
    /** What the settings permit, by mode. */
    permits: z.record(z.enum(MODES), permit).optional(),
    /** Share of the arc time that each mode is expected to take there, 0 to 1. */
    expectedShares: z.record(z.enum(MODES), z.number()).nullable().optional(),
    /** Which current was compared, and from where it was taken or estimated. */
    comparedCurrent: z.string().nullable().optional(),
    comparedCurrentMessage: messageSchema.nullable().optional(),
  }),
  /** Is it the mode that was wanted? Null where no mode was stated as wanted. */
  intended: z.object({ answer, text: z.string(), ...sentence }).nullable(),
  explanations: z.array(
    z.object({
      id: z.string(),
      rank: z.number().int().positive(),
      text: z.string(),
      ...sentence,
      evidenceFor: z.array(z.string()),
      evidenceForMessages: messages,
      evidenceAgainst: z.array(z.string()),
      evidenceAgainstMessages: messages,
      check: z.string(),
      checkMessage: messageSchema.optional(),
    }),
  ),
  /** The way from what was seen to the wanted mode; empty where a fault has to be found first. */
  advice: z.array(z.string()).optional(),
  adviceMessages: messages,
  /** Energy along the seam from measured or stated volts, amperes and travel speed, kJ/mm. */
  heatInput: z
    .object({
      /** Without thermal efficiency, as AWS and ASME count it. */
      arcEnergyKjPerMm: z.object({ min: z.number(), max: z.number() }),
      /** With the thermal efficiency 0.8 of gas metal arc welding (EN 1011-1). */
      heatInputKjPerMm: z.object({ min: z.number(), max: z.number() }),
    })
    .optional(),
  /** Why no heat input could be given although a travel speed was stated. */
  heatNote: z.string().optional(),
  heatNoteMessage: messageSchema.optional(),
  /** What the plate stated says of the mode seen or wanted. */
  plateNote: z.string().optional(),
  plateNoteMessage: messageSchema.optional(),
  /** Where the mode may be used: position, good for, bad for; where plate or position was stated. */
  modeUse: z.array(z.string()).optional(),
  modeUseMessages: messages,
  /** Conventional spray on steel or stainless in another position than flat and horizontal. */
  positionWarning: z.string().optional(),
  positionWarningMessage: messageSchema.optional(),
  /** ISO 4063 short names of what was seen and of what was wanted. */
  process: z.object({ seen: z.string().nullable(), intended: z.string().nullable() }).optional(),
  /** What a step between the two may mean for a qualified procedure; to be checked in the code. */
  qualification: z.array(z.string()).optional(),
  qualificationMessages: messages,
  /** Said beside every check: procedure, safety, not an inspection. */
  cautions: z.array(z.string()).optional(),
  cautionMessages: messages,
});

export type CrossCheck = z.infer<typeof crossCheckSchema>;
export type Answer = z.infer<typeof answer>;
