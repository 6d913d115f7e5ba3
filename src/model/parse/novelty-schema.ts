import * as z from 'zod/mini';

const numbers = z.array(z.number()).check(z.maxLength(999));

/** How far a vector may lie from everything that was fitted, see `novelty.ts`. */
export const noveltySchema = z.object({
  mean: numbers,
  deviation: z.array(z.number().check(z.positive())).check(z.maxLength(999)),
  centres: z.array(numbers).check(z.minLength(1), z.maxLength(16)),
  factor: z.array(z.number()).check(z.maxLength(500_000)),
  limit: z.number().check(z.positive()),
});
