import { DISTURBANCE_KINDS, type Disturbance, type DisturbanceKind } from '../../../core/index.js';
import { mean } from '../../../dsp/index.js';
import type { DisturbanceReport } from '../../disturbances.js';
import type { RunFigures } from '../../extractor.js';
import { Running } from '../running.js';
import type { Slot } from '../slot-analyser.js';
import { DISTURBANCE_LIMITS as LIMITS } from './settings.js';
import { SlowSeries } from './slow-series.js';
import { type TickRun, TickRuns } from './tick-runs.js';

const MOST_MARKS = 500;

interface ArcInterval {
  startS: number;
  endS: number;
  /** Mean voltage of the arc phase in its last moment, V. */
  lastV: number;
}

/** What it is told of: lengths of ticks and slots, and the channels at hand. */
export interface DisturbancePlan {
  tickS: number;
  /** Ticks of the recording before the first one that is told. */
  fromTick: number;
  slotS: number;
  sampleRateHz: number;
  /** Ignition: nothing that begins this soon after an arc began counts, s. */
  edgeS: number;
  has: { voltage: boolean; current: boolean };
}

/** Gathers what disturbs the arc of a voltage and/or current trace. */
export class DisturbanceTally {
  readonly #plan: DisturbancePlan;
  readonly #runs: TickRuns;
  readonly #slow: SlowSeries;
  readonly #breakA = new Running();
  readonly #intervals: ArcInterval[] = [];
  #mostBreakA = Number.NaN;

  constructor(plan: DisturbancePlan) {
    this.#plan = plan;
    this.#runs = new TickRuns(plan, plan.has);
    this.#slow = new SlowSeries(plan.slotS);
  }

  /** Every tick of the recording, arc or not. */
  tick(meanV: number, meanA: number): void {
    this.#runs.push(meanV, meanA);
  }

  /** A slot of the steady part of an arc interval that began at `fromSample`. */
  slot(slot: Slot, fromSample: number): void {
    const startS = fromSample / this.#plan.sampleRateHz + slot.index * this.#plan.slotS;
    // A current may be measured either way round.
    const meanA = slot.current ? Math.abs(mean(slot.current.slow)) : Number.NaN;
    this.#slow.push(startS, arcLevel(slot), meanA);
  }

  /** Current at the rupture of a short that carried metal, A, either way round. */
  rupture(signedA: number): void {
    const breakA = Math.abs(signedA);
    this.#breakA.add(breakA);
    if (!(breakA <= this.#mostBreakA)) this.#mostBreakA = breakA;
  }

  /** An arc interval is over. `lastSlots` are those of its last moment. */
  interval(startSample: number, endSample: number, lastSlots: readonly Slot[]): void {
    const { sampleRateHz } = this.#plan;
    const last = lastSlots.map(arcLevel).filter((one) => !Number.isNaN(one));
    this.#intervals.push({
      startS: startSample / sampleRateHz,
      endS: endSample / sampleRateHz,
      lastV: last.length > 0 ? Math.max(...last) : Number.NaN,
    });
  }

  figures(): RunFigures {
    const { share, periodS } = this.#slow.swing();
    return {
      currentAtBreakSdA: this.#breakA.sd,
      currentAtBreakMaxA: this.#mostBreakA,
      slowSwingShare: share,
      slowSwingPeriodS: periodS,
    };
  }

  report(): DisturbanceReport {
    const { voltage, current } = this.#plan.has;
    const arcOuts = this.#arcOuts();
    const found: Record<DisturbanceKind, { startS: number; endS: number }[]> = {
      'long-short': this.#runs.touching.map((run) => this.#seconds(run)).filter(this.#within),
      'arc-out': arcOuts,
      'burn-back': this.#burnBacks(arcOuts),
      'long-arc': voltage ? this.#slow.longArcs() : [],
      // Where the arc is out the current is low too.
      'current-dip': current
        ? this.#slow.dips().filter((dip) => !arcOuts.some((out) => overlap(dip, out)))
        : [],
    };
    const notShown: DisturbanceKind[] = [
      ...(voltage ? [] : (['long-short', 'burn-back', 'long-arc'] as const)),
      ...(current ? [] : (['current-dip'] as const)),
    ];
    const marks: Disturbance[] = DISTURBANCE_KINDS.flatMap((kind) =>
      found[kind].slice(0, MOST_MARKS).map((one) => ({ kind, ...one })),
    );
    const totals = Object.fromEntries(
      DISTURBANCE_KINDS.map((kind) => {
        const lengths = found[kind].map((one) => one.endS - one.startS);
        const totalS = lengths.reduce((sum, one) => sum + one, 0);
        return [kind, { count: lengths.length, totalS, longestS: Math.max(0, ...lengths) }];
      }),
    ) as DisturbanceReport['totals'];
    return {
      marks: marks.sort((a, b) => a.startS - b.startS),
      totals,
      judgedS: this.#slow.seconds,
      notShown,
    };
  }

  /** No current while the source is on; with no voltage measured, any short pause counts. */
  #arcOuts(): { startS: number; endS: number }[] {
    const arcV = this.#slow.medianV();
    return this.#runs.dead
      .filter(({ meanV }) => Number.isNaN(meanV) || meanV > arcV)
      .map((run) => this.#seconds(run))
      .filter(this.#within);
  }

  /** The arc grew long before it went out. */
  #burnBacks(arcOuts: readonly { startS: number; endS: number }[]) {
    const limitV = this.#slow.medianV() + LIMITS.burnBackV;
    return this.#intervals
      .filter((one) => one.lastV >= limitV && arcOuts.some((out) => touches(one.endS, out)))
      .map(({ endS }) => ({ startS: Math.max(0, endS - 0.3), endS }));
  }

  /** Within a weld: an arc had burned past its ignition, and burns again before a new weld would begin. */
  readonly #within = ({ startS, endS }: { startS: number; endS: number }): boolean => {
    if (endS - startS > LIMITS.resumedWithinS) return false;
    const before = this.#intervals.some(
      (one) => startS >= one.startS + this.#plan.edgeS && startS <= one.endS + NEAR_S,
    );
    const after = this.#intervals.some((one) => one.endS >= endS && one.startS <= endS + NEAR_S);
    return before && after;
  };

  #seconds({ startTick, endTick }: TickRun): { startS: number; endS: number } {
    return { startS: startTick * this.#plan.tickS, endS: endTick * this.#plan.tickS };
  }
}

/** The edges of an arc interval are placed by other rules than those of a dead or touching stretch, s. */
const NEAR_S = 0.3;

function overlap(
  a: { startS: number; endS: number },
  b: { startS: number; endS: number },
): boolean {
  return a.startS < b.endS && b.startS < a.endS;
}

function touches(timeS: number, { startS, endS }: { startS: number; endS: number }): boolean {
  return timeS >= startS - NEAR_S && timeS <= endS + NEAR_S;
}

/** Mean of the slow trace outside shorts and where an arc burns at all; NaN where there is none. */
function arcLevel({ voltage, current }: Slot): number {
  if (!voltage) return Number.NaN;
  // Shorts are bridged there by the level before them.
  const { voltage: slow } = voltage.arc;
  let sum = 0;
  let count = 0;
  for (let k = 0; k < slow.length; k++) {
    if (slow[k]! > LIMITS.openCircuitV) continue;
    if (current && Math.abs(current.slow[k]!) < LIMITS.deadA) continue;
    sum += slow[k]!;
    count++;
  }
  return count > 0 ? sum / count : Number.NaN;
}
