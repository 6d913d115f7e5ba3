import type { Random } from '../../../core/index.js';
import type { ArcScenario } from '../scenario.js';
import { METALS, type MetalProperties } from './materials.js';
import { roughNormal } from './motion.js';

/** The solid wire: how far its end is from the resting pool, and how it is fed and melts off. */
export class WireEnd {
  /** From the end of the solid wire to the resting pool, mm. */
  gapMm: number;
  readonly areaMm2: number;
  private readonly metal: MetalProperties;
  private distanceMm: number;
  private unrest = 0;

  constructor(
    private readonly scenario: ArcScenario,
    gapMm: number,
  ) {
    this.gapMm = gapMm;
    this.distanceMm = scenario.contactDistanceMm;
    this.metal = METALS[scenario.wire.material];
    this.areaMm2 = Math.PI * (scenario.wire.diameterMm / 2) ** 2;
  }

  /** Hot length between contact tip and wire end, mm. */
  extensionMm(): number {
    return Math.max(0, this.distanceMm - this.gapMm);
  }

  /** The torch has moved by `handMm` from its place: the gap moves along, the extension stays. */
  follow(handMm: number): void {
    const distance = this.scenario.contactDistanceMm + handMm;
    this.gapMm += distance - this.distanceMm;
    this.distanceMm = distance;
  }

  /** Slow unsteadiness of the feed. */
  wander(dt: number, random: Random): void {
    const gain = this.scenario.wire.feedJitter * Math.sqrt(40 * dt);
    this.unrest += -20 * dt * this.unrest + gain * roughNormal(random);
  }

  /** Speed in mm/s at which the feeder pushes; before the first arc it creeps. */
  speed(feedMmPerS: number, struck: boolean): number {
    return feedMmPerS * (struck ? 1 + this.unrest : this.scenario.ends.runInShare);
  }

  /**
   * Melting speed, mm/s. In a short only a part of the arc's heat at the wire end is there, that of
   * the contact; without current there is none.
   */
  melting(currentA: number, arcing: boolean): number {
    const { alpha, beta } = this.scenario.wire;
    const heat = arcing ? alpha : 0.25 * alpha;
    return beta * this.extensionMm() * currentA * currentA + heat * currentA;
  }

  /** Volume that solid metal takes once molten, mm³. */
  liquid(solidMm3: number): number {
    return (solidMm3 * this.metal.solidDensity) / this.metal.liquidDensity;
  }
}
