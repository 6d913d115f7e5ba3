import type { Balance, DropTruth, Release, ShortTruth } from '../run.js';
import type { SourceSpec } from '../scenario.js';
import { ballDiameterMm } from './pendant-drop.js';

/** What happened, kept while the machine runs. An arc not yet ended has `endS` −1. */
export class EventLog {
  readonly shorts: ShortTruth[] = [];
  readonly drops: DropTruth[] = [];
  readonly arcOn: { startS: number; endS: number }[] = [];
  readonly pulses: number[] = [];
  readonly balance: Balance;

  constructor(hangingMm3: number) {
    this.balance = {
      fedMm3: 0,
      meltedMm3: 0,
      extensionMm3: 0,
      transferredLiquidMm3: 0,
      hangingLiquidMm3: -hangingMm3,
      sourceJ: 0,
      slopeJ: 0,
      chokeJ: 0,
      loadJ: 0,
    };
  }

  addDrop(timeS: number, volumeMm3: number, release: Release): void {
    this.balance.transferredLiquidMm3 += volumeMm3;
    this.drops.push({ timeS, diameterMm: ballDiameterMm(volumeMm3), release });
  }

  addShort(short: ShortTruth): void {
    this.balance.transferredLiquidMm3 += short.transferredMm3;
    this.shorts.push(short);
  }

  /** Wire end burnt off into the pool at the end of a short; it counts as metal of that short. */
  addBurnOff(timeS: number, solidMm3: number, liquidMm3: number): void {
    this.balance.meltedMm3 += solidMm3;
    this.balance.extensionMm3 -= solidMm3;
    this.balance.transferredLiquidMm3 += liquidMm3;
    const last = this.shorts.at(-1);
    if (last !== undefined && last.endS === timeS && !last.incipient) {
      last.transferredMm3 += liquidMm3;
    }
  }

  /** Wire fed and melted in one step, mm³ of solid. */
  addFeed(fedMm3: number, meltedMm3: number): void {
    this.balance.fedMm3 += fedMm3;
    this.balance.meltedMm3 += meltedMm3;
    this.balance.extensionMm3 += fedMm3 - meltedMm3;
  }

  /** Energy of one step in which the current went from `fromA` to `toA`; circuits only have the full books. */
  addEnergy(
    source: SourceSpec,
    driveV: number,
    loadV: number,
    fromA: number,
    toA: number,
    dt: number,
  ): void {
    const middle = 0.5 * (fromA + toA);
    this.balance.loadJ += loadV * middle * dt;
    if (source.kind !== 'constant-voltage') return;
    this.balance.sourceJ += driveV * middle * dt;
    this.balance.slopeJ += source.slopeOhm * middle * middle * dt;
    this.balance.chokeJ += 0.5 * source.inductanceH * (toA * toA - fromA * fromA);
  }

  /** Begins an arc unless one is open. */
  openArc(timeS: number): void {
    const last = this.arcOn.at(-1);
    if (last === undefined || last.endS >= 0) this.arcOn.push({ startS: timeS, endS: -1 });
  }

  closeArc(timeS: number): void {
    const last = this.arcOn.at(-1);
    if (last !== undefined && last.endS < 0) last.endS = timeS;
  }
}
