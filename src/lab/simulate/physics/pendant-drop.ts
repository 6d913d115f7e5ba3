import type { Random } from '../../../core/index.js';
import type { Release } from '../run.js';
import type { ArcScenario, DetachmentSpec } from '../scenario.js';
import { createNeck, type DropView, type Neck } from './detachment.js';
import { METALS, type MetalProperties } from './materials.js';
import { roughNormal } from './motion.js';

const FOUR_THIRDS_PI = (4 / 3) * Math.PI;

/** Diameter in mm of a ball of this volume. */
export function ballDiameterMm(volumeMm3: number): number {
  return 2 * Math.cbrt(volumeMm3 / FOUR_THIRDS_PI);
}

/** The molten metal on the wire end: its size, its swinging, and the neck that holds it. */
export class PendantDrop {
  volumeMm3 = 0.05;
  radiusMm = 0;
  /** How far it hangs down from the solid wire, mm. */
  extentMm = 0;
  readonly neck: Neck;
  /** How the last drop let go. */
  released: Release = 'hanging';
  private readonly spec: DetachmentSpec;
  private readonly metal: MetalProperties;
  private readonly areaMm2: number;
  private wobbleMm = 0;
  private wobbleSpeed = 0;
  private readonly view: DropView;

  constructor(scenario: ArcScenario, random: Random) {
    const wireRadiusMm = scenario.wire.diameterMm / 2;
    this.spec = scenario.detachment;
    this.metal = METALS[scenario.wire.material];
    this.areaMm2 = Math.PI * wireRadiusMm ** 2;
    this.neck = createNeck(this.spec, this.metal, random);
    this.view = { radiusMm: 0, wireRadiusMm, currentA: 0 };
    this.measure();
  }

  /** Size and reach after the volume has changed. A little metal is a cap, more of it a ball. */
  measure(): void {
    this.radiusMm = Math.cbrt(this.volumeMm3 / FOUR_THIRDS_PI);
    const cap = (2 * this.volumeMm3) / this.areaMm2;
    this.extentMm = Math.min(cap, 1.6 * this.radiusMm) + this.wobbleMm;
  }

  /** It swings at its own capillary frequency, driven by the wandering arc root. */
  swing(dt: number, random: Random): void {
    // Products in place of powers: these lines run tens of thousands of times a second of arc.
    const mass = this.metal.liquidDensity * this.volumeMm3 * 1e-9 + 2e-7;
    const omega = Math.min(Math.sqrt((2.5 * this.metal.surfaceTension) / mass), 2500);
    const rms = this.spec.wobble * this.radiusMm;
    this.wobbleSpeed +=
      (-0.3 * omega * this.wobbleSpeed - omega * omega * this.wobbleMm) * dt +
      rms * omega * Math.sqrt(0.6 * omega * dt) * roughNormal(random);
    this.wobbleMm += this.wobbleSpeed * dt;
    const most = 0.6 * this.radiusMm;
    if (this.wobbleMm > most) this.wobbleMm = most;
    if (this.wobbleMm < -most) this.wobbleMm = -most;
    this.measure();
  }

  /** Advances the neck; the volume that let go, or 0. */
  detach(currentA: number, dt: number, random: Random): number {
    this.view.radiusMm = this.radiusMm;
    this.view.currentA = currentA;
    if (!this.neck.step(this.view, dt)) return 0;
    this.released = this.neck.release();
    const gone = (1 - this.spec.leave) * this.volumeMm3;
    this.volumeMm3 -= gone;
    this.wobbleSpeed -= 0.15 * this.radiusMm * 600 * random.next();
    this.neck.reset();
    this.measure();
    return gone;
  }

  /** What the thinning neck adds to the arc voltage, V. */
  bumpV(): number {
    const { progress } = this.neck;
    return progress === 0 ? 0 : this.spec.bumpV * progress * progress;
  }

  /** Springs up by `lackMm` or a fifth of its radius, as far as it can. */
  recoil(lackMm: number): void {
    const up = Math.max(0.2 * this.radiusMm, lackMm);
    this.wobbleMm = Math.max(-0.6 * this.radiusMm, this.wobbleMm - up);
    this.wobbleSpeed = 0;
    this.measure();
  }
}
