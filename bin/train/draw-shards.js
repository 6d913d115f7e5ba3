// Draws a part of a data set in one process, without packages: node draw-shards.mjs <folder> <part> <of> <arcs>
// <others> <sounds> <seed> <seconds>. Shards are those of `simulate --data-set` without traces, byte for byte, and a `lean.jsonl` beside; part k of n
// draws numbers k, k + n, … `pack.sh` bundles it for machines that hold nothing but Node.
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { shardName, writeShard } from '../../src/apps/cli/simulate/data-set/shard.ts';
import { TOOL_VERSION } from '../../src/core/index.ts';
import { DATA_SET_FORMAT } from '../../src/lab/simulate/index.ts';

const [folder, ...numbers] = process.argv.slice(2);
const [part, of, arcs, others, soundsPerArc, seed, seconds] = numbers.map(Number);
const head = {
  format: DATA_SET_FORMAT,
  version: TOOL_VERSION,
  seed,
  arcs,
  others,
  soundsPerArc,
  arcS: [seconds / 2, seconds],
  soundRateHz: 16000,
  perShard: 32,
  traces: false,
};
mkdirSync(folder, { recursive: true });
if (part === 0) writeFileSync(join(folder, 'data-set.json'), `${JSON.stringify(head, null, 1)}\n`);
const shards = { arcs: Math.ceil(arcs / 32), others: Math.ceil(others / 32) };
const tasks = [];
for (let shard = 0; shard < Math.max(shards.arcs, shards.others); shard++)
  for (const kind of ['others', 'arcs'])
    if (shard < shards[kind]) tasks.push({ folder, head, kind, shard });
for (const task of tasks.filter((_, k) => k % of === part)) {
  const name = shardName(task);
  if (existsSync(join(folder, name))) continue;
  await writeShard(task);
  // Sounds of single events are not learnt from here.
  rmSync(join(folder, name, 'parts.npy'), { force: true });
  if (task.kind === 'arcs') writeLean(join(folder, name));
}

/** `lean.jsonl`: of the truth what training reads, since parsing all of it takes longer than the step that uses it. */
function writeLean(shard) {
  const lines = readFileSync(join(shard, 'truth.jsonl'), 'utf8').trimEnd().split('\n');
  const lean = lines.map((line) => {
    const { index, family, mode, unambiguous, shares, arcOn, events, sounds } = JSON.parse(line);
    const { shortsPerS, rows } = events;
    const heard = sounds.map(({ family, offset, length, audible, heard }) => ({
      family,
      offset,
      length,
      heard,
      audible: audible.drop === undefined ? {} : { drop: { dPrime: audible.drop.dPrime } },
    }));
    return JSON.stringify({
      index,
      family,
      mode,
      unambiguous,
      shares,
      arcOn,
      events: { shortsPerS, rows },
      sounds: heard,
    });
  });
  writeFileSync(join(shard, 'lean.jsonl.part'), `${lean.join('\n')}\n`);
  renameSync(join(shard, 'lean.jsonl.part'), join(shard, 'lean.jsonl'));
}
