/** The pendant drop: its shape, the forces on it, and how it stretches until it tears off. */

const MU0_4PI = 1e-7; // mu0 / 4 pi, H/m
const GRAVITY = 9.81;
const PLASMA_PRESSURE = 0.5 * 0.06 * 100 * 100; // from memory of Kim and Eagar 1993: 0.06 kg/m3, 100 m/s
const DRAG = 0.44; // from memory of the same
/** Stretch over radius at which the neck is gone (own choice). */
export const TEAR = 1.8;
/** Metal that moves with the drop: neck and melt at the tip (own choice). */
const MOVING_MASS = 1.7;

export interface DropSetting {
  wireRadiusM: number;
  densityKgM3: number;
  tensionNM: number;
  transitionA: number;
  /** 0: axial gas, 1: drop pushed back. */
  repulsion: number;
  /** Strength of the jet that pulls the drop once the arc root climbs over it. */
  jet: number;
  /** Damping as a share of the critical one. */
  damping: number;
  /** Decay time of the blast of a fresh arc, s. */
  blastS: number;
  upward: boolean;
}

function smooth(x: number): number {
  const u = Math.max(0, Math.min(1, x));
  return u * u * (3 - 2 * u);
}

/** Coefficient of the electromagnetic force of Amson 1965 (from memory): arc root of half-angle theta on the drop. */
export function pinchCoefficient(radiusRatio: number, theta: number): number {
  const u = 1 - Math.cos(theta);
  return (
    Math.log(Math.max(0.25, radiusRatio * Math.sin(theta))) -
    0.25 -
    1 / u +
    (2 / (u * u)) * Math.log(2 / (2 - u))
  );
}

/** State of the metal that hangs from the wire. */
export class PendantDrop {
  readonly set: DropSetting;
  volumeM3: number;
  /** Height of the cap below the solid wire, without stretch. */
  capM: number;
  stretchM = 0;
  speedMS = 0;
  /** Factor of this drop's surface tension; changes from drop to drop. */
  tensionFactor = 1;
  /** Factor of this drop's length: some hang long, some flat. */
  swing = 1;
  /** Radius at which a pushed-back drop swings aside and peels off. */
  peelM: number;
  /** How far the arc root has climbed over the drop, 0 to 1. */
  private climb = 0;
  /** Blast of a fresh arc that holds the metal up: 1 just after a bridge broke, then dying away. */
  blast = 0;
  /** Wander of the arc root, about -1 to 1. */
  root = 0;

  constructor(set: DropSetting) {
    this.set = set;
    this.volumeM3 = 0.5 * set.wireRadiusM ** 3;
    this.capM = 0.3 * set.wireRadiusM;
    this.peelM = 2 * set.wireRadiusM;
  }

  get radiusM(): number {
    return Math.cbrt((3 * this.volumeM3) / (4 * Math.PI));
  }

  /** Distance from the solid wire to the lowest point of the metal. */
  get reachM(): number {
    const side = this.set.repulsion; // a pushed-back drop stretches sideways more than down
    const long = this.capM * this.swing + this.stretchM * (0.75 - 0.3 * side);
    return Math.max(0.2 * this.set.wireRadiusM, long);
  }

  /** One Newton step of the cap height for the volume (a cap on a base of the wire's radius). */
  private shape(): void {
    const a = this.set.wireRadiusM;
    const h = this.capM;
    const f = (Math.PI * h * (3 * a * a + h * h)) / 6 - this.volumeM3;
    const g = (Math.PI * (a * a + h * h)) / 2;
    this.capM = Math.max(0.05 * a, h - f / g);
  }

  /** Moves the drop by dt under current i; true when it tears off. */
  step(i: number, dt: number): boolean {
    const s = this.set;
    const a = s.wireRadiusM;
    this.shape();
    const r = Math.max(0.45 * a, this.radiusM);
    const over = i / s.transitionA;
    // The root needs most of a millisecond to climb (own choice).
    this.climb += (dt / 8e-4) * (smooth((over - 0.96) / 0.13) - this.climb);
    const climb = this.climb;
    const aside = s.repulsion * smooth((r / this.peelM - 0.9) / 0.2);
    // Root angle: 65 degrees at weak current, 100 at the transition, 150 above (own choice).
    const theta =
      1.13 + 0.62 * Math.min(1, Math.max(0, 2 * over - 1)) + 0.87 * climb + 0.12 * this.root;
    const axial = pinchCoefficient(r / a, Math.min(2.75, theta));
    const pushed = (-0.55 + 0.5 * this.root) * (1 - aside);
    const i2 = MU0_4PI * i * i;
    const capped = MU0_4PI * Math.min(i, 1.5 * s.transitionA) ** 2;
    let force = i2 * Math.min(1.2, (1 - s.repulsion) * axial + s.repulsion * pushed);
    // The jet grips the drop by its face, so a small drop is pulled less and a mere cap not at all.
    const face = Math.min(1.8, (r * r) / (a * a)) * smooth((r / a - 0.5) / 0.35);
    force += capped * s.jet * climb * (1 - s.repulsion) * face;
    this.blast -= (dt / s.blastS) * this.blast;
    force *= 1 - Math.min(1, 1.3 * this.blast);
    force += (s.upward ? -1 : 1) * s.densityKgM3 * this.volumeM3 * GRAVITY;
    force += DRAG * PLASMA_PRESSURE * Math.PI * Math.max(0, r * r - a * a) * smooth(i / 120);
    // The wire sharpens above the transition: a thinner neck holds less.
    const taper = 1 - 0.12 * climb - 0.36 * smooth((over - 1.2) / 0.5);
    const hold = 2 * Math.PI * a * taper * s.tensionNM * this.tensionFactor * (1 - 0.92 * aside);
    const q = this.stretchM / r;
    const back = q > 0 ? (4 * q * (TEAR - q)) / (TEAR * TEAR) : (4 * q) / TEAR;
    const mass = MOVING_MASS * s.densityKgM3 * (4 / 3) * Math.PI * r * r * r;
    const rate = Math.sqrt((4 * hold) / (TEAR * r) / mass);
    this.speedMS += dt * ((force - hold * back) / mass - 2 * s.damping * rate * this.speedMS);
    this.stretchM += dt * this.speedMS;
    if (this.stretchM < -0.35 * r) {
      this.stretchM = -0.35 * r;
      if (this.speedMS < 0) this.speedMS = 0;
    }
    return q >= TEAR;
  }

  /** Takes away metal and leaves a share of the volume, which springs back. */
  leave(share: number): number {
    const gone = this.volumeM3 * (1 - share);
    this.volumeM3 -= gone;
    const a = this.set.wireRadiusM;
    // Cap height of the rest: four Newton steps from a flat cap.
    this.capM = Math.min(this.capM, (2 * this.volumeM3) / (Math.PI * a * a));
    for (let k = 0; k < 4; k++) this.shape();
    this.stretchM = 0.1 * this.radiusM;
    this.speedMS = -0.1;
    this.climb *= 0.5;
    return gone;
  }
}
