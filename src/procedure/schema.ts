import * as z from 'zod';
import { VOLTS_AT } from '../setup/index.js';

/** Names the form of a procedure document; a new form gets a new number. */
export const PROCEDURE_FORMAT = 'arc-transfer procedure 1';

/** A quantity with its unit, such as `26 V`, `9 m/min`, `354 in/min`, `1,2 mm`, `3/4 in`. */
const quantity = (unit: string) =>
  z.string().regex(/\d.*\p{L}|\d.*["″]/u, `a number with its unit, such as "${unit}"`);

/** What is allowed: from, to, both, or a value with a tolerance in its unit or in per cent. */
const limit = <Shape extends z.ZodRawShape>(example: string, more: Shape) => {
  const one = quantity(example);
  return z.union([
    z.strictObject({ min: one, max: one, ...more }),
    z.strictObject({ min: one, ...more }),
    z.strictObject({ max: one, ...more }),
    z.strictObject({
      nominal: one,
      tolerance: z
        .string()
        .regex(/\d/u)
        .describe('in the unit of the value or in per cent, to either side: "2 V", "10 %"'),
      ...more,
    }),
  ]);
};

const share = z
  .string()
  .regex(/^\s*\d+([.,]\d+)?\s*%\s*$/u)
  .describe('per cent, such as "90 %"');

/** What the welding procedure allows, as a person writes it: text with units, inch or metric, AWS or ISO words. */
export const procedureSchema = z.strictObject({
  $schema: z.string().optional(),
  format: z.literal(PROCEDURE_FORMAT),
  name: z
    .string()
    .min(1)
    .describe('number or name of the procedure, as it is to stand on the record'),
  revision: z.string().min(1).optional(),
  note: z.string().min(1).optional().describe('anything a reader of the record should know'),
  mode: z
    .union([z.string().min(1), z.array(z.string().min(1)).min(1)])
    .describe(
      'mode or modes by AWS or ISO words: short-circuit, GMAW-S, dip, D; globular, G; spray, S; pulsed spray, GMAW-P, P',
    ),
  keep: z
    .strictObject({
      share: share.optional(),
      longestDeparture: quantity('0.5 s').optional(),
    })
    .optional()
    .describe(
      'least share of the arc time in these modes (default 90 %) and longest departure that is passed over (default 0.5 s); both defaults are our own choice, no source',
    ),
  wire: z
    .strictObject({
      diameter: quantity('1.2 mm').optional(),
      material: z.string().min(1).optional(),
    })
    .optional(),
  gas: z.string().min(1).optional().describe('a mix such as "Ar+18CO2", or an ISO 14175 symbol'),
  polarity: z.string().min(1).optional().describe('dcep, dcen or ac'),
  source: z.string().min(1).optional().describe('programme of the source: steady or pulsed'),
  position: z
    .union([z.string().min(1), z.array(z.string().min(1)).min(1)])
    .optional()
    .describe('by AWS or ISO 6947: 1G, 2F, 3G, PA, PF, vertical-up …'),
  joint: z.string().min(1).optional(),
  pass: z.string().min(1).optional().describe('root, fill, cap …'),
  plate: limit('5 mm', {}).optional().describe('thickness that the procedure holds for'),
  volts: limit('26 V', {
    at: z.enum(VOLTS_AT).describe('where these volts hold: source, feeder or arc'),
  }).optional(),
  amperes: limit('220 A', {}).optional(),
  wireFeed: limit('9 m/min', {}).optional(),
  travelSpeed: limit('300 mm/min', {}).optional(),
  stickOut: limit('15 mm', {}).optional(),
  heatInput: limit('1.2 kJ/mm', {
    countedBy: z
      .enum(['aws', 'asme', 'en', 'iso'])
      .describe('aws and asme count no thermal efficiency; en and iso count 0.8 for gas metal arc'),
  }).optional(),
});

export type ProcedureDocument = z.infer<typeof procedureSchema>;

/** The published JSON Schema (draft 2020-12) of a procedure document, made from the zod schema. */
export function procedureJsonSchema(): Record<string, unknown> {
  const { $schema, ...rest } = z.toJSONSchema(procedureSchema, { target: 'draft-2020-12' });
  return { $schema, title: PROCEDURE_FORMAT, ...rest };
}
