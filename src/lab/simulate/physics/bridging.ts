import type { Random } from '../../../core/index.js';
import type { BridgingSpec } from '../scenario.js';
import { capillaryTimeS } from './detachment.js';
import type { MetalProperties } from './materials.js';

/** A liquid bridge between wire and pool, from contact to parting. */
export interface Bridge {
  /** Starts a bridge of a drop of this radius; solid contact (no drop) is radius 0. */
  begin(radiusMm: number, incipient: boolean): void;
  /** Advances by `dt`; `held` while solid wire sits in the pool. True when it parts. */
  step(currentA: number, held: boolean, dt: number): boolean;
  /** 0 at contact, 1 at parting. */
  readonly progress: number;
  /** Extra resistance of the thinned neck, ohm. */
  readonly neckOhm: number;
}

/** Bridges by one of the bridging laws; their shapes and the 1500 A²s that fuse a wire are own choice. */
export function createBridge(spec: BridgingSpec, metal: MetalProperties, random: Random): Bridge {
  let progress = 0;
  let capillaryS = 1e-3;
  let durationS = 1e-3;
  let scatter = 1;
  let wetS = 0;
  let ageS = 0;
  let action = 0;
  let incipient = false;
  const advance = (currentA: number): number => {
    const squeeze = (currentA / spec.pinchA) ** 2;
    if (incipient || spec.law === 'drawn') return 1 / durationS;
    if (spec.law === 'capillary-pinch')
      return (0.5 * (1 + squeeze)) / (spec.timeFactor * capillaryS * scatter);
    if (spec.law === 'neck') {
      const waist = 1 - 0.85 * progress;
      return (0.3 + squeeze / waist) / (spec.timeFactor * capillaryS * scatter);
    }
    if (ageS < wetS) return 0;
    return (currentA ** 2 + 2500) / (spec.actionA2s * scatter);
  };
  return {
    get progress() {
      return progress;
    },
    get neckOhm() {
      if (spec.law !== 'neck') return 0.004 * progress ** 6;
      const waist = 1 - 0.85 * progress;
      return 0.0004 * (1 / (waist * waist) - 1);
    },
    begin(radiusMm, isIncipient) {
      progress = 0;
      ageS = 0;
      action = 0;
      incipient = isIncipient;
      capillaryS = capillaryTimeS(metal, Math.max(radiusMm, 0.35));
      scatter = Math.exp(spec.spread * random.normal());
      wetS = 0.4 * spec.timeFactor * capillaryS * scatter;
      durationS = isIncipient
        ? spec.incipientS * Math.exp(0.5 * random.normal())
        : spec.timeFactor * 1e-3 * scatter;
    },
    step(currentA, held, dt) {
      ageS += dt;
      action += currentA ** 2 * dt;
      // Solid wire in the pool cannot neck; only fusing by its own current (an explosion) frees it.
      if (held) return action > 1500;
      progress += advance(currentA) * dt;
      return progress >= 1 || action > 1500;
    },
  };
}
