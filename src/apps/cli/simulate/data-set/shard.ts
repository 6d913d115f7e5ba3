import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import {
  ArcSeries,
  type DataSetHead,
  drawSetArc,
  drawSetOther,
} from '../../../../lab/simulate/index.js';
import { npyBytes } from './npy.js';

/** One shard to draw. */
export interface ShardTask {
  folder: string;
  head: DataSetHead;
  kind: 'arcs' | 'others';
  /** Number of the shard. */
  shard: number;
}

/** Name of a shard's folder. */
export function shardName({ kind, shard }: Pick<ShardTask, 'kind' | 'shard'>): string {
  return `${kind}-${String(shard).padStart(5, '0')}`;
}

/** Draws a shard and writes it under its name; a folder of that name is whole. How many it holds. */
export async function writeShard(task: ShardTask): Promise<number> {
  const { head, kind, shard } = task;
  const first = shard * head.perShard;
  const end = Math.min(first + head.perShard, head[kind]);
  const series = new ArcSeries();
  const lines: string[] = [];
  for (let index = first; index < end; index++) {
    const line =
      kind === 'arcs' ? drawSetArc(head, index, series) : drawSetOther(head, index, series);
    lines.push(`${JSON.stringify(line)}\n`);
  }
  const name = shardName(task);
  const part = join(task.folder, `${name}.part`);
  await rm(part, { recursive: true, force: true });
  await mkdir(part, { recursive: true });
  await writeFile(join(part, 'sound.npy'), npyBytes('<f2', series.sound));
  if (kind === 'arcs') {
    await writeFile(join(part, 'parts.npy'), npyBytes('<f2', series.parts));
    await writeFile(join(part, 'events.npy'), npyBytes('<f4', series.events));
    if (head.traces) await writeFile(join(part, 'traces.npy'), npyBytes('<i2', series.traces));
  }
  await writeFile(join(part, 'truth.jsonl'), lines.join(''));
  await rename(part, join(task.folder, name));
  return end - first;
}
