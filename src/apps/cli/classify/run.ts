import type { Result } from '../../../analysis/result/index.js';
import type { FailOn } from '../../terminal/flags/fail-on.js';
import { meetsFailOn } from '../../terminal/flags/fail-on.js';
import type { Input, LostInput } from '../../terminal/inputs.js';
import { classifyOne, type Job } from '../../terminal/judge/classify-one.js';
import type { Sink } from '../../terminal/sink.js';
import type { Words } from '../../view/index.js';
import type { Writer } from './writer.js';

/** How a command over many inputs ended. */
export interface Tally {
  ok: number;
  'no-arc': number;
  unsure: number;
  failed: number;
  /** Files of a folder that are no recordings. */
  skipped: string[];
  /** Inputs that met `--fail-on`. */
  met: number;
}

/** Classifies the inputs one after the other, writing each result as soon as it is there. */
export async function classifyAll(
  inputs: readonly (Input | LostInput)[],
  job: Job,
  output: { writer: Writer; sink: Sink; failOn: readonly FailOn[] },
): Promise<Tally> {
  const tally: Tally = { ok: 0, 'no-arc': 0, unsure: 0, failed: 0, skipped: [], met: 0 };
  await output.writer.begin();
  for (const input of inputs) {
    if (!output.sink.isOpen()) break;
    const result = await classifyOne(input, job);
    job.progress.clear();
    if (!result) {
      tally.skipped.push(input.path);
      continue;
    }
    count(tally, result, output.failOn);
    await output.writer.result(result);
  }
  await output.writer.end();
  return tally;
}

function count(tally: Tally, result: Result, failOn: readonly FailOn[]): void {
  tally[result.status] += 1;
  if (meetsFailOn(result, failOn)) tally.met += 1;
}

/** The closing line: `12 recordings: 9 ok, 2 no arc, 1 unsure, 0 failed`, and what was skipped. */
export function sayTally(tally: Tally, { terminal }: Words): string {
  const { counts, skipped: passedOver } = terminal.tally;
  const total = tally.ok + tally['no-arc'] + tally.unsure + tally.failed;
  const line = counts(total, tally.ok, tally['no-arc'], tally.unsure, tally.failed);
  const { skipped } = tally;
  if (skipped.length === 0) return `${line}\n`;
  const names = skipped.slice(0, 5).join(', ') + (skipped.length > 5 ? ', …' : '');
  return `${line}\n${passedOver(skipped.length, names)}\n`;
}
