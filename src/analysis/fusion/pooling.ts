import * as z from 'zod/mini';
import { ArcError } from '../../core/index.js';

const weights = z.object({
  sound: z.number().check(z.minimum(0), z.maximum(3)),
  trace: z.number().check(z.minimum(0), z.maximum(3)),
});

/** How far each source is believed where both are heard: plain data, made by `arc-transfer fit --set pooling`. */
export const poolingSchema = z.object({
  kind: z.literal('arc-transfer-pooling'),
  schemaVersion: z.literal('1'),
  /** By the feature set of the trace. */
  weights: z.object({ voltage: weights, 'voltage-current': weights, current: weights }),
  /** Fingerprints of the models whose probabilities were pooled in the fit, by feature set. */
  models: z.record(z.string(), z.string()),
  /** How it was made and what was measured. */
  fitting: z.record(z.string(), z.unknown()),
});
export type Pooling = z.infer<typeof poolingSchema>;
export type PoolWeights = z.infer<typeof weights>;

/** @throws ArcError `bad-pooling` for a document of another kind or version */
export function parsePooling(document: unknown): Pooling {
  const parsed = poolingSchema.safeParse(document);
  if (parsed.success) return parsed.data;
  const issue = parsed.error.issues[0];
  throw new ArcError({
    code: 'bad-pooling',
    what: `The weights for pooling cannot be used: ${issue?.path.join('.') ?? ''} ${issue?.message ?? ''}.`,
    expected: 'a document written by `arc-transfer fit --set pooling`',
    todo: 'Make it again, or use the one that comes with the package.',
  });
}

/**
 * Weighted product of two opinions, normalised (logarithmic opinion pool; Genest & Zidek, Statist. Sci. 1
 * (1986) 114). Weights of 1 treat them as independent; 0 leaves one out. A probability of 0 counts as 1e-6.
 */
export function pool(
  sound: ArrayLike<number>,
  trace: ArrayLike<number>,
  by: PoolWeights,
): Float64Array {
  const logs = Float64Array.from(
    sound,
    (p, k) =>
      by.sound * Math.log(Math.max(p, LEAST)) + by.trace * Math.log(Math.max(trace[k]!, LEAST)),
  );
  const top = Math.max(...logs);
  const powers = logs.map((one) => Math.exp(one - top));
  const sum = powers.reduce((total, one) => total + one, 0);
  return powers.map((one) => one / sum);
}

const LEAST = 1e-6;
