import * as z from 'zod';

/** What a sentence is made of; absent in documents of version 1.0. */
export const paramsSchema = z.record(z.string(), z.unknown()).optional();

/** A sentence by its code, beside the string that holds its English text. */
export const messageSchema = z.object({
  code: z.string(),
  params: z.record(z.string(), z.unknown()),
});
