import { type ShardTask, writeShard } from './shard.js';

/** Draws one shard in a thread. */
export default function work(task: ShardTask): Promise<number> {
  return writeShard(task);
}
