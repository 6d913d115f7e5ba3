import type { Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import { ChannelQuality, sampleRateFlags } from '../../recording/quality/index.js';
import type { ExtractorSummary } from '../extractor.js';
import type { SlotPlan } from './decimation.js';
import { ProgrammeVotes } from './programme.js';
import { RunTally } from './run-tally.js';

/** What a feature extractor counts for its summary: of the whole recording, or of one arc interval of a stream. */
export class ExtractorTally {
  readonly quality: ChannelQuality[];
  readonly run: RunTally;
  readonly votes = new ProgrammeVotes();
  arcIntervals = 0;
  readonly #rateHz: number;
  #ticks = 0;
  #negativeTicks = 0;

  constructor(
    plan: SlotPlan,
    ticks: { tickS: number; fromTick: number },
    rateHz: number,
    has: { voltage: boolean; current: boolean },
  ) {
    this.#rateHz = rateHz;
    this.run = new RunTally(plan, ticks, has);
    const names = (['voltage', 'current'] as const).filter((name) => has[name]);
    this.quality = names.map((name) => new ChannelQuality(name, rateHz));
  }

  /** Takes one tick of the gate: its mean voltage and current. */
  tick(meanV: number, meanA: number): void {
    this.run.disturbances.tick(meanV, meanA);
    this.#ticks++;
    if (meanV < -9) this.#negativeTicks++;
  }

  summary(): ExtractorSummary {
    return {
      figures: this.run.figures(),
      quality: [
        ...sampleRateFlags(this.#rateHz),
        ...this.quality.flatMap((channel) => channel.flags()),
      ],
      disturbances: this.run.disturbances.report(),
      notes: this.#notes(),
      sourceProgramme: this.arcIntervals > 0 ? this.votes.result() : 'unknown',
    };
  }

  #notes(): Note[] {
    if (this.arcIntervals > 0 || !(this.#negativeTicks > 0.2 * this.#ticks)) return [];
    return [note('voltage-negative')];
  }
}
