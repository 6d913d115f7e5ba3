import * as z from 'zod';
import { MODES } from '../core/index.js';
import { messageSchema } from '../messages/schema.js';
import { VOLTS_AT } from '../setup/index.js';

/** Names the form of a record; a new form gets a new number. */
export const RECORD_FORMAT = 'arc-transfer record 1';

const mode = z.enum(MODES);
const share = z.number().min(0).max(1);
const span = z.object({ min: z.number(), max: z.number() });
const outcome = z.enum(['inside', 'outside', 'cannot-judge']);

/** One thing that the procedure limits, held against the run. */
const limit = z.object({
  limit: z.enum([
    'modeShare',
    'longestDeparture',
    'volts',
    'amperes',
    'wireFeed',
    'travelSpeed',
    'stickOut',
    'heatInput',
    'wire',
    'material',
    'gas',
    'polarity',
    'source',
    'position',
    'plate',
  ]),
  outcome,
  /** What is allowed: a range, or words. Null is an open end. */
  allowed: z.union([
    z.object({ min: z.number().nullable(), max: z.number().nullable() }),
    z.string(),
  ]),
  /** What was found; null where nothing was. */
  figure: z.union([z.number(), z.string()]).nullable(),
  /** Of numbers, as the limit has it: `V`, `A`, `m/min`, `mm/min`, `mm`, `kJ/mm`, `s`, `1`. */
  unit: z.string().nullable(),
  /** Where 90 % of the samples lay (volts), or a standard deviation to either side (amperes); null where not shown. */
  spread: span.nullable(),
  /** Recorded and measured by the tool; read from a meter by a person; or stated and not measured. */
  basis: z.enum(['measured', 'read', 'stated']).nullable(),
  /** Where volts were taken. */
  place: z.enum(VOLTS_AT).nullable(),
  /** Why it is not judged, or what makes it lie outside; English, with the sentence beside it. */
  why: z.string().nullable(),
  whyMessage: messageSchema.nullable(),
});

/** A record of one run, made to be read and signed by a person. Never a qualification, never an inspection. */
export const recordSchema = z.object({
  format: z.literal(RECORD_FORMAT),
  statement: z.string(),
  statementMessage: messageSchema,
  tool: z.object({ name: z.string(), version: z.string() }),
  /** Model that named the mode; null where none did. */
  model: z.string().nullable(),
  run: z.object({
    path: z.string(),
    sha256: z.string().nullable(),
    kind: z.enum(['sound', 'electrical']).nullable(),
    sampleRateHz: z.number().nullable(),
    durationS: z.number().nullable(),
    status: z.enum(['ok', 'no-arc', 'unsure', 'failed']),
    statusReason: z.string(),
    statusReasonMessage: messageSchema.nullable(),
    arcTimeS: z.number().nullable(),
    arcStretches: z.array(z.object({ startS: z.number(), endS: z.number() })),
    segments: z.array(z.object({ startS: z.number(), endS: z.number(), mode: mode.nullable() })),
  }),
  /** Wall-clock time and how it is known: told by `watch`, in the name, in a table, or when the file was written. */
  weldedAt: z
    .object({ time: z.string(), from: z.enum(['watch', 'name', 'table', 'stated', 'file']) })
    .nullable(),
  /** Part, seam, robot, welder, job, recorder, meters and whatever else was given, as given. */
  ids: z.record(z.string(), z.string()),
  procedure: z.object({
    name: z.string(),
    revision: z.string().nullable(),
    note: z.string().nullable(),
    joint: z.string().nullable(),
    pass: z.string().nullable(),
    modes: z.array(mode),
  }),
  /** `inside-as-far-as-judged`: nothing is outside, and something could not be judged. */
  outcome: z.enum(['inside', 'inside-as-far-as-judged', 'outside', 'cannot-judge']),
  limits: z.array(limit),
  mode: z.object({
    seen: z.enum([...MODES, 'mixed']).nullable(),
    confidence: share.nullable(),
    /** Shares of the arc time. */
    wantedShare: share.nullable(),
    otherShare: share.nullable(),
    unclearShare: share.nullable(),
    /** The longest time in modes that the procedure does not allow. */
    longestDeparture: z.object({ mode, startS: z.number(), endS: z.number() }).nullable(),
  }),
  power: z.object({
    /** Mean of the products of volts and amperes, sample by sample, W. */
    meanPowerW: z.number().nullable(),
    /** Mean volts times mean amperes, W. */
    byMeansW: z.number().nullable(),
    /** Mean power times arc time, kJ. */
    energyKj: z.number().nullable(),
    /** Without thermal efficiency, kJ/mm; from the mean power where it is known. */
    arcEnergyKjPerMm: z.number().nullable(),
    /** The same with 0.8 for gas metal arc (EN 1011-1), kJ/mm. */
    heatInputKjPerMm: z.number().nullable(),
    /** Mean volts times mean amperes times 60 over travel speed, kJ/mm, without efficiency. */
    byMeansKjPerMm: z.number().nullable(),
    remarks: z.array(z.string()),
    remarkMessages: z.array(messageSchema),
  }),
  deposit: z.object({
    meltedKg: z.number().nullable(),
    /** As the taught deposition efficiencies span it. */
    depositedKg: span.nullable(),
    why: z.string().nullable(),
    whyMessage: messageSchema.nullable(),
  }),
});

export type WeldRecord = z.infer<typeof recordSchema>;
export type LimitRow = WeldRecord['limits'][number];

/** The published JSON Schema (draft 2020-12) of a record, made from the zod schema. */
export function recordJsonSchema(): Record<string, unknown> {
  const { $schema, ...rest } = z.toJSONSchema(recordSchema, { target: 'draft-2020-12' });
  return { $schema, title: RECORD_FORMAT, ...rest };
}
