import { ArcError } from '../../core/index.js';

/** Part `part` (from 1) of `parts`. */
export interface Shard {
  part: number;
  parts: number;
}

/** Reads `3/8`. @throws ArcError `bad-shard`. */
export function parseShard(given: string): Shard {
  const match = /^(\d{1,6})\/(\d{1,6})$/.exec(given.trim());
  const [part, parts] = [Number(match?.[1]), Number(match?.[2])];
  if (match && part >= 1 && part <= parts) return { part, parts };
  throw new ArcError({
    code: 'bad-shard',
    what: `--shard was given "${given}".`,
    expected: 'a part and the number of parts, from 1/1, such as 3/8',
    todo: 'In a Slurm array from 1 to 8 write --shard $SLURM_ARRAY_TASK_ID/8.',
  });
}

/**
 * The inputs of one part: runs of neighbours, so that the parts put behind one another in order are the
 * whole. Every input is in exactly one part; sizes differ by one at most.
 */
export function shardOf<T>(inputs: readonly T[], shard: Shard): T[] {
  const at = (part: number): number => Math.floor((inputs.length * part) / shard.parts);
  return inputs.slice(at(shard.part - 1), at(shard.part));
}
