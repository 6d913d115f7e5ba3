import type { LabelTask } from './plan.js';
import type { LabelOutcome } from './record.js';

/** What a run rejects with after {@link Runner.leave}. */
export class LeftBehind extends Error {}

/** Who does the work: threads of this machine, or other machines behind a queue. */
export interface Runner {
  /** Never rejects for what is wrong with one input; an error means that no more work can be done. */
  run(task: LabelTask): Promise<LabelOutcome>;
  /** Told when the outcome of a task is safely written down, so that it need not be kept elsewhere. */
  written?(task: LabelTask): Promise<void>;
  /** Stops waiting for what is under way on other hosts: those runs reject with {@link LeftBehind}. Their work is not lost. */
  leave?(): void;
  /** How many inputs it can usefully be given at once. */
  readonly parallel: number;
  close(): Promise<void>;
}
