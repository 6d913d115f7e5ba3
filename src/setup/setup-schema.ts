import * as z from 'zod/mini';
import { MODES } from '../core/index.js';
import { POLARITIES, SOURCE_KINDS, VOLTS_AT } from './choices.js';
import type { Gas } from './gas.js';
import { POSITIONS } from './positions.js';
import { WIRE_MATERIALS } from './wire-words.js';

const number = z.nullable(z.number());

/** What the user stated, in base units. Null means not stated, or stated as unknown. */
export const setupSchema = z.object({
  wireDiameterMm: number,
  wireMaterial: z.nullable(z.enum(WIRE_MATERIALS)),
  gas: z.nullable(z.custom<Gas>()),
  setVoltageV: number,
  /** Where the set voltage holds; null is not "at the source" but "not said". */
  voltsAt: z.nullable(z.enum(VOLTS_AT)),
  wireFeedMPerMin: number,
  expectedMode: z.nullable(z.enum(MODES)),
  /** Wire from the contact tip to the arc, mm. */
  stickOutMm: number,
  polarity: z.nullable(z.enum(POLARITIES)),
  source: z.nullable(z.enum(SOURCE_KINDS)),
  sourceVoltsV: number,
  feederVoltsV: number,
  arcVoltsV: number,
  measuredCurrentA: number,
  traceVoltsAt: z.nullable(z.enum(VOLTS_AT)),
  sourceSlopeVPer100A: number,
  cableLengthM: number,
  travelSpeedMmPerMin: number,
  plateMm: number,
  /** Length of the bead of this run, mm. */
  beadLengthMm: number,
  position: z.nullable(z.enum(POSITIONS)),
  /** Readings that took the common meaning of the user's words. */
  notes: z.array(
    z.object({
      code: z.string(),
      message: z.string(),
      params: z.optional(z.record(z.string(), z.unknown())),
    }),
  ),
  /** Keys the user stated as unknown. */
  unknown: z.array(z.string()),
});

export type Setup = z.infer<typeof setupSchema>;
