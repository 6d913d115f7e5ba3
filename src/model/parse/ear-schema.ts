import * as z from 'zod/mini';
import { MODES } from '../../core/index.js';
import { noveltySchema } from './novelty-schema.js';

const offsets = z.array(z.number()).check(z.minLength(1), z.maxLength(16));
const slope = z.number().check(z.positive());
const calibration = z.object({ slope, offset: offsets });
const share = z.number().check(z.minimum(0), z.maximum(1));
const size = z.int().check(z.minimum(1), z.maximum(4096));

const layer = z.object({
  kind: z.enum(['full', 'separable', 'arc', 'hidden', 'out']),
  kernel: z.optional(z.int().check(z.minimum(1), z.maximum(99))),
  stride: z.optional(z.int().check(z.minimum(1), z.maximum(16))),
  dilation: z.optional(z.int().check(z.minimum(1), z.maximum(64))),
  inputs: size,
  outputs: z.optional(size),
  residual: z.optional(z.boolean()),
});

/** Form and rates of the network; that its layers fit its weights is checked where it is read. */
const network = z.looseObject({
  format: z.string(),
  frontEnd: z.looseObject({
    rateHz: z.number().check(z.minimum(4000), z.maximum(96_000)),
    window: z.int().check(z.minimum(16), z.maximum(4096)),
    hop: z.int().check(z.minimum(1), z.maximum(4096)),
    bands: z.array(z.tuple([z.int(), z.int()])).check(z.minLength(1), z.maxLength(256)),
    blockFrames: z.int().check(z.minimum(1), z.maximum(1000)),
    blocksBack: z.int().check(z.minimum(0), z.maximum(1000)),
    blocksAhead: z.int().check(z.minimum(0), z.maximum(1000)),
    relativeFloor: z.number().check(z.nonnegative()),
    absoluteFloor: z.number().check(z.positive()),
  }),
  modes: z.array(z.string()).check(z.maxLength(16)),
  pool: z.int().check(z.minimum(1), z.maximum(100)),
  varianceFloor: z.number().check(z.positive()),
  leastWeight: z.number().check(z.positive()),
  layers: z.array(layer).check(z.minLength(4), z.maxLength(64)),
  multiplyAddsPerS: z.number(),
});

/** A document of `EarModel`. */
export const earSchema = z.object({
  kind: z.literal('arc-transfer-ear'),
  schemaVersion: z.literal('1'),
  id: z.string().check(z.maxLength(200)),
  version: z.string().check(z.maxLength(50)),
  featureSet: z.object({
    id: z.string(),
    version: z.int(),
    features: z.array(z.string()).check(z.maxLength(999)),
  }),
  network,
  weights: z.string().check(z.maxLength(8_000_000), z.regex(/^[A-Za-z0-9+/]*={0,2}$/)),
  outputs: z
    .array(z.enum([...MODES, 'free-flight', 'arc', 'drops-heard', 'other']))
    .check(z.maxLength(64)),
  calibration: z.object({
    modes: calibration,
    modesByS: z
      .array(z.object({ toS: z.number().check(z.positive()), slope, offset: offsets }))
      .check(z.maxLength(32)),
    arc: calibration,
    rows: calibration,
    dropsHeard: calibration,
  }),
  answer: z.object({ nameArc: share, rejectArc: share, nameDrops: share }),
  novelty: z.nullable(noveltySchema),
  training: z.record(z.string(), z.unknown()),
});
