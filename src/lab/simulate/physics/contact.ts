import type { Random } from '../../../core/index.js';
import type { ArcScenario } from '../scenario.js';
import { type Bridge, createBridge } from './bridging.js';
import { METALS } from './materials.js';

/** How a contact stands: still closed; a cold wire fused; a bridge parted; a drop pushed off again. */
export type ContactState = 'closed' | 'fused' | 'parted' | 'repelled';

/** Wire and pool touching, from contact to parting. */
export class Contact {
  startS = 0;
  private incipient = false;
  /** Action through a cold contact so far, A²s; NaN when the arc had been burning. */
  private strikeA2s = Number.NaN;
  private readonly bridge: Bridge;

  constructor(
    private readonly scenario: ArcScenario,
    random: Random,
  ) {
    this.bridge = createBridge(scenario.bridging, METALS[scenario.wire.material], random);
  }

  /** How far the neck of the bridge has gone, 0 to 1. */
  get progress(): number {
    return this.bridge.progress;
  }

  /** A drop of this radius touches; `fromCold` when no arc was burning. */
  begin(timeS: number, radiusMm: number, fromCold: boolean, random: Random): void {
    this.startS = timeS;
    this.incipient = !fromCold && random.next() < this.scenario.bridging.incipientShare;
    this.bridge.begin(radiusMm, this.incipient);
    this.strikeA2s = fromCold ? 0 : Number.NaN;
  }

  /** The drop that was to be repelled could not get away: a bridge after all. */
  stays(radiusMm: number): void {
    this.incipient = false;
    this.bridge.begin(radiusMm, false);
  }

  /** Advances by `dt`; `solidGapMm` is what lies between solid wire and pool. */
  step(currentA: number, solidGapMm: number, dt: number): ContactState {
    if (!Number.isNaN(this.strikeA2s)) {
      this.strikeA2s += currentA ** 2 * dt;
      return this.strikeA2s < this.scenario.ends.strikeA2s ? 'closed' : 'fused';
    }
    const held = solidGapMm < 0.1 && !this.incipient;
    if (!this.bridge.step(currentA, held, dt)) return 'closed';
    return this.incipient ? 'repelled' : 'parted';
  }

  /** Voltage across contact and bridge. */
  volts(currentA: number): number {
    const { contactV, bridgeOhm } = this.scenario.bridging;
    return contactV + (bridgeOhm + this.bridge.neckOhm) * currentA;
  }
}
